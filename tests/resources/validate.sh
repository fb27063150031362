#!/usr/bin/env bash
# Checks the files installed with the program: each kind with its validator, and all with the
# program's own list of commands. Usage: validate.sh HOLDBAND RESOURCES. Exits with 77 if a
# validator is missing.
set -euo pipefail

holdband=$1
resources=$2
# shellcheck source=/dev/null
source "$(dirname -- "${BASH_SOURCE[0]}")/../needs.sh"
needs desktop-file-validate appstreamcli mandoc update-mime-database xmllint zsh fish
scratch=$(mktemp -d)
trap 'rm -rf -- "$scratch"' EXIT

fail() {
    echo "$*" >&2
    exit 1
}

desktop-file-validate "$resources/desktop/holdband.desktop"
appstreamcli validate --no-net "$resources/desktop/org.holdband.holdband.metainfo.xml"
xmllint --noout "$resources"/icons/*.svg "$resources"/desktop/*.xml
complaints=$(mandoc -Tlint -Wwarning "$resources/man/holdband.1" 2>&1) || true
[[ -z $complaints ]] || fail "$complaints"

# The MIME type by the file's extension and by its contents.
mkdir -p "$scratch/mime/packages"
cp "$resources/desktop/holdband.xml" "$scratch/mime/packages"
update-mime-database "$scratch/mime"
grep -q '^50:application/x-holdband:\*\.holdband$' "$scratch/mime/globs2" || fail "no glob"
"$holdband" new "$scratch/new.holdband" 2>/dev/null
[[ $(head -c 15 "$scratch/new.holdband") == "SQLite format 3" ]] || fail "no SQLite file"
[[ $(tail -c +69 "$scratch/new.holdband" | head -c 4) == HLDB ]] || fail "no application id"

# Every command and option is in the manual.
manual_of() { # what the manual says of a command: up to the next one
    awk -v start=".It Cm $1 " '/^\.It Cm / { inside = index($0, start) == 1 } inside' \
        "$resources/man/holdband.1"
}
mapfile -t commands < <("$holdband" --help | sed -n 's/^usage: holdband \([a-z]*\) .*/\1/p')
[[ ${#commands[@]} -ge 13 ]] || fail "the help lists too few commands"
for command in "${commands[@]}"; do
    grep -q "^\.It Cm $command " "$resources/man/holdband.1" || fail "the manual lacks $command"
    while IFS= read -r option; do
        case $option in
            --color | --quiet | --help | --version) # once, for all commands
                grep -q -e "Fl -${option#--}\b" "$resources/man/holdband.1" ||
                    fail "the manual lacks $option" ;;
            *)
                manual_of "$command" | grep -q -e "Fl -${option#--}\b" ||
                    fail "the manual lacks $option of $command" ;;
        esac
    done < <("$holdband" "$command" --help | sed -n 's/^  \(-[a-zA-Z], \)\{0,1\}\(--[a-z-]*\).*/\2/p')
done

# Names complete on a real line.
cat >"$scratch/d.json" <<'END'
{ "holdband": 1, "setups": [ { "name": "Cold box" } ],
  "sensors": [ { "name": "B", "reads": "beer" } ],
  "batches": [ { "name": "Pale 1", "setup": "Cold box", "pitched": "2026-03-01 00:00",
                 "beer_sensor": "B", "tolerance_c": 1,
                 "schedule": [ { "stage": "Hold", "target_c": 20 } ] },
               { "name": "Pale 2", "setup": "Cold box", "pitched": "2026-03-01 00:00",
                 "beer_sensor": "B", "tolerance_c": 1,
                 "schedule": [ { "stage": "Hold", "target_c": 20 } ] } ] }
END
mkdir "$scratch/line"
"$holdband" load "$scratch/line/l.holdband" "$scratch/d.json" >/dev/null
ln -s "$holdband" "$scratch/line/holdband"
python3 "$(dirname -- "$0")/completion.py" "$resources/completion" "$scratch/line" ||
    fail "the completion"
echo "all are sound"
