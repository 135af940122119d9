# SPDX-License-Identifier: GPL-3.0-or-later
# One folder of core, or of app, is one library that may use only the libraries it names: static, unless BUILD_SHARED_LIBS is on.

# meremark_core_folder(NAME USES folder... [FENCED target...]): FENCED names the foreign libraries that this folder hides.
function(meremark_core_folder name)
    cmake_parse_arguments(ARG "" "" "USES;FENCED" ${ARGN})
    _meremark_folder(core_${name} "${CMAKE_CURRENT_SOURCE_DIR}/${name}")
    list(TRANSFORM ARG_USES PREPEND core_)
    get_target_property(kind core_${name} TYPE)
    if(kind STREQUAL "INTERFACE_LIBRARY")
        target_link_libraries(core_${name} INTERFACE meremark_options ${ARG_USES} ${ARG_FENCED})
    else()
        target_link_libraries(core_${name} PUBLIC meremark_options ${ARG_USES} PRIVATE ${ARG_FENCED})
        meremark_precompile(core_${name} core)
    endif()
    set_property(GLOBAL APPEND PROPERTY MEREMARK_CORE_FOLDERS ${name})
endfunction()

# meremark_core_room(FOLDER/ROOM [USES FOLDER/ROOM...]): a part of a folder of core, in the same library; of the folder's other rooms it may
# include only those it names. tests/rules holds it to that.
function(meremark_core_room name)
    if(NOT IS_DIRECTORY "${CMAKE_CURRENT_SOURCE_DIR}/${name}")
        message(FATAL_ERROR "core/${name} is no folder")
    endif()
endfunction()

# meremark_app_folder(NAME [WITHOUT_WIDGETS] USES target...): a folder of the window; WITHOUT_WIDGETS where nothing that it uses
# brings Qt's widgets along, which the headers precompiled for the desk expect.
function(meremark_app_folder name)
    cmake_parse_arguments(ARG "WITHOUT_WIDGETS" "" "USES" ${ARGN})
    _meremark_folder(app_${name} "${CMAKE_CURRENT_SOURCE_DIR}/${name}")
    get_target_property(kind app_${name} TYPE)
    if(kind STREQUAL "INTERFACE_LIBRARY")
        target_link_libraries(app_${name} INTERFACE meremark_options ${ARG_USES})
    else()
        target_link_libraries(app_${name} PUBLIC meremark_options ${ARG_USES})
        if(NOT ARG_WITHOUT_WIDGETS)
            meremark_precompile(app_${name} desk)
        endif()
        set_target_properties(app_${name} PROPERTIES AUTOMOC ON)
    endif()
    set_property(GLOBAL APPEND PROPERTY MEREMARK_APP_FOLDERS ${name})
endfunction()

function(_meremark_folder target folder)
    file(GLOB_RECURSE sources CONFIGURE_DEPENDS "${folder}/*.cpp")
    file(GLOB_RECURSE headers CONFIGURE_DEPENDS "${folder}/*.h")
    if(sources)
        add_library(${target} ${sources} ${headers})
    else()
        add_library(${target} INTERFACE)
    endif()
endfunction()
