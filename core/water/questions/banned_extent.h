// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/area.h"
#include "core/water/document/water.h"

namespace water {

/// How much water a ban takes away, and where.
struct BannedExtent {
    units::Area area;
    geo::WaterPoint middle; ///< Of its corners.
};

/// Needs a water that has a frame, and a ban of three corners or more.
[[nodiscard]] BannedExtent extentOf(const Water& water, const BannedWater& banned);

} // namespace water
