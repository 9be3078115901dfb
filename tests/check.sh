#!/usr/bin/env bash
# Installs what is missing, builds everything and runs every test. A skipped test is a failure where
# the reference recordings lie beside the checkout; elsewhere the number of skipped tests is printed.
#   bash tests/check.sh
set -euo pipefail
cd "$(dirname "$(realpath "${BASH_SOURCE[0]}")")/.."
jobs=$(nproc)

echo "== Packages"
bash resources/install-packages.sh

echo "== Formatting"
git ls-files '*.cpp' '*.h' | xargs clang-format --dry-run --Werror

echo "== Build (preset dev)"
cmake --preset dev
cmake --build build/dev --parallel "$jobs"

echo "== Tests"
data=${AFTERBEAT_DATA:-../shared/data}
log=build/dev/tests.log
status=0
ctest --test-dir build/dev --parallel "$jobs" --output-on-failure --no-tests=error \
  --output-log "$log" --verbose >build/dev/tests.out 2>&1 || status=$?
grep -E '^ *[0-9]+/[0-9]+ Test|tests passed|tests failed|FAILED|Failure' build/dev/tests.out || true
if ((status != 0)); then
  grep -B2 -A30 -E 'Failure|\*\*\*Failed|\*\*\*Exception' "$log" | head -n 200 || true
  exit "$status"
fi

skipped=$(grep -c -E '^[0-9]+: \[  SKIPPED \] [A-Za-z].*\([0-9]+ ms\)$|\*\*\*Skipped' "$log" || true)
if [[ -d $data ]] && ((skipped > 0)); then
  echo "$skipped tests were skipped although the reference recordings are here:"
  grep -E 'SKIPPED|\*\*\*Skipped' "$log"
  exit 1
fi
echo "Skipped tests: $skipped"
