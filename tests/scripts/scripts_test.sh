#!/usr/bin/env bash
# Tests the output of the scripts for the build and the tests. Usage: scripts_test.sh SOURCES
set -euo pipefail

root=$1
# shellcheck source=/dev/null
source "$root/app/packages.sh"
# shellcheck source=/dev/null
source "$root/app/building.sh"
scratch=$(mktemp -d)
trap 'rm -rf -- "$scratch"' EXIT

expect() {
    if [[ $1 != "$2" ]]; then
        printf 'Expected: %s\nbut got:  %s\n' "$2" "$1" >&2
        exit 1
    fi
}

# Times and folders in the line of progress.
expect "$(time_text 40)" "40 s"
expect "$(time_text 150)" "3 min"
objects="Building CXX object core/CMakeFiles/holdband_core.dir"
expect "$(folder_of "$objects/store/exclusions.cpp.o")" "core/store"
expect "$(folder_of "$objects/Unity/unity_store_1_cxx.cxx.o")" "core/store"
expect "$(folder_of "Building CXX object tests/ui/CMakeFiles/ui_tests.dir/Unity/unity_files_0_cxx.cxx.o")" \
    "tests/ui/files"
expect "$(folder_of "Linking CXX executable holdband")" ""

# Other lines than progress go to the log, only complete ones; the last line names what was built.
shown=$(printf '%s\n' "[1/2] $objects/store/rows.cpp.o" "rows.cpp:1:1: error: no" "  int x" \
    "[2/2] Linking CXX executable holdband" |
    show_progress "the trial" 60 "$scratch/others" 2>&1 |
    sed -E 's/[0-9]+ s( left|\.)/N s\1/') # a busy machine may take a second or two
expect "$(cat "$scratch/others")" "$(printf 'rows.cpp:1:1: error: no\n  int x')"
expect "${shown%%$'\n'*}" "Building the trial: 1 of 2 · core/store · about N s left"
expect "${shown##*$'\n'}" "Built the trial in N s."

# A failed build is not reported as built, whichever step failed.
shown=$(printf '%s\n' "[1/1] Linking CXX executable holdband" "FAILED: holdband" |
    show_progress "the trial" 60 "$scratch/failure" 2>&1)
expect "$(grep -c Built <<<"$shown" || true)" "0"
expect "$(cat "$scratch/failure")" "FAILED: holdband"

# A forbidden include is found, and so is a cycle of rooms.
tree=$scratch/tree
mkdir -p "$tree"/core/{text,store/readings} "$tree"/ui/{rounds,window}
printf 'core_room(text\n    SOURCES\n)\ncore_room(store\n    USES text\n    SOURCES\n)\n' \
    >"$tree/core/CMakeLists.txt"
echo '#include "core/text/numbers.h"' >"$tree/core/store/readings/imports.cpp"
echo '#include "ui/rounds/rounds_page.h"' >"$tree/ui/window/pages.h"
layers() {
    python3 "$root/tests/scripts/layers.py" "$tree" || true
}
expect "$(layers | tail -1)" "2 rooms of the core, 2 of the window, 2 includes between them, 0 wrong"
echo '#include "core/store/readings/imports.h"' >"$tree/core/text/numbers.cpp"
expect "$(layers | head -1)" "core/text/numbers.cpp: core/text must not include core/store"
echo '#include "ui/window/pages.h"' >"$tree/ui/rounds/rounds_page.h"
expect "$(layers | grep -c "in a circle, among them: ui/rounds, ui/window")" "1"

# Packages: installed ones are not listed.
expect "$(not_installed bash no-such-package-1 coreutils)" "no-such-package-1"

# The cases in a log of ctest that failed, crashed, or timed out.
cat >"$scratch/log" <<'END'
1/3 Testing: ui_tests.0
1/3 Test: ui_tests.0
[ RUN      ] Lanes.Draw
[       OK ] Lanes.Draw (2 ms)
[ RUN      ] Lanes.Zoom
[  FAILED  ] Lanes.Zoom (3 ms)
[ RUN      ] Trials/AgainstGsl.Hours/3
[  FAILED  ] Trials/AgainstGsl.Hours/3, where GetParam() = 4 (1 ms)
[  SKIPPED ] Lanes.Skip (0 ms)
[  FAILED  ] 2 tests, listed below:
[  FAILED  ] Lanes.Zoom
2/3 Testing: ui_tests.1
2/3 Test: ui_tests.1
[ RUN      ] Run.Dies
==1==ERROR: AddressSanitizer: heap-use-after-free
3/3 Testing: store_tests.0
3/3 Test: store_tests.0
[ RUN      ] Undo.Hangs
END
expect "$("$root/tests/scripts/failed_cases.sh" "$scratch/log")" "failed: Lanes.Zoom (ui_tests.0)
failed: Trials/AgainstGsl.Hours/3 (ui_tests.0)
did not end: Run.Dies (ui_tests.1)
did not end: Undo.Hangs (store_tests.0)"
