@echo off
rem The command line: slabwright plan FOLDER --out DIR. Builds itself the first time.
setlocal
set "dll=%~dp0src\Slabwright.Cli\bin\Release\net10.0\slabwright.dll"
if not exist "%dll%" dotnet build "%~dp0src\Slabwright.Cli" -c Release -v quiet --nologo || exit /b 1
dotnet "%dll%" %*
