// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/lon_lat.h"
#include "core/logbook/conditions.h"
#include "core/marks/factor.h"
#include "core/units/length.h"
#include "core/units/moment.h"

#include <map>
#include <optional>

namespace marks {

/// The wind that is expected from an hour of the day on.
struct LaterWind {
    std::chrono::seconds at{}; ///< Since midnight, by the water's clock.
    logbook::Wind wind;
    friend bool operator==(const LaterWind&, const LaterWind&) = default;
};

/// Tomorrow as the user expects it.
struct ExpectedDay {
    units::Day day{std::chrono::year(2026), std::chrono::month(10), std::chrono::day(1)};
    std::chrono::seconds start = std::chrono::hours(8); ///< Since midnight, by the water's clock.
    std::chrono::seconds end = std::chrono::hours(16);  ///< Not before start.
    logbook::Wind wind;                 ///< What nobody said stays unknown: it is no calm.
    std::optional<LaterWind> windLater; ///< Where it turns, or gets up, in the day.
    units::Length levelChange;          ///< Today's level above chart level; negative below.
    std::optional<units::Temperature> waterTemperature;
    /// On each mark, without the time at the ropes; 5 minutes to 12 hours. Nothing: the day is
    /// shared out among the marks.
    std::optional<std::chrono::seconds> stay;
    friend bool operator==(const ExpectedDay&, const ExpectedDay&) = default;
};

/// Boat, ropes and rods. Defaults are common practice (no source).
struct Tackle {
    units::Speed boatSpeed = units::Speed::metresPerSecond(1.5); ///< Between marks; 0.3 to 8 m/s.
    units::Length boatLength = units::Length::metres(5.0);       ///< 2 to 12 m.
    units::Length bowHeight =
        units::Length::metres(0.5); ///< Rope fairlead above the water; 0 to 2 m.
    units::Length bowRope = units::Length::metres(50.0);   ///< What there is on board; 5 to 200 m.
    units::Length sternRope = units::Length::metres(30.0); ///< 5 to 200 m.
    double scope = 3.0;                               ///< Rope over depth at the anchor; 1.5 to 10.
    int rods = 4;                                     ///< 1 to 8, never above the house rules.
    units::Length cast = units::Length::metres(30.0); ///< Farthest bait; 5 to 100 m.
    units::Length overDepth =
        units::Length::feet(1.0); ///< Stop knot set deeper than the water by this; 0 to 3 m.
    /// One anchor at the bow alone: the boat lies downwind of it and swings.
    bool toOneAnchor = false;
    friend bool operator==(const Tackle&, const Tackle&) = default;
};

/// Everything that ranking is asked with: tomorrow, the boat, what matters.
struct Plan {
    ExpectedDay day;
    Tackle tackle;
    Weights weights;
    std::optional<geo::LonLat> launch;
    int count = 8; ///< Marks wanted; 1 to 40.
    /// From 0, fish what is known, to 1, try new water.
    double tryNew = 0.5;
    friend bool operator==(const Plan&, const Plan&) = default;
};

} // namespace marks
