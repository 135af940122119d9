# SPDX-License-Identifier: GPL-3.0-or-later
# One executable per folder of tests; every test case is a CTest of its own.
include(GoogleTest)

# meremark_test(NAME FOLDER folder LINKS target...)
function(meremark_test name)
    cmake_parse_arguments(ARG "" "FOLDER" "LINKS" ${ARGN})
    file(GLOB_RECURSE sources CONFIGURE_DEPENDS "${ARG_FOLDER}/*_test.cpp")
    if(NOT sources)
        return()
    endif()
    add_executable(${name} ${sources})
    target_link_libraries(${name} PRIVATE meremark_options ${ARG_LINKS} GTest::gmock GTest::gtest_main fmt::fmt)
    meremark_precompile(${name} test)
    target_compile_definitions(${name} PRIVATE
        MEREMARK_SHARED_DIR="${MEREMARK_SHARED_DIR}"
        MEREMARK_SAMPLE_DIR="${CMAKE_SOURCE_DIR}/sample-survey"
        MEREMARK_SOURCE_DIR="${CMAKE_SOURCE_DIR}")
    gtest_discover_tests(${name} DISCOVERY_TIMEOUT 60 PROPERTIES TIMEOUT 900)
endfunction()
