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
if ((${#suites[@]} == 0)); then suites=(soundings surface zones edits); fi

# The sample water, which the edits are made to.
sketch_sample() (
    cd sample-survey/files
    ../../build/bench/bin/meremark-batch sketch survey-2026-09-05.nmea survey-2026-09-12.gpx survey-2026-09-19.csv \
        --shore shoreline.geojson --weed weed-notes.csv --lead-line lead-line.csv --facts water.json \
        --house-rules house-rules.json --survey-days survey-days.csv --tie-days \
        --water "$MEREMARK_WATER" --report "${MEREMARK_WATER%.gpkg}.json"
)
export MEREMARK_WATER=$PWD/build/bench/sample.gpkg
[[ " ${suites[*]} " != *" edits "* ]] || sketch_sample

for suite in "${suites[@]}"; do
    [[ -x build/bench/bin/bench_$suite ]] || fail "there is no benchmark '$suite'" "build/bench/bin" "say one of: soundings surface zones edits"
    say "benchmark $suite (build/bench/$suite.json)"
    "build/bench/bin/bench_$suite" --benchmark_out="build/bench/$suite.json" --benchmark_counters_tabular=true
done
