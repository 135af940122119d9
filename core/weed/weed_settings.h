// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/area.h"
#include "core/units/depth.h"
#include "core/units/length.h"

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
    /// The growth limit where no Secchi depth is known, metres, 0.5 to 20. Secchi 2 m, which is
    /// common in stillwaters, gives about this.
    units::Depth usualLimit = units::Depth::metres(3.0);
    /// How much of the summer's weed still stands, 0 to 1: 1 in late summer, lower as it dies back.
    double seasonFactor = 1.0;
    /// Weed height where no note tells it, metres, 0.05 to 10. (Never above the surface.)
    units::Length usualHeight = units::Length::metres(0.8);
    /// Beds smaller than this are left out; 0 to 10 ha.
    units::Area leastArea = units::Area::squareMetres(200.0);
    /// Width of the strip along a bed's border that counts as weed edge, metres, 1 to 50.
    units::Length edgeWidth = units::Length::metres(6.0);
};

} // namespace weed
