// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/lon_lat.h"
#include "core/units/moment.h"

#include <optional>
#include <string>
#include <vector>

namespace logbook {

/// Water where the fishery forbids boats or fishing.
struct ClosedWater {
    std::string name;
    std::vector<geo::LonLatPiece> pieces;
    friend bool operator==(const ClosedWater&, const ClosedWater&) = default;
};

/// A season within the year, both days included; it may run over the new year.
struct Season {
    std::chrono::month_day first;
    std::chrono::month_day last;
    [[nodiscard]] bool holds(units::Day day) const;
    friend bool operator==(const Season&, const Season&) = default;
};

/// The fishery's rules, as far as the program can use them. The fishery's own text always goes
/// first.
struct HouseRules {
    std::optional<int> rodLimit; ///< Rods a boat may have in the water.
    std::vector<ClosedWater> closed;
    std::optional<Season> season;
    std::vector<std::string> notes; ///< Printed on the sheet as they are.
    friend bool operator==(const HouseRules&, const HouseRules&) = default;
};

} // namespace logbook
