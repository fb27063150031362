#!/usr/bin/env bash
# Installs missing packages, builds Holdband, and opens the sample logbook; without a display it
# prints the logbook's batches and figures instead.
set -euo pipefail

root=$(cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.." && pwd)
# shellcheck source=/dev/null
source "$root/app/packages.sh"
# shellcheck source=/dev/null
source "$root/app/building.sh"

holdband=$root/build/release/holdband
description=$root/sample-data/spring-trials.json
temporary=

clean_up() {
    if [[ -n $temporary ]]; then
        rm -rf -- "$temporary"
    fi
}
trap clean_up EXIT

# Loads the sample into the named logbook. It is made elsewhere and moved, so that an interrupted
# run leaves no incomplete logbook behind.
load_sample() {
    local logbook=$1
    mkdir -p -- "$(dirname -- "$logbook")"
    temporary=$(mktemp -d -- "$(dirname -- "$logbook")/new-XXXXXX")
    "$holdband" load "$temporary/sample.holdband" "$description" >&2
    mv -n -- "$temporary/sample.holdband" "$logbook"
    clean_up
    temporary=
}

open_window() {
    local logbook=${XDG_DATA_HOME:-$HOME/.local/share}/holdband/sample.holdband
    if [[ ! -e $logbook ]]; then
        load_sample "$logbook"
    fi
    say "Opening $logbook"
    exec "$holdband" "$logbook"
}

# Prints the heading, then the output of the command.
show() {
    printf '\n== %s ==\n\n' "$1"
    shift
    "$holdband" "$@"
}

print_results() {
    temporary=$(mktemp -d)
    local logbook=$temporary/sample.holdband
    local batch
    say "No display: printing the results of the sample logbook."
    "$holdband" load "$logbook" "$description" >&2
    show "Batches" batches "$logbook"
    for batch in "Lager 1" "Ale 1" "Saison 1" "Lager 2" "Ale 2" "Ale 3"; do
        show "$batch: did it stay in its band?" verdict "$logbook" "$batch"
        show "$batch: what did it use?" energy "$logbook" "$batch"
    done
    show "Two batches side by side: Ale 2 and Ale 3" compare "$logbook" "Ale 2" "Ale 3"
    show "Two setups side by side: Loop and Cabinet" compare "$logbook" "Loop" "Cabinet"
}

install_for_running
(cd -- "$root" && build_preset release Holdband 400)
if [[ -n ${DISPLAY:-} || -n ${WAYLAND_DISPLAY:-} ]]; then
    open_window
else
    print_results
fi
