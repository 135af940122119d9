// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/area.h"

namespace sections {

/// How the fishable water is divided.
struct SectionSettings {
    /// Size of a section, 0.01 to 1000 ha. Default 4 ha, about 10 acres: what one outing can
    /// cover (ours). Pieces come out between 0.6 and 1.5 of it,
    /// but for pockets that nature has cut off.
    units::Area wantedArea = units::Area::hectares(4.0);
    /// Pockets cut off by nature and smaller than this share of the wanted size are no sections of
    /// their own; 0 to 0.5. They go to the section that is nearest over water: a knoll of some
    /// hundred square metres in deep water is a place to fish, a few cells are not.
    double leastPocket = 0.005;
    [[nodiscard]] units::Area leastArea() const { return wantedArea * leastPocket; }
    /// Weight of even depth against compact shape, 0 (depth does not matter) to 20. At 1, a section
    /// whose depth scatters as it would in a piece cut by straight distance alone costs as much for
    /// that as a circle of the wanted size costs for its border. A weight above 0 is raised where
    /// sections would tell shallow from deep hardly better than such pieces.
    double depthWeight = 1.0;
    /// How compact sections have to stay: share of what pieces cut by straight distance reach on
    /// the same water (median of 4 pi A / P^2), 0.3 to 1; nine tenths of it are enough where they
    /// would tell shallow from deep hardly better. Where they do not, depth counts less:
    /// round a bank that falls steeply, sections of even depth would be ribbons, and no boat fishes
    /// through a ribbon from a few anchor marks.
    double leastCompactness = 0.84;
};

} // namespace sections
