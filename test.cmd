@echo off
rem Runs all tests. Groups that need programs from Debian (GDAL, qpdf, poppler, ezdxf, LibreOffice Calc, Chromium) are counted as skipped with their reason.
setlocal
cd /d "%~dp0"
where dotnet >nul 2>nul || (echo Slabwright needs the .NET 10 SDK: see https://dotnet.microsoft.com/download & exit /b 1)
dotnet build Slabwright.slnx -c Release -v quiet --nologo || exit /b 1
dotnet tests\Slabwright.Tests\bin\Release\net10.0\Slabwright.Tests.dll -noColor %* || exit /b 1
dotnet tests\Slabwright.SystemTests\bin\Release\net10.0\Slabwright.SystemTests.dll -noColor %* || exit /b 1
