// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/area.h"

namespace sections {

/// How the fishable water is divided.
struct SectionSettings {
    /// Size of a section, 0.01 to 1000 ha. Default 4 ha, about 10 acres: what one boat fishes
    /// through properly in a session (common practice). Pieces come out between 0.5 and 1.6 of it,
    /// but for pockets that nature has cut off.
    units::Area wantedArea = units::Area::hectares(4.0);
    /// Pockets cut off by nature and smaller than this share of the wanted size are no sections of
    /// their own; 0 to 0.5. They stay without a section: nobody plans a session in them.
    double leastPocket = 0.02;
    /// What a step in depth costs less to cut along than an even bottom, 0 (does not matter) to 10.
    double featureWeight = 3.0;
};

} // namespace sections
