# shellcheck shell=bash
# Sourced by app/start.sh (install_for_running) and tests/run.sh (install_for_tests): which Debian
# packages a task needs, and how missing ones are installed. This is the only list of them.

build_packages=(
    g++ cmake ninja-build
    qt6-base-dev qt6-charts-dev libqt6opengl6-dev qt6-svg-dev libqt6sql6-sqlite
    libsqlite3-dev libssl-dev zlib1g-dev libcsv-dev libboost-dev libexpected-dev nlohmann-json3-dev
)

# At run time: the display's plugin, time zones, and a font (without one every label is a row of
# boxes); in other languages than English also Qt's own texts, for example in file dialogs.
run_packages=(qt6-qpa-plugins tzdata fonts-dejavu-core)
if [[ ${LANGUAGE:-${LC_ALL:-${LC_MESSAGES:-${LANG:-}}}} == de* ]]; then
    run_packages+=(qt6-translations-l10n)
fi
if [[ -n ${WAYLAND_DISPLAY:-} && -z ${DISPLAY:-} ]]; then
    run_packages+=(qt6-wayland)
fi

# The tests also extract the texts from the code, read reports with independent tools, validate JSON
# and the files installed with the program, and use the window as a screen reader does.
test_packages=(
    libgtest-dev libgmock-dev librapidcheck-dev libgsl-dev
    node-csv-spectrum qt6-l10n-tools sqlite3
    poppler-utils tidy libxml2-utils
    at-spi2-core gir1.2-atspi-2.0 python3-gi dbus-daemon xvfb xauth
    desktop-file-utils appstream mandoc shared-mime-info python3-jsonschema zsh fish
)

# The benchmark measures a window on its own display.
bench_packages=(xvfb xauth xdotool)

say() {
    printf '%s\n' "$*" >&2
}

# Prints those of the named packages that are not installed, one per line.
not_installed() {
    comm -23 <(printf '%s\n' "$@" | sort -u) \
        <(dpkg-query -W -f '${db:Status-Status} ${Package}\n' "$@" 2>/dev/null |
            sed -n 's/^installed //p' | sort -u)
}

# Runs a command as root. Without a terminal it fails if the user is neither root nor allowed to use
# sudo without a password; at a terminal sudo may ask for the password.
as_root() {
    if [[ $(id -u) -eq 0 ]]; then
        env DEBIAN_FRONTEND=noninteractive "$@"
    elif command -v sudo >/dev/null && { [[ -t 0 ]] || sudo -n true 2>/dev/null; }; then
        sudo env DEBIAN_FRONTEND=noninteractive "$@"
    else
        return 1
    fi
}

install_line() {
    printf 'apt-get install -y --no-install-recommends %s' "$*"
}

# Installs the missing ones of the named packages. If that fails it prints what to do and ends the
# script; on a system without apt-get it prints the packages and continues.
install_missing() {
    if ! command -v apt-get >/dev/null || ! command -v dpkg-query >/dev/null; then
        say "This system has no apt-get. The job needs what Debian 12 calls: $*"
        say "Continuing with what is installed; cmake names what it does not find."
        return
    fi
    local missing
    mapfile -t missing < <(not_installed "$@")
    if [[ ${#missing[@]} -eq 0 ]]; then
        return
    fi
    say "Installing ${#missing[@]} missing packages: ${missing[*]}"
    if ! as_root true; then
        say "That needs root. As root, run:"
        say "    apt-get update && $(install_line "${missing[@]}")"
        exit 1
    fi
    # Standard output is only for the results of the script.
    as_root apt-get -q update >&2 || say "Not all package lists could be updated; trying anyway."
    if ! as_root apt-get -q -y --no-install-recommends install "${missing[@]}" >&2; then
        say "The packages could not be installed. The line was:"
        say "    $(install_line "${missing[@]}")"
        exit 1
    fi
}

install_for_running() {
    install_missing "${build_packages[@]}" "${run_packages[@]}"
}

install_for_bench() {
    install_missing "${build_packages[@]}" "${run_packages[@]}" "${test_packages[@]}" \
        "${bench_packages[@]}"
}

install_for_tests() {
    install_missing "${build_packages[@]}" "${run_packages[@]}" "${test_packages[@]}"
}
