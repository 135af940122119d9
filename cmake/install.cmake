# SPDX-License-Identifier: GPL-3.0-or-later
# What `cmake --install` lays out, and the packages that cpack makes of it. See package.sh.
include(GNUInstallDirs)

set(from "${CMAKE_SOURCE_DIR}/resources/install")
set(to "${CMAKE_INSTALL_DATADIR}")
install(TARGETS meremark meremark-batch RUNTIME DESTINATION "${CMAKE_INSTALL_BINDIR}")
install(FILES "${from}/org.meremark.Meremark.desktop" DESTINATION "${to}/applications")
# The version stands in CMakeLists.txt and nowhere else; CHANGELOG.md has to say what it brings, and since when.
set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS "${CMAKE_SOURCE_DIR}/CHANGELOG.md")
file(STRINGS "${CMAKE_SOURCE_DIR}/CHANGELOG.md" released REGEX "^## [0-9]" LIMIT_COUNT 1)
if(NOT released MATCHES "^## ([0-9.]+) - ([0-9]+-[0-9]+-[0-9]+)$" OR NOT CMAKE_MATCH_1 VERSION_EQUAL PROJECT_VERSION)
    message(FATAL_ERROR "CHANGELOG.md: the newest version there is '${released}'; begin one with '## ${PROJECT_VERSION} - YYYY-MM-DD'")
endif()
set(MEREMARK_RELEASED "${CMAKE_MATCH_2}")
configure_file("${from}/org.meremark.Meremark.metainfo.xml.in" "${CMAKE_BINARY_DIR}/org.meremark.Meremark.metainfo.xml" @ONLY)
install(FILES "${CMAKE_BINARY_DIR}/org.meremark.Meremark.metainfo.xml" DESTINATION "${to}/metainfo")
install(FILES "${from}/meremark.mime.xml" DESTINATION "${to}/mime/packages" RENAME meremark.xml)
install(FILES "${from}/meremark.thumbnailer" DESTINATION "${to}/thumbnailers")
install(FILES "${CMAKE_SOURCE_DIR}/resources/icons/meremark.svg" DESTINATION "${to}/icons/hicolor/scalable/apps")
install(FILES "${from}/meremark-batch.bash" DESTINATION "${to}/bash-completion/completions" RENAME meremark-batch)
install(DIRECTORY "${CMAKE_SOURCE_DIR}/sample-survey/files/" DESTINATION "${to}/meremark/sample")
install(FILES "${CMAKE_SOURCE_DIR}/README.md" "${CMAKE_SOURCE_DIR}/CHANGELOG.md" DESTINATION "${to}/doc/meremark")
# The program has the guide within it; these are to be read without it.
install(DIRECTORY "${CMAKE_SOURCE_DIR}/resources/guide/" DESTINATION "${to}/doc/meremark/guide" FILES_MATCHING PATTERN "*.md" PATTERN "*.png")

# One page a program and one a verb, of the very texts that --help prints.
find_program(MEREMARK_HELP2MAN help2man)
find_program(MEREMARK_GZIP gzip)
if(MEREMARK_HELP2MAN AND MEREMARK_GZIP)
    set(pages "${CMAKE_BINARY_DIR}/man")
    add_custom_command(OUTPUT "${pages}/made"
        COMMAND "${CMAKE_SOURCE_DIR}/cmake/man_pages.sh" "$<TARGET_FILE:meremark>" "$<TARGET_FILE:meremark-batch>" "${pages}"
        DEPENDS meremark meremark-batch "${CMAKE_SOURCE_DIR}/cmake/man_pages.sh"
        COMMENT "Writing the man pages" VERBATIM)
    add_custom_target(man_pages DEPENDS "${pages}/made")
    install(DIRECTORY "${pages}/" DESTINATION "${CMAKE_INSTALL_MANDIR}/man1" OPTIONAL FILES_MATCHING PATTERN "*.1.gz")
    install(FILES "${pages}/changelog.gz" DESTINATION "${to}/doc/meremark" OPTIONAL)
endif()
install(FILES "${from}/copyright" DESTINATION "${to}/doc/meremark")

set(CPACK_PACKAGE_NAME meremark)
set(CPACK_PACKAGE_VENDOR Meremark)
set(CPACK_PACKAGE_CONTACT "The Meremark maintainers <maintainers@meremark.invalid>")
set(CPACK_PACKAGE_VERSION "${PROJECT_VERSION}")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "charts, anchor marks and log of one stillwater")
set(CPACK_RESOURCE_FILE_LICENSE "${CMAKE_SOURCE_DIR}/LICENSE")
set(CPACK_PACKAGE_DIRECTORY "${CMAKE_BINARY_DIR}/packages")
set(CPACK_GENERATOR DEB TGZ)
# What has no component: all but library.cmake, which is for who builds on core and not for who fishes.
set(CPACK_INSTALL_CMAKE_PROJECTS "${CMAKE_BINARY_DIR};Meremark;Unspecified;/")
set(CPACK_STRIP_FILES ON)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION science)
set(CPACK_DEBIAN_PACKAGE_PRIORITY optional)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
# What no link says: the sets that PROJ and the clock read, the desk's icons and letters.
set(CPACK_DEBIAN_PACKAGE_DEPENDS "proj-data, tzdata, fonts-dejavu-core, libqt6svg6")
# Without the second, buttons of Qt's own dialogs stay English at a German desk.
set(CPACK_DEBIAN_PACKAGE_RECOMMENDS "qt6-wayland, qt6-translations-l10n")
string(CONCAT CPACK_DEBIAN_PACKAGE_DESCRIPTION
    "For the angler who has a boat, days and not seasons, and one large\n"
    "stillwater. Meremark reads the soundings that he took himself, draws the\n"
    "depths and how far each is to be trusted, finds drop-offs, shelves, humps\n"
    "and weed, divides the water into sections, chooses tomorrow's anchor marks\n"
    "for wind and level with ropes and baits, prints one sheet for the boat,\n"
    "and learns from the log which zones and hours produce.\n"
    ".\n"
    "It works offline: nothing is fetched and nothing is sent.")
set(CPACK_PACKAGE_DESCRIPTION "${CPACK_DEBIAN_PACKAGE_DESCRIPTION}")
include(CPack)
