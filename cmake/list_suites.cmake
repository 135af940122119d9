# SPDX-License-Identifier: GPL-3.0-or-later
# Run after each link of a test executable: asks it for its suites and writes one CTest entry for each, so that a suite costs one
# start of a process and not one for each of its tests. Names of entries begin with the folder, as two folders may each have a
# suite Drawing. One test alone: EXECUTABLE --gtest_filter=Suite.Test
execute_process(COMMAND "${EXECUTABLE}" --gtest_list_tests OUTPUT_VARIABLE listed RESULT_VARIABLE code
    COMMAND_ERROR_IS_FATAL ANY)
string(REGEX MATCHALL "[^\n]+" lines "${listed}")
set(entries "")
foreach(line IN LISTS lines)
    # Suites stand at the left and end with a dot; their tests are indented.
    if(line MATCHES "^([^ ]+)\\.( .*)?$")
        set(suite "${CMAKE_MATCH_1}")
        set(entry "${FOLDER}.${suite}")
        string(APPEND entries
            "add_test([=[${entry}]=] [=[${EXECUTABLE}]=] [=[--gtest_filter=${suite}.*]=])\n"
            "set_tests_properties([=[${entry}]=] PROPERTIES TIMEOUT 900 ENVIRONMENT QT_QPA_PLATFORM=offscreen)\n")
    endif()
endforeach()
if(entries STREQUAL "")
    message(FATAL_ERROR "${EXECUTABLE} lists no tests")
endif()
file(WRITE "${OUTPUT}" "${entries}")
