@echo off
rem Builds Slabwright, loads the demo project into the embedded store on first start, and opens the desk on this machine.
setlocal
cd /d "%~dp0"
where dotnet >nul 2>nul || (echo Slabwright needs the .NET 10 SDK: see https://dotnet.microsoft.com/download & exit /b 1)
dotnet build src\Slabwright.Desk -c Release -v quiet --nologo || exit /b 1
dotnet src\Slabwright.Desk\bin\Release\net10.0\slabwright-desk.dll --demo examples %*
