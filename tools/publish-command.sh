#!/usr/bin/env bash
# Publishes the command to artifacts/cli, compiled ahead of time for this machine where that package can be had.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
. tools/require-dotnet.sh
publish() { dotnet publish src/Slabwright.Cli -c Release -o artifacts/cli --self-contained false -v quiet --nologo "$@"; }
publish --use-current-runtime -p:PublishReadyToRun=true >/dev/null 2>&1 || publish >&2
