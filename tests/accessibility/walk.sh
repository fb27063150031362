#!/usr/bin/env bash
# Starts the program with its own display and session bus and reads it through AT-SPI, as a screen
# reader would. Usage: walk.sh HOLDBAND DESCRIPTION.json
# Exits with 77 (skipped) if a required package is not installed.
set -euo pipefail

holdband=$1
description=$2
here=$(cd -- "$(dirname -- "${BASH_SOURCE[0]}")" && pwd)

# shellcheck source=/dev/null
source "$here/../needs.sh"
needs xvfb-run xauth dbus-run-session
/usr/bin/python3 -c 'import gi; gi.require_version("Atspi", "2.0")' 2>/dev/null ||
    is_missing "AT-SPI for Python"

folder=$(mktemp -d)
trap 'rm -rf -- "$folder"' EXIT
export HOME=$folder XDG_RUNTIME_DIR=$folder XDG_CONFIG_HOME=$folder/config
export QT_QPA_PLATFORM=xcb QT_LINUX_ACCESSIBILITY_ALWAYS_ON=1 LC_ALL=C.UTF-8
# Leaks are checked by the other tests, not here.
export ASAN_OPTIONS="${ASAN_OPTIONS:-}:detect_leaks=0"
"$holdband" load "$folder/sample.holdband" "$description" >/dev/null
xvfb-run -a -s "-screen 0 1400x900x24 -noreset" dbus-run-session -- \
    /usr/bin/python3 "$here/walk.py" "$holdband" "$folder/sample.holdband"
