#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Does the set-up, builds Release, and opens the desk on the sample water. With no display, does the same main job through
# meremark-batch and says where the picture, the reports and the day sheet are.
set -euo pipefail
cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.."
source cmake/steps.sh

batch=build/release/bin/meremark-batch
files=sample-survey/files

# draw_sample DIR NAME: soundings of the three days and the shoreline to a drawn water, then the log of two autumns into it.
draw_sample() {
    local dir=$1 water=$1/$2
    say "drawing the sample water from $files into $water"
    "$batch" sketch "$files"/survey-2026-09-05.nmea "$files"/survey-2026-09-12.gpx "$files"/survey-2026-09-19.csv \
        --survey-days "$files/survey-days.csv" --tie-days --shore "$files/shoreline.geojson" --facts "$files/water.json" \
        --weed "$files/weed-notes.csv" --lead-line "$files/lead-line.csv" --house-rules "$files/house-rules.json" --water "$water" \
        --picture "$dir/chart.png" --report "$dir/sketch.json" ||
        fail "the sample water could not be drawn" "$files" "see the line above"
    say "adding its log of trips, stays and fish"
    "$batch" log "$water" --add "$files/log.csv" >"$dir/log.json" ||
        fail "the log could not be added" "$files/log.csv" "see the line above"
}

./cmake/setup.sh run
configure release -DMEREMARK_UNITY=ON
build release meremark meremark-batch

if [[ -n ${DISPLAY:-}${WAYLAND_DISPLAY:-} ]]; then
    dir=build/sample-desk
    mkdir -p "$dir"
    # Made once, so that what was tried out on it is kept.
    [[ -f $dir/sample-water.gpkg ]] || draw_sample "$dir" sample-water.gpkg
    say "opening the desk on $dir/sample-water.gpkg (delete that file to begin again)"
    exec build/release/bin/meremark "$dir/sample-water.gpkg"
fi

say "no display (neither DISPLAY nor WAYLAND_DISPLAY is set): doing the main job with meremark-batch"
dir=build/sample-run
mkdir -p "$dir"
draw_sample "$dir" sample-water.gpkg
say "proposing marks for a day with 6 m/s of wind from the south-west"
"$batch" marks "$dir/sample-water.gpkg" --wind-from 225 --wind-speed 6 \
    --report "$dir/marks.json" --gpx "$dir/marks.gpx" --sheet "$dir/day-sheet.pdf" --picture "$dir/marks.png" ||
    fail "no marks could be proposed" "$dir/sample-water.gpkg" "see the line above"
say "counting what produced fish, by section"
"$batch" review "$dir/sample-water.gpkg" --by section --report "$dir/review.json" --csv "$dir/review.csv" \
    --picture "$dir/review.png" ||
    fail "the rates could not be counted" "$dir/sample-water.gpkg" "see the line above"
say "picture:   $PWD/$dir/chart.png (the water) and $PWD/$dir/marks.png (tomorrow's marks), $PWD/$dir/review.png (rates)"
say "reports:   $PWD/$dir/sketch.json, $PWD/$dir/marks.json, $PWD/$dir/review.json"
say "day sheet: $PWD/$dir/day-sheet.pdf"
say "water:     $PWD/$dir/sample-water.gpkg (any GIS opens it)"
