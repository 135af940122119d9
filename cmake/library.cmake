# SPDX-License-Identifier: GPL-3.0-or-later
# The part of core that others build on, find_package(Meremark): from soundings to a drawn water and its figures. A component of its own:
# `cmake --install build/release --component library --prefix P`; the packages for users are without it. tests/library builds on it.
include(GNUInstallDirs)
include(CMakePackageConfigHelpers)

# From bottom to top: surface, and all that its line in core/CMakeLists.txt names.
set(library_folders base units geo soundings grid surface)
set(library_headers "${CMAKE_INSTALL_INCLUDEDIR}/meremark")
set(library_config "${CMAKE_INSTALL_LIBDIR}/cmake/Meremark")

foreach(folder IN LISTS library_folders)
    set_target_properties(core_${folder} PROPERTIES EXPORT_NAME ${folder})
    target_include_directories(core_${folder} INTERFACE "$<INSTALL_INTERFACE:${library_headers}>")
    install(DIRECTORY "${CMAKE_SOURCE_DIR}/core/${folder}" DESTINATION "${library_headers}/core" COMPONENT library
        FILES_MATCHING PATTERN "*.h" PATTERN solver EXCLUDE)
    list(APPEND library_targets core_${folder})
endforeach()
# A folder of their own: names as plain as libcore_grid.a belong to nobody.
install(TARGETS ${library_targets} EXPORT Meremark
    ARCHIVE DESTINATION "${CMAKE_INSTALL_LIBDIR}/meremark" COMPONENT library
    LIBRARY DESTINATION "${CMAKE_INSTALL_LIBDIR}/meremark" COMPONENT library)
install(EXPORT Meremark NAMESPACE Meremark:: FILE MeremarkTargets.cmake DESTINATION "${library_config}" COMPONENT library)

configure_package_config_file("${CMAKE_SOURCE_DIR}/cmake/MeremarkConfig.cmake.in" "${CMAKE_BINARY_DIR}/MeremarkConfig.cmake"
    INSTALL_DESTINATION "${library_config}")
# Before 1.0 a minor version may change what is declared.
write_basic_package_version_file("${CMAKE_BINARY_DIR}/MeremarkConfigVersion.cmake" COMPATIBILITY SameMinorVersion)
install(FILES "${CMAKE_BINARY_DIR}/MeremarkConfig.cmake" "${CMAKE_BINARY_DIR}/MeremarkConfigVersion.cmake"
    DESTINATION "${library_config}" COMPONENT library)
