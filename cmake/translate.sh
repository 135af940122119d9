#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Brings the catalogues of resources/translations up to the sources: new sentences come in without a translation, gone ones go.
# translate.sh [CODE...]: those that are there already, and new ones for the codes given, such as 'fr'
set -euo pipefail
export LC_ALL=C.UTF-8
cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.."
source cmake/steps.sh

folder=resources/translations
lupdate=$(command -v lupdate || echo /usr/lib/qt6/bin/lupdate)
[[ -x $lupdate ]] || fail "there is no lupdate" "Qt's tools for translators" "cmake/setup.sh run"

# All of the desk is one context: a word has one translation, whichever class says it, and what moves to another class keeps it. So
# lupdate reads copies in which tr() and Tongue::counted() (plural, singular as the comment, count) are translate("wording", ...).
copies=$(mktemp -d)
trap 'rm -rf "$copies"' EXIT
while read -r source; do
    mkdir -p "$copies/$(dirname "$source")"
    sed -E 's/\b(wording::)?(Tongue::)?(tr|counted)\(/QCoreApplication::translate("wording", /g' "$source" >"$copies/$source"
done < <(find app -name '*.cpp' -o -name '*.h' | grep -v '^app/batch' | LC_ALL=C sort)

codes=("$@")
for catalogue in "$folder"/meremark_*.ts; do
    [[ -e $catalogue ]] && codes+=("$(basename "$catalogue" .ts | sed 's/^meremark_//')")
done
for code in $(printf '%s\n' "${codes[@]}" | sort -u); do
    "$lupdate" -silent -no-obsolete -locations none -source-language en_GB -target-language "$code" \
        "$copies/app" -ts "$folder/meremark_$code.ts"
    [[ -e $folder/core_$code.ts ]] ||
        printf '<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n<TS version="2.1" language="%s" sourcelanguage="en_GB">\n<context>\n    <name>core</name>\n</context>\n</TS>\n' \
            "$code" >"$folder/core_$code.ts"
    say "translate: $folder/meremark_$code.ts is of these sources; test_rules says what core_$code.ts lacks"
done
