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
if ((${#suites[@]} == 0)); then suites=(soundings surface zones edits desk canvas learning); fi

# The sample water, which the edits are made to and the seasons fished on.
sketch_sample() (
    cd sample-survey/files
    ../../build/bench/bin/meremark-batch sketch survey-2026-09-05.nmea survey-2026-09-12.gpx survey-2026-09-19.csv \
        --shore shoreline.geojson --weed weed-notes.csv --lead-line lead-line.csv --facts water.json \
        --house-rules house-rules.json --survey-days survey-days.csv --tie-days \
        --water "$MEREMARK_WATER" --report "${MEREMARK_WATER%.gpkg}.json"
)
export MEREMARK_WATER=$PWD/build/bench/sample.gpkg
[[ " ${suites[*]} " =~ " edits "|" learning " ]] && sketch_sample

# A real lake beside it, where the shared data are at hand.
lake_waters=("$MEREMARK_WATER")
caputh=${MEREMARK_SHARED_DIR:-$PWD/../shared}/data/caputh_de
if [[ " ${suites[*]} " == *" learning "* && -d $caputh ]]; then
    lake_waters+=("$PWD/build/bench/caputh.gpkg")
    [[ -f ${lake_waters[1]} ]] ||
        build/bench/bin/meremark-batch sketch "$caputh"/soundings_*.csv --shore "$caputh/shore.geojson" --cell 4 \
            --water "${lake_waters[1]}" --report build/bench/caputh-sketch.json
fi

# The waters of the desk's benchmarks are drawn once and kept.
export MEREMARK_DESK_WATERS=$PWD/build/bench

for suite in "${suites[@]}"; do
    [[ -x build/bench/bin/bench_$suite ]] || fail "there is no benchmark '$suite'" "build/bench/bin" "say one of: soundings surface zones edits desk canvas learning"
    say "benchmark $suite (build/bench/$suite.json)"
    if [[ $suite == learning ]]; then
        build/bench/bin/bench_learning --seeds "${MEREMARK_SEEDS:-4}" --out build/bench/learning.json "${lake_waters[@]}"
        continue
    fi
    "build/bench/bin/bench_$suite" --benchmark_out="build/bench/$suite.json" --benchmark_counters_tabular=true
done
