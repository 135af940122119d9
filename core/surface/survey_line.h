// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/path.h"
#include "core/units/length.h"

#include <chrono>
#include <vector>

namespace surface {

/// A straight line worth sounding, sailed from start to end.
struct SurveyLine {
    geo::WaterPoint start;
    geo::WaterPoint end;
    units::Length length;
    /// How far it lowers the trust half-width summed over the water: metres times square metres.
    double gain_m3 = 0.0;
    double gainPerMetre_m2 = 0.0;     ///< The gain for each metre of line.
    std::chrono::seconds duration{0}; ///< At survey speed, without the way to it.
};

/// Lines in the order of one trip from the launch and back.
struct SurveyTrip {
    std::vector<SurveyLine> lines;
    units::Length distance; ///< Lines and the ways between them, over water.
    std::chrono::seconds duration{0};
    /// What the whole trip lowers the mean half-width to, and from what.
    units::Length meanHalfWidthBefore;
    units::Length meanHalfWidthAfter;
    /// From the launch over water to each line, along it, and back: what the boat sails.
    geo::Path route;
};

} // namespace surface
