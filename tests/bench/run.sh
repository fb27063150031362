#!/usr/bin/env bash
# Builds the benchmark, makes its data in a temporary folder, and prints the table of targets.
# Usage: run.sh [ROWS [RUNS]]   (1000000 rows, medians of 5 by default)
set -euo pipefail

root=$(cd -- "$(dirname -- "${BASH_SOURCE[0]}")/../.." && pwd)
# shellcheck source=/dev/null
source "$root/app/packages.sh"

install_for_bench
cd -- "$root"
cmake --preset bench >&2
cmake --build --preset bench >&2
folder=$(mktemp -d)
trap 'rm -rf -- "$folder"' EXIT
cp tests/bench/duckdb.mjs "$folder"
npm install --silent --no-audit --no-fund --prefix "$folder" @duckdb/node-api >/dev/null 2>&1 ||
    echo "DuckDB's package can't be had: its rows say \"not there\"" >&2
build/bench/holdband load "$folder/sample.holdband" sample-data/spring-trials.json >/dev/null
# Without -noreset the display restarts whenever its last client disconnects.
xvfb-run -a -s "-screen 0 1600x1000x24 -noreset" \
    build/bench/bench build/bench/holdband build/bench/trivial_window "$folder" "$@"
