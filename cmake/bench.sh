#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# bench.sh [SUITE...]: builds the benchmarks of tests/bench and runs them beside their peers; all suites where none is named.
# The tables are left in build/bench/*.json as well. Nothing else should run on the machine meanwhile.
set -euo pipefail
cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.."
export LC_ALL=C.UTF-8
source cmake/steps.sh

for peer in ogr2ogr gmt; do
    command -v $peer >/dev/null || fail "there is no peer to compare with" "no $peer found" "install gdal-bin and gmt"
done
build bench
suites=("$@")
if ((${#suites[@]} == 0)); then suites=(soundings surface zones); fi
for suite in "${suites[@]}"; do
    [[ -x build/bench/bin/bench_$suite ]] || fail "there is no benchmark '$suite'" "build/bench/bin" "say one of: soundings surface zones"
    say "benchmark $suite (build/bench/$suite.json)"
    "build/bench/bin/bench_$suite" --benchmark_out="build/bench/$suite.json" --benchmark_counters_tabular=true
done
