# shellcheck shell=bash
# Sourced by app/start.sh and tests/run.sh: configures and builds a preset, with one line that shows
# what was built last, the progress, and the approximate time left.

# Seconds as text: "40 s", "3 min".
time_text() {
    if (($1 < 100)); then
        printf '%d s' "$1"
    else
        printf '%d min' $((($1 + 30) / 60))
    fi
}

# The folder in one of ninja's lines, such as "ui/charts"; empty if there is none.
folder_of() {
    if [[ $1 =~ object\ ([^ ]+)/CMakeFiles/[^/]+\.dir/(Unity/unity_)?([a-z_]+) ]]; then
        local room=${BASH_REMATCH[3]%_cxx}
        printf '%s/%s' "${BASH_REMATCH[1]}" "${room%_}"
    fi
}

# One line on a terminal; elsewhere, as in a log, a new line every 20 seconds.
show_line() {
    if [[ -t 2 ]]; then
        printf '\r%s\033[K' "$1" >&2
    elif ((SECONDS >= next_line)); then
        say "$1"
        next_line=$((SECONDS + 20))
    fi
}

# Reads ninja's output. Lines that are not progress (compiler messages) are added to OTHERS, a file.
# Usage: show_progress WHAT EXPECTED_SECONDS OTHERS
show_progress() {
    local began=$SECONDS next_line=0 finished=0 total=0 folder="" rest="" failed="" line state left state_words
    while true; do
        state=0
        IFS= read -r -t 1 line || state=$?
        ((state == 0 || state > 128)) || break # above 128: a second has passed without a line
        rest+=$line
        if ((state == 0)) && [[ $rest =~ ^\[([0-9]+)/([0-9]+)\]\ (.*) ]]; then
            finished=${BASH_REMATCH[1]}
            total=${BASH_REMATCH[2]}
            folder=$(folder_of "${BASH_REMATCH[3]}")
            rest=
        elif ((state == 0)); then
            printf '%s\n' "$rest" >>"$3"
            [[ $rest != FAILED:* ]] || failed=yes
            rest=
        fi
        left=$(($2 + began - SECONDS))
        if ((finished * 4 > total)); then # the steps so far say more than other machines' times
            left=$(((SECONDS - began) * (total - finished) / finished))
        fi
        ((left > 0)) || left=1
        state_words=
        if ((total > 0)); then
            state_words="$finished of $total${folder:+ · $folder} · "
        fi
        show_line "Building $1: ${state_words}about $(time_text $left) left"
    done
    if [[ -t 2 ]]; then
        printf '\r\033[K' >&2
    fi
    if [[ -z $failed ]]; then
        say "Built $1 in $(time_text $((SECONDS - began)))."
    fi
}

# Whether the build was configured after CMakePresets.json was last changed; ninja itself checks the
# CMake files.
is_configured() {
    [[ -e $1/build.ninja && ! CMakePresets.json -nt $1/build.ninja ]]
}

# Builds the preset; ends the script with the compiler's messages if that fails. SECONDS_OF_CPU:
# the time of a first build on one core, for the first estimate of the time left.
# Usage: build_preset PRESET WHAT SECONDS_OF_CPU, in the root of the sources
build_preset() {
    local folder=build/$1 log=build/$1.log
    mkdir -p build
    : >"$log"
    if ! is_configured "$folder" && ! cmake --preset "$1" >"$log" 2>&1; then
        cat "$log" >&2
        say "Nothing was built: cmake could not configure it, for the reason above."
        exit 1
    fi
    if ninja -C "$folder" -n | grep -q 'no work to do'; then
        return
    fi
    if ! NINJA_STATUS='[%f/%t] ' cmake --build --preset "$1" 2>&1 |
        show_progress "$2" $(($3 / $(nproc))) "$log"; then
        cat "$log" >&2
        say "It could not be built, for the reason above (also in $log)."
        exit 1
    fi
}
