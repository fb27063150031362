# Completion of holdband for bash. Names are offered unquoted: readline quotes them, because they
# are declared as file names.

# The word on the line without its quotes.
_holdband_plain() {
    local word=${1#[\"\']}
    printf '%s' "${word//\\/}"
}

# Lines "NAME · SETUP · FROM to TO", each with the batch's verdict indented below.
_holdband_batches() {
    holdband batches "$1" 2>/dev/null | sed -n 's/^\([^ ].*\) · .* · .*$/\1/p'
}

_holdband_setups() {
    holdband batches "$1" 2>/dev/null | sed -n 's/^[^ ].* · \(.*\) · .*$/\1/p' | sort -u
}

# Adds the lines of standard input that begin with the word to COMPREPLY.
_holdband_offer() {
    local word line
    word=$(_holdband_plain "$1")
    while IFS= read -r line; do
        [[ $line == "$word"* ]] && COMPREPLY+=("$line")
    done
    return 0
}

_holdband_files() {
    local word
    word=$(_holdband_plain "$1")
    mapfile -t -O "${#COMPREPLY[@]}" COMPREPLY < <(compgen -f "${@:2}" -- "$word")
}

_holdband_options() {
    case $1 in
        new) printf '%s\n' --zone --units --currency ;;
        import) printf '%s\n' --column --time --zone --date-order --unit --pattern --decimal \
            --names --values --unit-column --delimiter --header-line --sheet --event --rejects \
            --dry-run ;;
        meter) printf '%s\n' --at --event --note ;;
        batches | verdict | energy) printf '%s\n' --json ;;
        compare) printf '%s\n' --json --from --only ;;
        forecast) printf '%s\n' --plan --like --volume --og --fg --room --swing --room-from \
            --room-to --room-sensor --shared --json ;;
        report) printf '%s\n' --out --force --paper --size --dark --from --only ;;
    esac
    printf '%s\n' --help
}

# Completes the value of the option before the word. Fails if that option takes no value.
_holdband_value() {
    local before=$1 word=$2 logbook=$3
    case $before in
        --paper) _holdband_offer "$word" <<< $'a4\nletter' ;;
        --size) _holdband_offer "$word" <<< $'1920x1080\n1080x1920' ;;
        --units) _holdband_offer "$word" <<< $'us\nmetric' ;;
        --unit) _holdband_offer "$word" <<< $'f\nc' ;;
        --event) _holdband_offer "$word" <<< $'rollover\nreset' ;;
        --decimal) _holdband_offer "$word" <<< $'comma\npoint' ;;
        --delimiter) _holdband_offer "$word" <<< $'comma\nsemicolon\ntab\nbar\nspace' ;;
        --date-order) _holdband_offer "$word" <<< $'ymd\nmdy\ndmy' ;;
        --only | --like) _holdband_offer "$word" < <(_holdband_batches "$logbook") ;;
        --out | --rejects) _holdband_files "$word" ;;
        --zone | --currency | --column | --time | --pattern | --names | --values | --unit-column | \
            --header-line | --sheet | --at | --note | --from | --plan | --volume | --og | --fg | --room | \
            --swing | --room-from | --room-to | --room-sensor) ;; # typed by hand
        *) return 1 ;;
    esac
}

_holdband() {
    local word=${COMP_WORDS[COMP_CWORD]} command=${COMP_WORDS[1]} logbook
    logbook=$(_holdband_plain "${COMP_WORDS[2]}")
    COMPREPLY=()
    if [[ $COMP_CWORD -eq 1 ]]; then
        _holdband_offer "$word" <<< $'new\nload\nimport\nmeter\nbatches\nverdict\nenergy\ncompare\nforecast\nreport\nexport\ncheck\nbackup\nschema'
        _holdband_files "$word" -X '!*.holdband'
        return
    fi
    if [[ $command == schema && $COMP_CWORD -eq 2 && $word != -* ]]; then
        _holdband_offer "$word" <<< $'verdict\nenergy\ncompare\nforecast\nbatches\ndescription'
        return
    fi
    _holdband_value "${COMP_WORDS[COMP_CWORD - 1]}" "$word" "$logbook" && return
    if [[ $word == -* ]]; then
        _holdband_offer "$word" < <(_holdband_options "$command")
    elif [[ $COMP_CWORD -eq 2 || $command =~ ^(load|import|export|backup)$ ]]; then
        _holdband_files "$word"
    elif [[ $command == forecast ]]; then
        _holdband_offer "$word" < <(_holdband_setups "$logbook")
    elif [[ $command =~ ^(verdict|energy|compare|report)$ ]]; then
        _holdband_offer "$word" < <(_holdband_batches "$logbook")
        if [[ $command =~ ^(compare|report)$ ]]; then
            _holdband_offer "$word" < <(_holdband_setups "$logbook")
        fi
    fi
}

complete -o filenames -F _holdband holdband
