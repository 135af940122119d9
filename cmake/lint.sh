#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# lint.sh [--all]: layout of every source, shell scripts, and clang-tidy on what changed (with --all: on everything).
# What changed is counted from the merge base with origin/main, or from the last commit where that is the same.
set -euo pipefail
cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.."
export LC_ALL=C.UTF-8
source cmake/steps.sh

scope=${1:-}
[[ -z $scope || $scope == --all ]] || fail "unknown option '$scope'" "lint.sh" "say 'lint.sh' or 'lint.sh --all'"
commands=build/release/compile_commands.json

# Names of sources that end as asked, one a line.
sources() {
    find . -path ./build -prune -o -type f -regextype posix-extended -regex ".*\.($1)" -print |
        sed 's|^\./||' | sort
}

# The sources that have changed; everything where this is not a git checkout.
changed() {
    if ! git rev-parse -q --verify HEAD >/dev/null 2>&1; then
        sources 'cpp|h'
        return
    fi
    changed_since_base | grep -E '\.(cpp|h)$' || true
}

# A header is read through its own source, or else through the first source that includes it.
through_sources() {
    local name
    while read -r name; do
        if [[ $name != *.h ]]; then
            echo "$name"
        elif [[ -f ${name%.h}.cpp ]]; then
            echo "${name%.h}.cpp"
        else
            sources cpp | tr '\n' '\0' | xargs -0 grep -lF "#include \"$name\"" | head -n 1 || true
        fi
    done | sort -u
}

# Only what the build compiles can be read.
compiled() {
    local name
    while read -r name; do
        if grep -qF "\"file\": \"$PWD/$name\"" build/lint/compile_commands.json; then echo "$name"; fi
    done
}

# Each source is read as it stands: without the headers that GCC has precompiled, which clang could not read anyway, and out of the
# batch that it may be compiled in.
plain_commands() {
    mkdir -p build/lint
    sed -E 's/ (-Winvalid-pch|-fpch-preprocess|-Wno-subobject-linkage)//g; s/ -include [^ ]*cmake_pch\.hxx//g' "$commands" | awk '
        BEGIN {print "["}
        END {print "]"}
        /^{/ {entry = batch = ""}
        {entry = entry $0 "\n"}
        /"file": ".*\/Unity\/unity_[0-9]+_cxx\.cxx"/ {split($0, at, "\""); batch = at[4]}
        !/^}/ {next}
        {sub(/},?\n$/, "}", entry)}
        batch == "" {printf "%s%s", comma, entry; comma = ",\n"; next}
        {
            while ((getline line <batch) > 0) {
                if (split(line, at, "\"") < 3 || line !~ /^#include/) continue
                one = entry
                while ((k = index(one, batch)) > 0) one = substr(one, 1, k - 1) at[2] substr(one, k + length(batch))
                printf "%s%s", comma, one
                comma = ",\n"
            }
        }' >build/lint/compile_commands.json
}

say "layout: clang-format on $(sources 'cpp|h' | wc -l) sources"
sources 'cpp|h' | tr '\n' '\0' | xargs -0 -r clang-format-16 --dry-run -Werror ||
    fail "sources are not laid out as .clang-format says" "see above" "run: clang-format-16 -i FILE"

say "scripts: shellcheck"
shellcheck -x cmake/*.sh tests/library/*.sh .ci/run || fail "shellcheck objects" "see above" "mend the script"

# REUSE wants a folder LICENSES at the top level. Here it is laid for as long as REUSE looks.
if command -v reuse >/dev/null && git rev-parse -q --verify HEAD >/dev/null 2>&1; then
    say "licences: reuse lint"
    copy=$(mktemp -d)
    trap 'rm -rf "$copy"' EXIT
    git ls-files -z --cached --others --exclude-standard | xargs -0 cp --parents -t "$copy"
    mkdir "$copy/LICENSES"
    mv "$copy/LICENSE" "$copy/LICENSES/GPL-3.0-or-later.txt"
    mv "$copy/resources/install/CC0-1.0.txt" "$copy/LICENSES/"
    (cd "$copy" && reuse lint) >build/reuse.log 2>&1 ||
        fail "licences or copyrights are not clear" "$PWD/build/reuse.log" "say in .reuse/dep5 whose the file is"
fi

configure release
plain_commands
if [[ $scope == --all ]]; then
    mapfile -t files < <(sources cpp | compiled)
else
    mapfile -t files < <(changed | through_sources | compiled)
fi
say "lint: clang-tidy on ${#files[@]} sources"
((${#files[@]} > 0)) || exit 0
printf '%s\0' "${files[@]}" |
    xargs -0 -r -n 1 -P "$(parallel_jobs)" clang-tidy-16 -p build/lint --quiet 2> >(
        grep -vE '^[0-9]+ warnings? generated|^Suppressed|^Use -header-filter' >&2 || true
    ) || fail "clang-tidy objects" "see above" "mend it, or say in .clang-tidy why the check does not suit this code"
