// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/water_point.h"
#include "core/units/area.h"
#include "core/units/length.h"

#include <optional>

namespace structure {

/// How structure is found.
struct StructureSettings {
    /// Metres over which slope is taken and the inner ring of the fine position index; 3 to 50. A
    /// boat's length or two: what an angler can place a bait on.
    units::Length fineScale = units::Length::metres(8.0);
    /// Outer radius of the broad position index; 20 to 500, above the fine scale. About a long
    /// cast: what makes a hump stand out from its surroundings.
    units::Length broadScale = units::Length::metres(60.0);
    /// Slope from which a bank is a drop-off, percent, 1 to 200. Absent: the larger of 10 and the
    /// water's own upper quintile, so that a steep quarry is not all drop-off.
    std::optional<double> dropOffFrom_percent;
    /// A drop-off reaches on from there while slope is above this share of it, 0.3 to 1: hysteresis
    /// keeps it in one piece.
    double dropOffHold = 0.8;
    /// Rise over (or below) the surroundings from which ground is high or low, metres, 0.05 to 20.
    /// Absent: the larger of 0.3 m and one robust spread of the broad position index.
    std::optional<units::Length> highGround;
    /// Pieces smaller than this join their surroundings; 0 to 10 ha. Smaller is a speckle, not a
    /// place to anchor by.
    units::Area leastArea = units::Area::squareMetres(500.0);
    /// Names are numbered clockwise beginning from the bearing of this place as seen from the
    /// middle of the water; absent: from north.
    std::optional<geo::WaterPoint> launch;
};

} // namespace structure
