#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# others_can_build.sh BUILD SCRATCH COMPILER: installs the library out of BUILD, builds draw_grid on nothing but what was installed, and
# holds what it says of a made-up water against the formula.
set -euo pipefail
export LC_ALL=C
build=$1 scratch=$2 compiler=$3
here=$(cd -- "$(dirname -- "${BASH_SOURCE[0]}")" && pwd)
top=$(cd -- "$here/../.." && pwd)
refuse() {
    printf 'others_can_build: %s\n' "$*" >&2
    exit 1
}

rm -rf "$scratch"
mkdir -p "$scratch"
cp -r "$here/draw_grid" "$scratch/source"
cmake --install "$build" --component library --prefix "$scratch/first" >"$scratch/install.log"
mv "$scratch/first" "$scratch/prefix" # It can be moved about.
cmake -S "$scratch/source" -B "$scratch/build" -G Ninja -DCMAKE_BUILD_TYPE=Release -DCMAKE_CXX_COMPILER="$compiler" \
    -DCMAKE_CXX_FLAGS="-Wall -Wextra -Werror" -DCMAKE_EXPORT_COMPILE_COMMANDS=ON -DCMAKE_PREFIX_PATH="$scratch/prefix" \
    >"$scratch/configure.log" 2>&1 || refuse "cannot be configured: $(tail -n 20 "$scratch/configure.log")"
cmake --build "$scratch/build" >"$scratch/build.log" 2>&1 || refuse "cannot be built: $(tail -n 30 "$scratch/build.log")"
# Nothing that was used, or that was installed to be used, leads back into this tree.
if grep -rnF -e "$top/core" -e "-I$top " -e "\"$top\"" "$scratch/build/compile_commands.json" "$scratch/prefix/lib"/*/cmake "$scratch/prefix/lib/cmake" 2>/dev/null; then
    refuse "leads back into the tree that it was built from"
fi
ninja -C "$scratch/build" -t deps | grep -F "$top/core" && refuse "a header of the tree was read"

# A round water of 500 m with a bottom like a dish, 8 m in the middle: area pi r^2, mean depth half the greatest (any table of solids).
# Metres in a degree at 51.5 N from the ellipsoid WGS 84.
awk -v shore="$scratch/shore.txt" -v soundings="$scratch/soundings.txt" 'BEGIN {
    pi = atan2(0, -1); lat = 51.5; s = sin(lat * pi / 180); e2 = 0.00669437999014; a = 6378137; w = 1 - e2 * s * s
    per_lon = a / sqrt(w) * cos(lat * pi / 180) * pi / 180; per_lat = a * (1 - e2) / w ^ 1.5 * pi / 180
    for (i = 0; i < 180; ++i) {
        printf "%.8f %.8f\n", -2 + 500 * cos(i * pi / 90) / per_lon, lat + 500 * sin(i * pi / 90) / per_lat > shore
    }
    for (y = -480; y <= 480; y += 40) for (x = -490; x <= 490; x += 10) if (x * x + y * y < 490 * 490) {
        printf "%.8f %.8f %.2f\n", -2 + x / per_lon, lat + y / per_lat, 8 * (1 - (x * x + y * y) / 250000) > soundings
    }
}'
said=$("$scratch/build/draw_grid" "$scratch/shore.txt" "$scratch/soundings.txt")
printf '%s\n' "$said"
awk '{got[$1] = $2} END {
    area = 3.14159265 * 500 * 500
    if (got["area_m2"] < 0.995 * area || got["area_m2"] > 1.005 * area) {print "the area should be about " area; exit 1}
    if (got["mean_depth_m"] < 3.9 || got["mean_depth_m"] > 4.1) {print "the mean depth should be about 4.0 m"; exit 1}
}' <<<"$said" || refuse "the figures are not those of the dish"

# What it refuses, it says as a sentence.
: >"$scratch/none.txt"
if refusal=$("$scratch/build/draw_grid" "$scratch/shore.txt" "$scratch/none.txt" 2>&1); then
    refuse "a water without soundings was drawn"
fi
[[ $refusal == draw_grid:*sounding* ]] || refuse "the refusal does not say what is missing: $refusal"
