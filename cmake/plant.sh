#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# plant.sh [--changed] [--jobs N] [LIST...]: plants the faults of tests/planted/*.txt (or of the lists named) one by one into a
# copy of the tree, builds what is needed, runs the claim that should notice each, and where it does not, every other suite.
# --changed: only faults in files that differ from the merge base with origin/main (or from the last commit), or are not committed.
# How a list is written stands in tests/planted/README.md. What was found is left in build/planted/results.tsv.
set -euo pipefail
cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.."
export LC_ALL=C.UTF-8
source cmake/steps.sh

top=$PWD
place=$top/build/planted
jobs=$(parallel_jobs)
only_changed=false
lists=()
while (($# > 0)); do
    case $1 in
    --changed) only_changed=true ;;
    --jobs)
        [[ ${2:-} =~ ^[1-9][0-9]?$ ]] || fail "no number of jobs" "--jobs" "say --jobs 2"
        jobs=$2
        shift
        ;;
    -*) fail "unknown option '$1'" "plant.sh" "say: plant.sh [--changed] [--jobs N] [LIST...]" ;;
    *)
        [[ -r $1 ]] || fail "there is no list '$1'" "plant.sh" "see tests/planted"
        lists+=("$1")
        ;;
    esac
    shift
done
((${#lists[@]} > 0)) || lists=(tests/planted/*.txt)

# One entry a fault in each of these; folders are named as the libraries are: core/water, app/days.
names=() files=() afters=() froms=() tos=() claims=() excuses=()

# Takes the blocks of a list: "[name]", then "key: value" lines; see tests/planted/README.md.
read_list() {
    local list=$1 line i=$((${#names[@]} - 1))
    # shellcheck disable=SC2094 # The list is only named in the message.
    while IFS= read -r line || [[ -n $line ]]; do
        case $line in
        '' | '#'*) ;;
        '['*']')
            i=$((i + 1))
            names[i]=${line:1:-1} files[i]='' afters[i]='' froms[i]='' tos[i]='' claims[i]='' excuses[i]=''
            ;;
        'file: '*) files[i]=${line#file: } ;;
        'after: '*) afters[i]=${line#after: } ;;
        'from: '*) froms[i]=${line#from: } ;;
        'to: '*) tos[i]=${line#to: } ;;
        'to:') ;;
        'what: '*) ;;
        'noticed by: '*) claims[i]=${line#noticed by: } ;;
        'no fault: '*) excuses[i]=${line#no fault: } ;;
        *) fail "a line that is no part of a fault: $line" "$(basename "$list")" "see tests/planted/README.md" ;;
        esac
    done <"$list"
}

# plant I FILE: writes the fault into FILE, which holds what the tree holds. Fails where its text is not there once.
plant() {
    local i=$1 file=$2 content head='' tail before rest
    content=$(
        cat "$file"
        printf x
    )
    content=${content%x}
    if [[ -n ${afters[i]} ]]; then
        [[ $content == *"${afters[i]}"* ]] || return 1
        head=${content%%"${afters[i]}"*}
        content=${content#"$head"}
    fi
    before=${content%%"${froms[i]}"*}
    [[ $before != "$content" ]] || return 1
    rest=${content#"$before${froms[i]}"}
    tail=$rest
    [[ -n ${afters[i]} || $rest != *"${froms[i]}"* ]] || return 1
    printf '%s' "$head$before${tos[i]}$tail" >"$file"
}

# A copy of the tree that is planted into: what git tracks or would add, with the times of the originals.
lay_tree() {
    local tree=$1 name
    mkdir -p "$tree"
    git ls-files -z -co --exclude-standard | tar --null -T - --ignore-failed-read -cf - 2>/dev/null | tar -xf - -C "$tree"
    # Left over from an earlier run: what the tree has no more, and what was planted (its time would hide that it is mended).
    (cd "$tree" && find . -path ./build -prune -o -type f -print | sed 's|^\./||') | while read -r name; do
        [[ -e $name ]] || rm -f "$tree/$name"
    done
    if [[ -f $tree/build/planted-into ]]; then
        while read -r name; do [[ ! -e $tree/$name ]] || touch "$tree/$name"; done <"$tree/build/planted-into"
    fi
    mkdir -p "$tree/build"
    : >"$tree/build/planted-into"
}

# build_in TREE LOG TARGET...
build_in() {
    local tree=$1 log=$2
    shift 2
    CCACHE_BASEDIR=$tree CCACHE_NOHASHDIR=1 cmake --build "$tree/build/plant" -j "$((jobs > 1 ? 1 : $(parallel_jobs)))" --target "$@" >"$log" 2>&1
}

# run_claim TREE EXECUTABLE FILTER LOG: a test that does not end is one that notices. A filter without a dot or a star is a
# function of Qt Test.
run_claim() {
    local filter=("--gtest_filter=$3" --gtest_brief=1)
    [[ $3 == *[.*]* ]] || filter=("$3")
    QT_QPA_PLATFORM=offscreen timeout 300 "$1/build/plant/bin/$2" "${filter[@]}" >"$4" 2>&1 </dev/null
}

# is_there EXECUTABLE FILTER: whether there is such a test. GoogleTest lists suites at the left and tests indented below them.
is_there() {
    if [[ $2 == *[.*]* ]]; then
        QT_QPA_PLATFORM=offscreen "$1" --gtest_list_tests --gtest_filter="$2" 2>/dev/null | grep -q '^  '
    else
        QT_QPA_PLATFORM=offscreen "$1" -functions 2>/dev/null | grep -qxF "$2()"
    fi
}

# Whether one of the claims "EXECUTABLE FILTER; ..." of fault I fails.
noticed_by_claims() {
    local tree=$1 i=$2 log=$3 claim
    while read -r -d ';' claim; do
        [[ -n $claim ]] || continue
        run_claim "$tree" "${claim%% *}" "${claim#* }" "$log" || return 0
    done <<<"${claims[i]};"
    return 1
}

executables_of() {
    local claim
    while read -r -d ';' claim; do
        [[ -z $claim ]] || echo "${claim%% *}"
    done <<<"${claims[$1]};"
}

# try_fault TREE I: prints what came of it.
try_fault() {
    local tree=$1 i=$2 file log executables
    file=${files[i]} log=$tree/build/fault.log
    [[ -z ${excuses[i]} ]] || {
        echo "no fault"
        return
    }
    echo "$file" >>"$tree/build/planted-into"
    plant "$i" "$tree/$file" || {
        echo "not planted"
        return
    }
    mapfile -t executables < <(executables_of "$i")
    if ! build_in "$tree" "$log" "${executables[@]}"; then
        echo "does not build"
    elif noticed_by_claims "$tree" "$i" "$log"; then
        echo "noticed"
    elif ! build_in "$tree" "$log" all; then
        echo "does not build"
    elif ctest --test-dir "$tree/build/plant" -j "$((jobs > 1 ? 1 : $(parallel_jobs)))" --stop-on-failure --timeout 900 -E '^PlantedFaults' >"$log" 2>&1; then
        echo "MISSED"
    else
        echo "noticed by $(grep -oE '[0-9]+ - .* \((Failed|Timeout|SEGFAULT|Subprocess aborted|Not Run)' "$log" | head -n 1 | sed 's/^[0-9]* - //; s/ ([A-Z].*//')"
    fi
    cat "$file" >"$tree/$file"
}

# work NUMBER: every jobs-th fault, from NUMBER on, in a tree of its own.
work() {
    local number=$1 tree=$place/tree-$1 i start
    for ((k = number; k < ${#chosen[@]}; k += jobs)); do
        i=${chosen[k]}
        start=$SECONDS
        printf '%s\t%s\t%s\t%s\t%d\n' "$(dirname "${files[i]}" | cut -d/ -f1-2)" "${files[i]}" "${names[i]}" \
            "$(try_fault "$tree" "$i")" $((SECONDS - start)) | tee -a "$place/results-$number.tsv"
    done
}

for list in "${lists[@]}"; do read_list "$list"; done
chosen=()
if $only_changed; then changed_files=$(changed_since_base); fi
for i in "${!names[@]}"; do
    if $only_changed && ! grep -qxF "${files[i]}" <<<"$changed_files"; then continue; fi
    chosen+=("$i")
done
((${#chosen[@]} > 0)) || {
    say "no fault of the lists lies in what has changed"
    exit 0
}
say "${#chosen[@]} faults of ${#names[@]} to plant, $jobs at a time (build/planted)"

mkdir -p "$place"
rm -f "$place"/results*.tsv
for ((number = 0; number < jobs; ++number)); do
    tree=$place/tree-$number
    lay_tree "$tree"
    [[ -f $tree/build/plant/build.ninja ]] || (cd "$tree" && cmake --preset plant "-DMEREMARK_SHARED_DIR=$(realpath -m "$top/../shared")" >build/configure.log 2>&1) ||
        fail "CMake could not configure the copy" "$tree/build/configure.log" "see the error there"
done

# What is claimed has to hold, and to be there, before anything is planted. Fault 0's tree is as good as any.
say "building the copy as it is, and asking every claim for the truth"
mapfile -t executables < <(for i in "${chosen[@]}"; do executables_of "$i"; done | sort -u)
for ((number = 0; number < jobs; ++number)); do
    build_in "$place/tree-$number" "$place/build-$number.log" "${executables[@]}" &
done
wait
mapfile -t asked < <(for i in "${chosen[@]}"; do tr ';' '\n' <<<"${claims[i]}"; done | sed 's/^ *//; /^$/d' | sort -u)
for claim in "${asked[@]}"; do
    binary=$place/tree-0/build/plant/bin/${claim%% *}
    [[ -x $binary ]] || fail "there is no suite '${claim%% *}'" "$place/build-0.log" "see the list, or the first error of the build"
    is_there "$binary" "${claim#* }" ||
        fail "there is no test '$claim'" "tests/planted" "name one that is there"
    run_claim "$place/tree-0" "${claim%% *}" "${claim#* }" "$place/claim.log" ||
        fail "'$claim' fails before anything is planted" "$place/claim.log" "mend that first"
done

for ((number = 0; number < jobs; ++number)); do work "$number" & done
wait
cat "$place"/results-*.tsv | sort >"$place/results.tsv"
awk -F '\t' '
    { n[$1]; all[$1] += $4 != "no fault"; seen[$1] += $4 ~ /^noticed/; total += $4 != "no fault"; found += $4 ~ /^noticed/ }
    END {
        for (f in n) printf "%-20s %3d of %3d noticed\n", f, seen[f], all[f] | "sort"
        close("sort")
        printf "planted: %d of %d faults noticed (%.1f %%)\n", found, total, total ? 100 * found / total : 100
    }' "$place/results.tsv"
if grep -vP '\t(noticed.*|no fault)\t' "$place/results.tsv"; then
    fail "not every fault was noticed" "$place/results.tsv" "write the test that would notice, or mend the list"
fi
