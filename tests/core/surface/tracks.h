// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/soundings/sounding.h"
#include "tests/support/made_up_water.h"

#include <random>
#include <vector>

namespace tracks {

/// Soundings every `step_m` on east-west lines `apart_m` apart over the whole water, each line a
/// pass, with normal noise of `noise_m`.
inline std::vector<soundings::KeptSounding> lines(const support::MadeUpWater& water, double apart_m,
                                                  double step_m, double noise_m = 0.0,
                                                  unsigned seed = 1) {
    std::mt19937 random(seed);
    std::normal_distribution<double> noise(0.0, 1.0);
    std::vector<soundings::KeptSounding> soundings;
    const geo::Box& box = water.outline.box();
    int pass = 0;
    for (double y_m = box.south_m + 0.5 * apart_m; y_m < box.north_m; y_m += apart_m) {
        ++pass;
        for (double x_m = box.west_m; x_m < box.east_m; x_m += step_m) {
            if (water.outline.contains({x_m, y_m})) {
                soundings::KeptSounding s;
                s.x_m = x_m;
                s.y_m = y_m;
                s.place = water.frame.toEarth({x_m, y_m});
                s.depth_m = water.bottom({x_m, y_m}) + noise_m * noise(random);
                s.pass = pass;
                soundings.push_back(s);
            }
        }
    }
    return soundings;
}

/// One sounding of `depth_m` at p.
inline soundings::KeptSounding at(geo::WaterPoint p, double depth_m) {
    soundings::KeptSounding s;
    s.x_m = p.x_m;
    s.y_m = p.y_m;
    s.depth_m = depth_m;
    return s;
}

} // namespace tracks
