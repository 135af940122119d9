# SPDX-License-Identifier: GPL-3.0-or-later
# Headers that most sources include, read once a kind of target instead of once a source: a build from nothing takes about half
# the time. No source may lean on them: cmake/lint.sh reads each without.
option(MEREMARK_PRECOMPILED "Precompile the headers that most sources include (GCC)" ON)

set(precompiled_std <algorithm> <array> <cmath> <cstdint> <expected> <filesystem> <functional> <map> <memory> <numbers> <numeric>
    <optional> <set> <span> <string> <string_view> <vector>)
set(precompiled_qt <QDialog> <QLabel> <QLayout> <QPainter> <QPainterPath> <QPushButton> <QString> <QTimer> <QWidget>)
set(precompiled_test <chrono> <fstream> <random> <gmock/gmock.h> <gtest/gtest.h>)

# meremark_precompile(TARGET KIND): core, desk, test or desk_test. All targets of a kind share what its carrier has compiled; so
# carrier and targets have to agree in everything that changes how a header is read, optimisation included.
function(meremark_precompile target kind)
    if(kind MATCHES "test")
        # Tests are compiled far more often than they are run: what they call is optimised, they themselves only a little.
        target_compile_options(${target} PRIVATE $<$<CONFIG:Release>:-O1>)
    endif()
    if(NOT MEREMARK_PRECOMPILED OR NOT CMAKE_CXX_COMPILER_ID STREQUAL "GNU")
        return()
    endif()
    # The first is what ccache needs to see through a precompiled header. From one, GCC 12 also sees overruns in the library's
    # inlined strings that are not there.
    target_compile_options(${target} PRIVATE -fpch-preprocess -Wno-array-bounds -Wno-stringop-overflow -Wno-stringop-overread)
    set(carrier precompiled_${kind})
    if(NOT TARGET ${carrier})
        _meremark_carrier(${carrier} ${kind})
    endif()
    target_precompile_headers(${target} REUSE_FROM ${carrier})
endfunction()

function(_meremark_carrier carrier kind)
    set(source "${CMAKE_BINARY_DIR}/${carrier}.cpp")
    set(headers ${precompiled_std})
    if(kind MATCHES "test")
        file(CONFIGURE OUTPUT "${source}" CONTENT "int main() {}\n")
        add_executable(${carrier} "${source}")
        target_link_libraries(${carrier} PRIVATE GTest::gmock)
        target_compile_options(${carrier} PRIVATE $<$<CONFIG:Release>:-O1>)
        list(APPEND headers ${precompiled_test})
    else()
        file(CONFIGURE OUTPUT "${source}" CONTENT "\n")
        add_library(${carrier} OBJECT "${source}")
        set_target_properties(${carrier} PROPERTIES POSITION_INDEPENDENT_CODE "${BUILD_SHARED_LIBS}")
    endif()
    target_link_libraries(${carrier} PRIVATE meremark_options)
    if(kind MATCHES "desk")
        target_link_libraries(${carrier} PRIVATE Qt6::Widgets)
        list(APPEND headers ${precompiled_qt})
    endif()
    target_compile_options(${carrier} PRIVATE -fpch-preprocess)
    target_precompile_headers(${carrier} PRIVATE ${headers})
endfunction()
