// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/error.h"
#include "core/geo/lon_lat.h"
#include "core/marks/exclusion.h"
#include "core/units/area.h"

#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace water {

// What a list of marks stands on, as values. The sentences are made by app/wording.

/// The log is empty.
struct NothingCaught {
    friend bool operator==(const NothingCaught&, const NothingCaught&) = default;
};
/// The log has stays, and none of them counts.
struct NoStayCounts {
    std::size_t stays = 0;
    friend bool operator==(const NoStayCounts&, const NoStayCounts&) = default;
};
/// Stays that lie on no water of this chart today.
struct StaysElsewhere {
    std::size_t elsewhere = 0;
    std::size_t stays = 0; ///< Of the whole log.
    friend bool operator==(const StaysElsewhere&, const StaysElsewhere&) = default;
};
/// Stays whose rods nobody noted, or that lasted no time, or longer than any can.
struct StaysWithoutEffort {
    std::size_t withoutEffort = 0;
    std::size_t stays = 0; ///< Of the whole log.
    friend bool operator==(const StaysWithoutEffort&, const StaysWithoutEffort&) = default;
};
/// The list is short, because water was left out.
struct WaterLeftOut {
    std::size_t found = 0; ///< Marks
    int wanted = 0;        ///< of so many.
    std::vector<std::pair<marks::Exclusion, units::Area>> parts;
    friend bool operator==(const WaterLeftOut&, const WaterLeftOut&) = default;
};
/// Water that the waves of the day leave out.
struct TooRoughWater {
    units::Area area;
    units::Length roughest; ///< Significant height from which a boat does not lie there.
    friend bool operator==(const TooRoughWater&, const TooRoughWater&) = default;
};
/// Nobody said how strong the wind will be: waves and shelter are not counted.
struct WavesNotCounted {
    friend bool operator==(const WavesNotCounted&, const WavesNotCounted&) = default;
};

/// Depths of two survey days disagree where their passes cross, and nobody has agreed how to tie
/// them.
struct DaysDiffer {
    units::Length by;
    friend bool operator==(const DaysDiffer&, const DaysDiffer&) = default;
};
/// Survey days whose water level is not known: their depths may stand too high or too low.
struct DaysWithoutLevel {
    std::size_t days = 0;
    friend bool operator==(const DaysWithoutLevel&, const DaysWithoutLevel&) = default;
};

using PlanNote =
    std::variant<NothingCaught, NoStayCounts, StaysElsewhere, StaysWithoutEffort, WaterLeftOut,
                 WavesNotCounted, TooRoughWater, DaysDiffer, DaysWithoutLevel>;

/// A mark of the user's own that cannot be anchored on.
struct RefusedMark {
    std::string name; ///< May be empty.
    base::Error why;
    geo::LonLat place{};
};

} // namespace water
