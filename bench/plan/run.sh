#!/usr/bin/env bash
# How long the main job takes as a whole process: survey folder to full sheet set, started from nothing, five times.
# Prints each run, the median, and the ratio of the median to a process that only prints its help (start-up of the runtime).
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
project="${1:-examples/marrowby-parkway}"
bash tools/publish-command.sh
out="$(mktemp -d)"; trap 'rm -rf "$out"' EXIT
measure() { # seconds and peak memory (KiB) of one run
  /usr/bin/env python3 - "$@" <<'PY'
import os, resource, subprocess, sys, time
start = time.perf_counter()
code = subprocess.run(sys.argv[1:], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL).returncode
print(f"{time.perf_counter() - start:.3f} {resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss} {code}")
PY
}
median() { sort -n | awk '{ a[NR] = $1 } END { print a[int((NR + 1) / 2)] }'; }
help_times="" plan_times=""
for i in 1 2 3 4 5; do
  read -r s _ _ < <(measure artifacts/cli/slabwright --help); help_times+="$s"$'\n'
  read -r s m c < <(measure artifacts/cli/slabwright plan "$project" --out "$out"); plan_times+="$s"$'\n'
  echo "run $i: $s s, $((m / 1024)) MiB at most, exit code $c"
done
h="$(printf %s "$help_times" | median)"; p="$(printf %s "$plan_times" | median)"
echo "median $p s; help alone $h s; ratio $(awk "BEGIN { printf \"%.1f\", $p / $h }")"
