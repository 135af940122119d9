// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/water_point.h"
#include "core/marks/surroundings.h"

namespace marks {

/// A place where the boat may lie, and what lies round it.
struct LookedAt {
    geo::WaterPoint place;
    Surroundings around;
};

} // namespace marks
