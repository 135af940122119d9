// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/water_point.h"
#include "core/units/area.h"
#include "core/units/depth.h"
#include "core/units/length.h"

#include <chrono>
#include <optional>

namespace weed {

/// How weed is mapped.
struct WeedSettings {
    /// Distance over which a note speaks for its surroundings (standard deviation of a Gaussian),
    /// metres, 5 to 500. Beds keep their shape over tens of metres.
    units::Length noteReach = units::Length::metres(45.0);
    /// Difference of depth over which it does so, metres, 0.2 to 20. Weed follows depth more than
    /// place.
    units::Depth noteDepthReach = units::Depth::metres(1.5);
    /// How many notes the depth and clarity prior is worth, 0.1 to 20: one note on the spot should
    /// outweigh it.
    double priorNotes = 0.6;
    /// Probability of weed well inside the growth limit, 0.05 to 0.95: not every shallow has weed.
    double shallowProbability = 0.7;
    /// Depth over which the prior falls round the growth limit, as a share of it, 0.02 to 0.5 (the
    /// published relations scatter by a quarter).
    double limitSoftness = 0.12;
    /// The same two where clarity is not known: a probability below one half, so that no bed is
    /// drawn without a note, 0 to 0.49 ...
    double unknownProbability = 0.3;
    /// ... and a limit below which weed is not to be thought of, metres, 0.5 to 20 (Secchi 5 m,
    /// clear for a stillwater, gives about this).
    units::Depth unknownLimit = units::Depth::metres(5.5);
    /// How much of the summer's weed still stands, 0 to 1: 1 in late summer, lower as it dies back.
    double seasonFactor = 1.0;
    /// The year of which weed is to be mapped; notes of earlier ones count less. Absent: all count
    /// in full.
    std::optional<std::chrono::year> year;
    /// Weed height where no note tells it, metres, 0.05 to 10; a quarter of it where notes say
    /// thin. Never above the surface.
    units::Length usualHeight = units::Length::metres(0.8);
    /// Beds smaller than this are left out, and gaps in them filled; 0 to 10 ha.
    units::Area leastArea = units::Area::squareMetres(300.0);
    /// Width of the strip inside a bed's border that counts as weed edge, metres, 1 to 50; at least
    /// a cell is taken.
    units::Length edgeWidth = units::Length::metres(6.0);
    /// Names are numbered clockwise beginning from the bearing of this place as seen from the
    /// middle of the water; absent: from north.
    std::optional<geo::WaterPoint> launch;
};

} // namespace weed
