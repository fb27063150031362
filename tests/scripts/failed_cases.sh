#!/usr/bin/env bash
# Prints the test cases that failed, or that were running when their program crashed or timed
# out, one per line; nothing if there are none. Usage: failed_cases.sh LOG_OF_CTEST
set -euo pipefail

awk '
    function name_unfinished() {
        if (running != "")
            print "did not end: " running " (" test ")"
        running = ""
    }
    /^[0-9]+\/[0-9]+ Test(ing)?: / { name_unfinished(); test = $NF }
    /^\[ RUN      \] / { name_unfinished(); running = $4 }
    /^\[       OK \] |^\[  SKIPPED \] / { running = "" }
    # With its duration at the end of the case; without it in the list at the end.
    /^\[  FAILED  \] .*\([0-9]+ ms\)$/ {
        sub(/,$/, "", $4)
        print "failed: " $4 " (" test ")"
        running = ""
    }
    END { name_unfinished() }
' "$1"
