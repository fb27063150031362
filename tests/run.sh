#!/usr/bin/env bash
# Installs missing packages, builds with address and undefined-behaviour sanitizers, and runs every
# test. Ends with ctest's summary, the names of the failed cases, and ctest's exit status.
set -euo pipefail

root=$(cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.." && pwd)
# shellcheck source=/dev/null
source "$root/app/packages.sh"
# shellcheck source=/dev/null
source "$root/app/building.sh"

install_for_tests
cd -- "$root"
build_preset sanitize "the tests" 900
status=0
ctest --preset sanitize --output-on-failure || status=$?
tests/scripts/failed_cases.sh build/sanitize/Testing/Temporary/LastTest.log
exit "$status"
