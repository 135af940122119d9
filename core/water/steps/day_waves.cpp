// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/day_waves.h"

#include "core/wind/fetch.h"
#include "core/wind/waves.h"

#include <algorithm>
#include <cmath>

namespace water {

namespace {

constexpr double square_m = 40.0;

/// Mean depth along the straight way upwind: what limits the waves that come down it.
units::Depth depthUpwind(const grid::DepthGrid& today, geo::WaterPoint place, units::Bearing from,
                         units::Length fetch) {
    const double step_m = std::max(today.frame().cell_m(), fetch.inMetres() / 200.0);
    double sum_m = 0.0;
    int count = 0;
    for (double way_m = 0.0; way_m <= fetch.inMetres(); way_m += step_m) {
        if (const auto depth = today.at(geo::moved(place, from, units::Length::metres(way_m)))) {
            sum_m += depth->inMetres();
            ++count;
        }
    }
    return units::Depth::metres(count > 0 ? sum_m / count : 0.0);
}

} // namespace

marks::WaveState wavesAt(const geo::Outline& outline, const grid::DepthGrid& today,
                         geo::WaterPoint place, const logbook::Wind& wind) {
    const wind::Fetch fetch = wind::fetchAt(outline, place, wind.from);
    const units::Depth depth = depthUpwind(today, place, wind.from, fetch.straight);
    return {fetch.effective,
            wind::wavesOverDepth(wind.speed, fetch.effective, depth).significantHeight};
}

bool DayWaves::mayExceed(units::Length height) const {
    const geo::Box box = outline_.box();
    const units::Length longest = units::Length::metres(std::hypot(box.width_m(), box.height_m()));
    return wind::wavesOnDeepWater(wind_.speed, longest).significantHeight > height;
}

units::Length DayWaves::heightNear(geo::WaterPoint place) {
    const std::pair square{static_cast<int>(std::floor(place.x_m / square_m)),
                           static_cast<int>(std::floor(place.y_m / square_m))};
    const auto found = known_.find(square);
    if (found != known_.end()) {
        return found->second;
    }
    const geo::WaterPoint middle{(square.first + 0.5) * square_m, (square.second + 0.5) * square_m};
    if (!outline_.contains(middle)) {
        return wavesAt(outline_, today_, place, wind_).height;
    }
    const units::Length height = wavesAt(outline_, today_, middle, wind_).height;
    known_.emplace(square, height);
    return height;
}

} // namespace water
