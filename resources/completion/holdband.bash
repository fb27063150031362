# Completion of holdband for bash.

_holdband_batches() {
    holdband batches "$1" 2>/dev/null | sed -n 's/^\([^ ].*\) · .* · .*$/\1/p'
}

# Puts into COMPREPLY those lines of standard input that begin like the word, quoted as needed.
_holdband_offer() {
    local word=$1 line
    while IFS= read -r line; do
        if [[ $line == "$word"* ]]; then
            COMPREPLY+=("$(printf '%q' "$line")")
        fi
    done
}

_holdband_options() {
    case $1 in
        new) printf '%s\n' --zone --units --currency ;;
        import) printf '%s\n' --column --time --zone --date-order --unit --pattern --decimal \
            --names --values --unit-column --delimiter --header-line --event --rejects --dry-run ;;
        meter) printf '%s\n' --at --event --note ;;
        batches | verdict | energy) printf '%s\n' --json ;;
        compare) printf '%s\n' --json --from --only ;;
        report) printf '%s\n' --out --force --paper --size --dark ;;
    esac
    printf '%s\n' --help
}

_holdband() {
    local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD - 1]}
    local command=${COMP_WORDS[1]}
    COMPREPLY=()
    if [[ $COMP_CWORD -eq 1 ]]; then
        _holdband_offer "$word" <<< $'new\nload\nimport\nmeter\nbatches\nverdict\nenergy\ncompare\nreport\nexport\ncheck\nbackup'
        mapfile -t -O "${#COMPREPLY[@]}" COMPREPLY < <(compgen -f -X '!*.holdband' -- "$word")
        return
    fi
    case $before in
        --paper) _holdband_offer "$word" <<< $'a4\nletter' ; return ;;
        --size) _holdband_offer "$word" <<< $'1920x1080\n1080x1920' ; return ;;
        --units) _holdband_offer "$word" <<< $'us\nmetric' ; return ;;
        --unit) _holdband_offer "$word" <<< $'f\nc' ; return ;;
        --event) _holdband_offer "$word" <<< $'rollover\nreset' ; return ;;
        --out | --rejects) mapfile -t COMPREPLY < <(compgen -f -- "$word") ; return ;;
    esac
    if [[ $word == -* ]]; then
        _holdband_offer "$word" < <(_holdband_options "$command")
    elif [[ $COMP_CWORD -gt 2 && $command =~ ^(verdict|energy|compare|report)$ ]]; then
        _holdband_offer "$word" < <(_holdband_batches "${COMP_WORDS[2]}")
    else
        mapfile -t COMPREPLY < <(compgen -f -- "$word")
    fi
}

complete -o filenames -F _holdband holdband
