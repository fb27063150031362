# Completion of holdband for fish. The program itself knows what can stand next.

function __holdband_next
    set -l words (commandline -opc) (commandline -ct)
    for answer in (holdband complete -- $words[2..-1] 2>/dev/null)
        if test $answer = :files
            __fish_complete_path (commandline -ct)
        else
            echo $answer
        end
    end
end

complete -c holdband -f -a '(__holdband_next)'
