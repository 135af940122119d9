#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# package.sh: builds Release and makes a .deb and a relocatable .tar.gz of it in build/release/packages, looked over by lintian,
# desktop-file-validate and appstreamcli.
set -euo pipefail
cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.."
export LC_ALL=C.UTF-8
umask 022 # Of the folders that are packed.
source cmake/steps.sh

for tool in help2man lintian desktop-file-validate appstreamcli dpkg-shlibdeps; do
    command -v $tool >/dev/null ||
        fail "a tool is missing" "no $tool found" "install help2man lintian desktop-file-utils appstream dpkg-dev"
done
SOURCE_DATE_EPOCH=${SOURCE_DATE_EPOCH:-$(git log -1 --format=%ct)}
export SOURCE_DATE_EPOCH # Two packages of one commit are the same to the byte: try_reproducible.sh.

configure release -DMEREMARK_UNITY=ON
build release meremark meremark-batch man_pages
packages=build/release/packages
rm -rf "$packages"
log=build/package.log
cpack --config build/release/CPackConfig.cmake >"$log" 2>&1 || fail "cpack could not make the packages" "$PWD/$log" "see its last lines"
rm -rf "$packages/_CPack_Packages"
deb=$(ls "$packages"/*.deb)

say "looking it over"
desktop-file-validate resources/install/org.meremark.Meremark.desktop
appstreamcli validate --no-net build/release/org.meremark.Meremark.metainfo.xml
lintian --fail-on error,warning --suppress-tags no-manual-page "$deb"

(cd "$packages" && sha256sum -- *.deb *.tar.gz)
