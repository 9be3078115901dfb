#!/usr/bin/env bash
# Installs what is missing, builds Afterbeat and opens it on the sample rescue. Without a display it
# writes the handover sheet as PDF and prints the figures.
#   bash app/start.sh [FILE]
set -euo pipefail
record=${1:-}
[[ -n $record ]] && record=$(realpath "$record")
cd "$(dirname "$(realpath "${BASH_SOURCE[0]}")")/.."

echo "1. Packages"
bash resources/install-packages.sh
echo "2. Build (release, into build/release)"
cmake --preset release -DAFTERBEAT_TESTS=OFF >build-release.log 2>&1 || { cat build-release.log; exit 1; }
rm -f build-release.log
cmake --build build/release --target afterbeat afterbeat-cli

record=${record:-samples/ferry-terminal.resuslog}
if [[ -n ${DISPLAY:-} || -n ${WAYLAND_DISPLAY:-} ]]; then
  echo "3. Opening $record"
  exec build/release/bin/afterbeat "$record"
fi
echo "3. There is no display: writing the handover sheet and printing the figures of $record"
build/release/bin/afterbeat-cli sheet "$record" -o build/handover.pdf
build/release/bin/afterbeat-cli measure "$record"
echo
echo "The handover sheet is in build/handover.pdf."
