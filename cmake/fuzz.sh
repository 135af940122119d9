#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# fuzz.sh SECONDS [READER...]: builds the fuzzers with clang and runs them one after the other, each for so many seconds,
# from the corpus in tests/fuzz/corpus. What it finds is left in build/fuzz/findings: mend it and keep the case in the corpus.
set -euo pipefail
cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.."
export LC_ALL=C.UTF-8
source cmake/steps.sh

seconds=${1:-}
[[ $seconds =~ ^[1-9][0-9]*$ ]] || fail "no time given" "fuzz.sh" "say 'fuzz.sh SECONDS [READER...]'"
shift
command -v clang++-16 >/dev/null || fail "the fuzzers need clang" "no clang++-16 found" "install clang-16 and libclang-rt-16-dev"
build fuzz
readers=("$@")
if ((${#readers[@]} == 0)); then
    for folder in tests/fuzz/corpus/*/; do readers+=("$(basename "$folder")"); done
fi

bad=()
for reader in "${readers[@]}"; do
    [[ -x build/fuzz/bin/fuzz_$reader ]] || fail "there is no fuzzer '$reader'" "build/fuzz/bin" "see tests/fuzz/corpus"
    mkdir -p "build/fuzz/grown/$reader" "build/fuzz/findings/$reader"
    log=build/fuzz/findings/$reader.log
    say "fuzzing $reader for $seconds s ($log)"
    # What was grown before comes first, so that new cases go there and not into the tree.
    "build/fuzz/bin/fuzz_$reader" "build/fuzz/grown/$reader" "tests/fuzz/corpus/$reader" \
        -max_total_time="$seconds" -rss_limit_mb=1024 -timeout=10 -max_len=65536 -print_final_stats=1 \
        -artifact_prefix="build/fuzz/findings/$reader/" >"$log" 2>&1 || bad+=("$reader")
    grep -E 'stat::number_of_executed_units' "$log" || true
done
((${#bad[@]} == 0)) || fail "found something in ${bad[*]}" "$PWD/build/fuzz/findings" "mend it, and keep the case in the corpus"
say "fuzzed ${#readers[@]} readers for $seconds s each, found nothing"
