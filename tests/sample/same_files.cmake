# cmake -DMAKER=PROGRAM -DCOMMITTED=FOLDER -DMADE=FOLDER -P same_files.cmake
# Runs the maker into MADE and compares each of its files with the committed one, byte for byte.
set(expected cabinet.csv loop.csv room.csv spring-trials.json)

file(REMOVE_RECURSE ${MADE})
file(MAKE_DIRECTORY ${MADE})
execute_process(COMMAND ${MAKER} ${MADE} RESULT_VARIABLE status)
if(NOT status EQUAL 0)
    message(FATAL_ERROR "${MAKER} ended with ${status}")
endif()

file(GLOB made RELATIVE ${MADE} ${MADE}/*)
list(SORT made)
if(NOT made STREQUAL expected)
    message(FATAL_ERROR "The program made ${made}, and not ${expected}")
endif()

find_program(DIFF diff)
set(different "")
foreach(name IN LISTS expected)
    execute_process(COMMAND ${CMAKE_COMMAND} -E compare_files ${MADE}/${name} ${COMMITTED}/${name}
        RESULT_VARIABLE status)
    if(NOT status EQUAL 0)
        list(APPEND different ${name})
        if(DIFF)
            execute_process(COMMAND ${DIFF} -u ${COMMITTED}/${name} ${MADE}/${name}
                OUTPUT_VARIABLE difference)
            string(SUBSTRING "${difference}" 0 3000 difference)
            message("${difference}")
        endif()
    endif()
endforeach()
if(different)
    message(FATAL_ERROR "Not as committed: ${different}. If the change is meant, renew the files: "
        "${MAKER} ${COMMITTED}")
endif()
