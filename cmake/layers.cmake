# SPDX-License-Identifier: GPL-3.0-or-later
# One folder of core, or of app, is one library that may use only the libraries it names: static, unless BUILD_SHARED_LIBS is on.

# meremark_core_folder(NAME USES folder... [FENCED target...]): FENCED names the foreign libraries that this folder hides.
function(meremark_core_folder name)
    cmake_parse_arguments(ARG "" "" "USES;FENCED" ${ARGN})
    _meremark_folder(core_${name} "${CMAKE_CURRENT_SOURCE_DIR}/${name}")
    list(TRANSFORM ARG_USES PREPEND core_)
    get_target_property(kind core_${name} TYPE)
    if(kind STREQUAL "INTERFACE_LIBRARY")
        target_link_libraries(core_${name} INTERFACE $<BUILD_INTERFACE:meremark_options> ${ARG_USES} ${ARG_FENCED})
    else()
        # Our warnings are for our own sources: who builds on an installed core has his own.
        target_link_libraries(core_${name} PUBLIC $<BUILD_INTERFACE:meremark_options> ${ARG_USES} PRIVATE ${ARG_FENCED})
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
        meremark_unity(${target} ${sources})
    else()
        add_library(${target} INTERFACE)
    endif()
endfunction()

# meremark_translations(TARGET): every catalogue of resources/translations goes into this library: the desk's compiled by lrelease, core's
# as it is (app/wording/core_sentences). cmake/translate.sh brings them up to date.
function(meremark_translations target)
    set(folder "${CMAKE_SOURCE_DIR}/resources/translations")
    file(GLOB desk CONFIGURE_DEPENDS "${folder}/meremark_*.ts")
    file(GLOB core CONFIGURE_DEPENDS "${folder}/core_*.ts")
    set(files)
    foreach(catalogue IN LISTS desk)
        get_filename_component(name "${catalogue}" NAME_WE)
        set(compiled "${CMAKE_CURRENT_BINARY_DIR}/translations/${name}.qm")
        add_custom_command(OUTPUT "${compiled}" DEPENDS "${catalogue}" VERBATIM
            COMMAND "${CMAKE_COMMAND}" -E make_directory "${CMAKE_CURRENT_BINARY_DIR}/translations"
            COMMAND Qt6::lrelease -silent -nounfinished "${catalogue}" -qm "${compiled}")
        list(APPEND files "<file alias=\"${name}.qm\">${compiled}</file>")
        list(APPEND made "${compiled}")
    endforeach()
    foreach(catalogue IN LISTS core)
        get_filename_component(name "${catalogue}" NAME)
        list(APPEND files "<file alias=\"${name}\">${catalogue}</file>")
    endforeach()
    list(JOIN files "\n" rows)
    set(list "${CMAKE_CURRENT_BINARY_DIR}/translations/translations.qrc")
    file(CONFIGURE OUTPUT "${list}" CONTENT "<RCC>\n<qresource prefix=\"/translations\">\n${rows}\n</qresource>\n</RCC>\n" @ONLY)
    set(source "${CMAKE_CURRENT_BINARY_DIR}/translations/translations.cpp")
    add_custom_command(OUTPUT "${source}" DEPENDS "${list}" ${made} ${core} VERBATIM
        COMMAND Qt6::rcc --name translations ${CMAKE_AUTORCC_OPTIONS} "${list}" -o "${source}")
    target_sources(${target} PRIVATE "${source}")
    set_source_files_properties("${source}" PROPERTIES SKIP_AUTOMOC ON SKIP_PRECOMPILE_HEADERS ON)
endfunction()
