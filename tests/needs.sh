# shellcheck shell=bash
# Sourced by tests that are scripts: checks the tools that they need.

# Ends the script: with 77, which ctest counts as skipped, but as failed on a build server (CI=true),
# because everything is installed there.
is_missing() {
    echo "$1 is not installed"
    if [[ ${CI:-} == true ]]; then
        exit 1
    fi
    exit 77
}

# Usage: needs TOOL…
needs() {
    local tool
    for tool in "$@"; do
        command -v "$tool" >/dev/null || is_missing "$tool"
    done
}
