# SPDX-License-Identifier: GPL-3.0-or-later
# The language, the warnings and the places of what is built.
set(CMAKE_CXX_STANDARD 23)
set(CMAKE_CXX_STANDARD_REQUIRED ON)
set(CMAKE_CXX_EXTENSIONS OFF)
set(CMAKE_EXPORT_COMPILE_COMMANDS ON)
set(CMAKE_RUNTIME_OUTPUT_DIRECTORY "${CMAKE_BINARY_DIR}/bin")
# The first format of resources: later ones hold when each file was written, and no two checkouts were written at once.
set(CMAKE_AUTORCC_OPTIONS --format-version 1)

if(NOT CMAKE_BUILD_TYPE)
    set(CMAKE_BUILD_TYPE Release CACHE STRING "" FORCE)
endif()

find_program(MEREMARK_CCACHE ccache)
if(MEREMARK_CCACHE)
    # Without these two it takes no compilation that uses a precompiled header.
    set(CMAKE_CXX_COMPILER_LAUNCHER "${CMAKE_COMMAND}" -E env CCACHE_SLOPPINESS=pch_defines,time_macros "${MEREMARK_CCACHE}")
endif()

option(MEREMARK_WERROR "Warnings are errors; off for whoever builds with another compiler than ours" ON)
add_library(meremark_options INTERFACE)
target_include_directories(meremark_options INTERFACE "${CMAKE_SOURCE_DIR}")
# In a batch of unity.cmake the names of a source hide its neighbours', which says nothing of either.
set(shadow $<$<NOT:$<BOOL:$<TARGET_PROPERTY:UNITY_BUILD>>>:-Wshadow>)
target_compile_options(meremark_options INTERFACE
    -Wall -Wextra -Wpedantic $<$<BOOL:${MEREMARK_WERROR}>:-Werror> ${shadow} -Wconversion -Wnon-virtual-dtor -Woverloaded-virtual
    -Wold-style-cast -Wcast-align -Wunused -Wnull-dereference -Wdouble-promotion -Wformat=2)
# GCC 12 sees null dereferences, uninitialised values and overlaps (its bug 105651) in inlined library code that are not there.
target_compile_options(meremark_options INTERFACE
    $<$<CXX_COMPILER_ID:GNU>:-Wno-null-dereference -Wno-maybe-uninitialized -Wno-restrict>)
# Boost's own headers include some that Boost calls deprecated.
target_compile_definitions(meremark_options INTERFACE BOOST_ALLOW_DEPRECATED_HEADERS)
# libstdc++ 12 asks for a concepts version that clang names only from 19 on, though 16 can do what its <expected> needs.
# clang warns of NAN, which is a float, wherever a double is set to it.
target_compile_options(meremark_options INTERFACE
    $<$<CXX_COMPILER_ID:Clang>:-D__cpp_concepts=202002L -Wno-macro-redefined -Wno-double-promotion>)

option(MEREMARK_SANITIZE "Address and undefined-behaviour sanitizers" OFF)
if(MEREMARK_SANITIZE)
    add_compile_options(-fsanitize=address,undefined -fno-sanitize-recover=undefined -fno-omit-frame-pointer)
    add_link_options(-fsanitize=address,undefined)
endif()

# What only a thread sanitizer sees: two threads at one value with nothing between them. It cannot live beside the other two.
option(MEREMARK_THREAD_SANITIZER "Thread sanitizer" OFF)
if(MEREMARK_THREAD_SANITIZER)
    add_compile_options(-fsanitize=thread -fno-omit-frame-pointer)
    add_link_options(-fsanitize=thread)
endif()

# Every reader is measured by the fuzzer's edges. Numbers that do not fit an integer are no part of "undefined".
if(MEREMARK_FUZZERS)
    if(NOT CMAKE_CXX_COMPILER_ID STREQUAL "Clang")
        message(FATAL_ERROR "the fuzzers need clang: cmake --preset fuzz")
    endif()
    set(fuzz_flags -fsanitize=fuzzer-no-link,address,undefined,float-cast-overflow)
    add_compile_options(${fuzz_flags} -fno-sanitize-recover=all -fno-omit-frame-pointer)
    add_link_options(${fuzz_flags})
endif()
