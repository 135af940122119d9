// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/day_waves.h"

#include "core/wind/fetch.h"
#include "core/wind/waves.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace water {

namespace {

constexpr double square_m = 40.0;

/// Mean depth along the straight way upwind: what limits the waves that come down it.
units::Depth depthUpwind(const grid::DepthGrid& today, geo::WaterPoint place, units::Bearing from,
                         units::Length fetch) {
    const double step_m = std::max(today.frame().cell_m(), fetch.inMetres() / 200.0);
    const double east = from.east();
    const double north = from.north();
    double sum_m = 0.0;
    int count = 0;
    for (double way_m = 0.0; way_m <= fetch.inMetres(); way_m += step_m) {
        if (const auto depth =
                today.at(geo::WaterPoint{place.x_m + way_m * east, place.y_m + way_m * north})) {
            sum_m += depth->inMetres();
            ++count;
        }
    }
    return units::Depth::metres(count > 0 ? sum_m / count : 0.0);
}

Exposure exposedTo(const wind::FetchFrom& from, const grid::DepthGrid& today, geo::WaterPoint place,
                   const std::optional<units::Speed>& speed) {
    Exposure out{from.side, std::nullopt};
    if (speed) {
        const units::Depth depth = depthUpwind(today, place, from.side, from.fetch.straight);
        out.waves = {from.fetch.effective,
                     wind::wavesOverDepth(*speed, from.fetch.effective, depth).significantHeight};
    }
    return out;
}

} // namespace

Exposure exposureAt(const geo::Outline& outline, const grid::DepthGrid& today,
                    geo::WaterPoint place, const logbook::Wind& wind) {
    if (wind.from) {
        return exposedTo({*wind.from, wind::fetchAt(outline, place, *wind.from)}, today, place,
                         wind.speed);
    }
    const auto sides = wind::fetchAllRound(outline, place);
    if (sides.empty()) {
        return exposedTo({}, today, place, wind.speed);
    }
    // In a calm no side is higher than another: then by the fetch, as where nobody knows the speed.
    const bool isByWaves = wind.speed && *wind.speed > units::Speed();
    std::optional<Exposure> worst;
    double most_m = 0.0;
    for (const wind::FetchFrom& from : sides) {
        const Exposure one = exposedTo(from, today, place, wind.speed);
        const double one_m = (isByWaves ? one.waves->height : from.fetch.effective).inMetres();
        if (!worst || one_m > most_m) {
            worst = one;
            most_m = one_m;
        }
    }
    return *worst;
}

bool DayWaves::mayExceed(units::Length height) const {
    if (!wind_.speed) {
        return false;
    }
    const geo::Box box = outline_.box();
    const units::Length longest = units::Length::metres(std::hypot(box.width_m(), box.height_m()));
    return wind::wavesOnDeepWater(*wind_.speed, longest).significantHeight > height;
}

units::Length DayWaves::heightAt(geo::WaterPoint place) const {
    const auto waves = exposureAt(outline_, today_, place, wind_).waves;
    return waves ? waves->height : units::Length();
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
        return heightAt(place);
    }
    const units::Length height = heightAt(middle);
    known_.emplace(square, height);
    return height;
}

WavesOfWinds::WavesOfWinds(const geo::Outline& outline, const grid::DepthGrid& today,
                           const marks::ExpectedDay& day)
    : winds_(marks::windsOf(day)) {
    for (const marks::WindOfHours& part : winds_) {
        ofEach_.emplace_back(outline, today, part.wind);
    }
}

bool WavesOfWinds::areAny() const {
    return std::ranges::any_of(winds_, [](const marks::WindOfHours& part) {
        return part.wind.speed && *part.wind.speed > units::Speed();
    });
}

marks::WavesOfDay WavesOfWinds::near(geo::WaterPoint place) {
    marks::WavesOfDay waves;
    const std::array of{&waves.first, &waves.later};
    for (std::size_t k = 0; k < winds_.size(); ++k) {
        if (winds_[k].wind.speed) {
            *of[k] = marks::WaveState{units::Length(), ofEach_[k].heightNear(place)};
        }
    }
    return waves;
}

bool WavesOfWinds::mayExceed(units::Length height) const {
    return std::ranges::all_of(ofEach_,
                               [height](const DayWaves& one) { return one.mayExceed(height); });
}

units::Length WavesOfWinds::lowestNear(geo::WaterPoint place) {
    units::Length lowest = ofEach_.front().heightNear(place);
    for (DayWaves& one : ofEach_) {
        lowest = std::min(lowest, one.heightNear(place));
    }
    return lowest;
}

} // namespace water
