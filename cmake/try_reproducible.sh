#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# try_reproducible.sh: makes the packages of this tree, as it stands, once more: from nothing, without ccache, in a copy that has nothing but
# the sources in common with it (path, age of the files, umask, clock, language). Packages and programs have to be the same to the byte.
set -euo pipefail
cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.."
export LC_ALL=C.UTF-8
source cmake/steps.sh

SOURCE_DATE_EPOCH=${SOURCE_DATE_EPOCH:-$(git log -1 --format=%ct)}
export SOURCE_DATE_EPOCH
./cmake/package.sh
unity=$(sed -n 's/^MEREMARK_UNITY:BOOL=//p' build/release/CMakeCache.txt)

copy=$PWD/build/reproducible/in/a/folder/with/a/longer/name
rm -rf build/reproducible
mkdir -p "$copy"
say "packages from $copy (log: $PWD/build/reproducible.log)"
(
    umask 077
    git ls-files -z --cached --others --exclude-standard | xargs -0 cp --parents -t "$copy"
    find "$copy" -exec touch -d 2020-02-02 {} +
    cd "$copy"
    export CCACHE_DISABLE=1 TZ=Pacific/Chatham LANG=de_DE.UTF-8
    source cmake/steps.sh
    configure release "-DMEREMARK_UNITY=$unity"
    ./cmake/package.sh
) >build/reproducible.log 2>&1 || fail "the copy could not be packed" "$PWD/build/reproducible.log" "see its last lines"

status=0
for made in bin/meremark bin/meremark-batch packages; do
    diff -r "build/release/$made" "$copy/build/release/$made" || status=1
done
((status == 0)) || fail "two builds of one source differ" "$PWD/build/release and $copy" "diffoscope shows where"
say "reproducible: programs and packages are the same to the byte"
