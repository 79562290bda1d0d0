# Sourced by the scripts at the root: stops with a clear sentence when the .NET SDK is missing.
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1 DOTNET_SKIP_FIRST_TIME_EXPERIENCE=1
if ! command -v dotnet >/dev/null 2>&1; then
  echo "Slabwright needs the .NET 10 SDK (see https://dotnet.microsoft.com/download); 'dotnet' was not found." >&2
  exit 1
fi
