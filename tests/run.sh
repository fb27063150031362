#!/usr/bin/env bash
# Installs what is missing, builds with address and undefined-behaviour sanitizers, and runs every
# test. Ends with ctest's summary and ctest's exit status.
set -euo pipefail

root=$(cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.." && pwd)
# shellcheck source=/dev/null
source "$root/app/packages.sh"

install_for_tests
cd -- "$root"
cmake --preset sanitize
cmake --build --preset sanitize
exec ctest --preset sanitize --output-on-failure
