#!/usr/bin/env bash
# Installs the programs that judge Slabwright's files and pages, where Debian's apt is at hand. A program that can't be had is not an
# error: the tests that need it are counted as skipped with their reason.
set -uo pipefail
wanted=(
  "ogrinfo gdal-bin"
  "qpdf qpdf"
  "pdftotext poppler-utils"
  "chromium chromium"
  "soffice libreoffice-calc"
  "ccx calculix-ccx"
)
missing=()
for pair in "${wanted[@]}"; do
  command -v "${pair%% *}" >/dev/null 2>&1 || missing+=("${pair#* }")
done
/usr/bin/python3 -c 'import ezdxf' >/dev/null 2>&1 || missing+=(python3-ezdxf)
/usr/bin/python3 -c 'import scipy' >/dev/null 2>&1 || missing+=(python3-scipy)
[ ${#missing[@]} -eq 0 ] && exit 0
command -v apt-get >/dev/null 2>&1 || { echo "Not installed here, tests that need them will be skipped: ${missing[*]}"; exit 0; }

as_root=()
if [ "$(id -u)" -ne 0 ]; then
  command -v sudo >/dev/null 2>&1 && as_root=(sudo) || { echo "No right to install: ${missing[*]}"; exit 0; }
fi
echo "Installing for the tests: ${missing[*]}"
"${as_root[@]}" apt-get update -qq >/dev/null 2>&1
DEBIAN_FRONTEND=noninteractive "${as_root[@]}" apt-get install -y -qq --no-install-recommends "${missing[@]}" >/dev/null 2>&1 \
  || echo "Some of them could not be installed; tests that need them will be skipped."
exit 0
