# SPDX-License-Identifier: GPL-3.0-or-later
# One executable per folder of tests; every suite is a CTest of its own.

# meremark_test(NAME [DESK] FOLDER folder LINKS target...): DESK where what it links brings Qt's widgets along.
function(meremark_test name)
    cmake_parse_arguments(ARG "DESK" "FOLDER" "LINKS" ${ARGN})
    file(GLOB_RECURSE sources CONFIGURE_DEPENDS "${ARG_FOLDER}/*_test.cpp")
    if(NOT sources)
        return()
    endif()
    add_executable(${name} ${sources})
    target_link_libraries(${name} PRIVATE meremark_options ${ARG_LINKS} GTest::gmock GTest::gtest_main fmt::fmt)
    if(ARG_DESK)
        meremark_precompile(${name} desk_test)
    else()
        meremark_precompile(${name} test)
    endif()
    meremark_tell_places(${sources})
    meremark_discover_suites(${name})
endfunction()

# meremark_tell_places(SOURCE...): where the tree and what lies beside it are, to those sources alone that ask: the others then
# compile to the same in every checkout, and ccache knows them.
function(meremark_tell_places)
    foreach(source IN LISTS ARGN)
        file(STRINGS "${source}" asks REGEX "MEREMARK_(SHARED|SAMPLE|SOURCE)_DIR|support/sample_faults.h" LIMIT_COUNT 1)
        if(asks)
            set_property(SOURCE "${source}" APPEND PROPERTY COMPILE_DEFINITIONS
                "MEREMARK_SHARED_DIR=\"${MEREMARK_SHARED_DIR}\""
                "MEREMARK_SAMPLE_DIR=\"${CMAKE_SOURCE_DIR}/sample-survey\""
                "MEREMARK_SOURCE_DIR=\"${CMAKE_SOURCE_DIR}\"")
            set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS "${source}")
        endif()
    endforeach()
endfunction()

# meremark_discover_suites(NAME): the suites of a GoogleTest executable, listed anew whenever it is linked.
function(meremark_discover_suites name)
    set(listed "${CMAKE_CURRENT_BINARY_DIR}/${name}_suites.cmake")
    string(REGEX REPLACE "^test_" "" folder "${name}")
    set(included "${CMAKE_CURRENT_BINARY_DIR}/${name}_include.cmake")
    add_custom_command(TARGET ${name} POST_BUILD VERBATIM
        COMMAND "${CMAKE_COMMAND}" -E env QT_QPA_PLATFORM=offscreen
            "${CMAKE_COMMAND}" "-DEXECUTABLE=$<TARGET_FILE:${name}>" "-DFOLDER=${folder}" "-DOUTPUT=${listed}"
            -P "${CMAKE_SOURCE_DIR}/cmake/list_suites.cmake")
    file(WRITE "${included}"
        "if(EXISTS [=[${listed}]=])\n  include([=[${listed}]=])\nelse()\n  add_test(${name}_NOT_BUILT ${name}_NOT_BUILT)\nendif()\n")
    set_property(DIRECTORY APPEND PROPERTY TEST_INCLUDE_FILES "${included}")
endfunction()
