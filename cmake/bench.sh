#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# bench.sh [SUITE...]: builds the benchmarks of tests/bench and runs them beside their peers; all suites where none is named.
# The tables are left in build/bench/*.json as well. Nothing else should run on the machine meanwhile.
set -euo pipefail
cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.."
export LC_ALL=C.UTF-8
source cmake/steps.sh

command -v ogr2ogr >/dev/null || fail "there is no peer to compare with" "no ogr2ogr found" "install gdal-bin"
build bench
suites=("$@")
if ((${#suites[@]} == 0)); then suites=(soundings); fi
for suite in "${suites[@]}"; do
    [[ -x build/bench/bin/bench_$suite ]] || fail "there is no benchmark '$suite'" "build/bench/bin" "say one of: soundings"
    say "benchmark $suite (build/bench/$suite.json)"
    "build/bench/bin/bench_$suite" --benchmark_out="build/bench/$suite.json" --benchmark_counters_tabular=true
done
