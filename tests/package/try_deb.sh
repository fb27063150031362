#!/usr/bin/env bash
# Builds the Debian package, installs it in a bare Debian 12 without the sources, runs the program
# there, and removes it again. Takes some minutes and needs the network, so tests/run.sh
# does not run it.
# Needs root (debootstrap, chroot). Usage: try_deb.sh [ROOT]; a named root is made once and
# reused.
set -euo pipefail

source_root=$(cd -- "$(dirname -- "${BASH_SOURCE[0]}")/../.." && pwd)
work=$(mktemp -d)
bare=${1:-$work/root}

clean_up() {
    umount "$bare/proc" 2>/dev/null || true
    rm -rf -- "$work"
}
trap clean_up EXIT

step() {
    printf '\n== %s ==\n' "$*"
}

fail() {
    printf 'FAILED: %s\n' "$*" >&2
    exit 1
}

inside() {
    chroot "$bare" env -i PATH=/usr/sbin:/usr/bin:/sbin:/bin HOME=/root LC_ALL=C.UTF-8 \
        DEBIAN_FRONTEND=noninteractive "$@"
}

# The server of this system's packages, from any kind of sources file.
package_server() {
    { cat /etc/apt/sources.list /etc/apt/sources.list.d/*.{list,sources} 2>/dev/null || true; } |
        sed -n 's/^URIs: *\([^ ]*\).*/\1/p; s/^deb \(\[[^]]*\] \)\?\([^ ]*\) .*/\2/p' | sed -n 1p
}

# Every file that a package can leave behind; without the records of apt and dpkg.
files_inside() {
    (cd "$bare" && find . -xdev \( -path ./proc -o -path ./var/cache -o -path ./var/lib/apt -o \
        -path ./var/lib/dpkg -o -path ./var/log -o -path ./tmp -o -path ./try \) -prune -o -print |
        sort)
}

[[ $(id -u) -eq 0 ]] || fail "this needs root"
for tool in debootstrap dpkg-shlibdeps cpack; do
    command -v "$tool" >/dev/null || fail "$tool is not installed"
done

step "Building"
cd -- "$source_root"
cmake --preset release
cmake --build --preset release
cpack -G DEB --config build/release/CPackConfig.cmake -B "$work/deb"
deb=$(echo "$work"/deb/*.deb)
[[ -f $deb ]] || fail "no package was made"
dpkg-deb --info "$deb"
dpkg-deb --contents "$deb"

step "Holding it against the policy"
if command -v lintian >/dev/null; then
    lintian --fail-on error --tag-display-limit 0 "$deb"
else
    echo "lintian is not installed: left out"
fi

step "A bare Debian 12"
if [[ ! -e $bare/etc/debian_version ]]; then
    mirror=$(package_server)
    debootstrap --variant=minbase bookworm "$bare" ${mirror:+"$mirror"} >"$work/debootstrap.log" ||
        fail "debootstrap: $(tail -n 5 "$work/debootstrap.log")"
    # The bare system gets packages from the same server, with the same settings, as this one.
    cp -a /etc/apt/apt.conf.d/. "$bare/etc/apt/apt.conf.d/"
    cp /etc/resolv.conf "$bare/etc/resolv.conf"
fi
mountpoint -q "$bare/proc" || mount -t proc proc "$bare/proc"
mkdir -p "$bare/try"
cp "$deb" "$bare/try/holdband.deb"

step "Installing"
inside dpkg -P holdband 2>/dev/null || true # of a try that was broken off
inside apt-get -q update
# Dependencies are installed first, so that the list of files shows only what the package leaves.
depends=$(dpkg-deb -f "$deb" Depends | sed 's/([^)]*)//g; s/|[^,]*//g; s/,/ /g')
# shellcheck disable=SC2086
inside apt-get -q -y --no-install-recommends install $depends >"$work/apt.log" ||
    fail "$(tail -n 5 "$work/apt.log")"
files_inside >"$work/before"
inside apt-get -q -y --no-install-recommends install /try/holdband.deb ||
    fail "the package could not be installed"

step "Running"
inside holdband --version
inside holdband load /try/sample.holdband /usr/share/holdband/sample-data/spring-trials.json
inside holdband verdict /try/sample.holdband "Ale 3"
inside holdband report /try/sample.holdband "Ale 3" --out /try/ale.pdf
[[ $(head -c 5 "$bare/try/ale.pdf") == %PDF- ]] || fail "the report is no PDF"
# The window, as a double-click opens it; the offscreen platform replaces the display.
inside QT_QPA_PLATFORM=offscreen timeout 5 holdband /try/sample.holdband && status=0 || status=$?
[[ $status -eq 124 ]] || fail "the window ended by itself with status $status"
inside grep -q '^50:application/x-holdband:\*\.holdband$' /usr/share/mime/globs2 ||
    fail "the file type is not known"

step "Removing"
inside dpkg -P holdband
files_inside >"$work/after"
# ~/.config has the user's settings of the window.
left=$(comm -13 "$work/before" "$work/after" | grep -v '^./root/' || true)
[[ -z $left ]] || fail "left behind: $left"
echo "Installed, ran, and left nothing behind."
rm -rf -- "$bare/try"
