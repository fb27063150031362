# Completion of holdband for bash. The program itself knows what can stand next. Names are offered
# unquoted: readline quotes them, because they are declared as file names.

# The word on the line without its quotes.
_holdband_plain() {
    local word=${1#[\"\']}
    printf '%s' "${word//\\/}"
}

_holdband() {
    local words=() last word line
    for word in "${COMP_WORDS[@]:1:COMP_CWORD}"; do
        word=$(_holdband_plain "$word")
        words+=("${word%[\"\']}")
    done
    last=${words[-1]}
    COMPREPLY=()
    while IFS= read -r line; do
        if [[ $line == :files ]]; then
            mapfile -t -O "${#COMPREPLY[@]}" COMPREPLY < <(compgen -f -- "$last")
        elif [[ $line == "$last"* ]]; then
            COMPREPLY+=("$line")
        fi
    done < <(holdband complete -- "${words[@]}" 2>/dev/null)
}

complete -o filenames -F _holdband holdband
