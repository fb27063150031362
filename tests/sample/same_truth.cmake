# cmake -DMAKER=PROGRAM -DCOMMITTED=FILE -DMADE=FILE -P same_truth.cmake
# Lets the maker write what ales in July would truly use, and compares it with the committed file.
execute_process(COMMAND ${MAKER} --truth ${MADE} RESULT_VARIABLE status)
if(NOT status EQUAL 0)
    message(FATAL_ERROR "${MAKER} --truth ended with ${status}")
endif()

execute_process(COMMAND ${CMAKE_COMMAND} -E compare_files ${MADE} ${COMMITTED}
    RESULT_VARIABLE status)
if(NOT status EQUAL 0)
    message(FATAL_ERROR "Not as committed. If the change is meant, renew the file: "
        "${MAKER} --truth ${COMMITTED}")
endif()
