// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/area.h"
#include "core/units/depth.h"
#include "core/units/length.h"
#include "core/units/volume.h"

#include <vector>

namespace surface {

/// Area and volume at one depth below the level asked for.
struct HypsographyStep {
    units::Depth depth;
    units::Area area;    ///< Of the water that is at least this deep.
    units::Volume below; ///< Volume below the plane at this depth.
};

/// The form of a water in numbers, at one level.
struct Hypsography {
    units::Length rise; ///< How far that level stands above chart level.
    units::Area area;
    units::Volume volume;
    units::Depth meanDepth;
    units::Depth maxDepth;
    units::Length shoreLength;          ///< At chart level, islands included.
    double shoreDevelopment = 0.0;      ///< Shore length over that of a circle of the same area.
    double volumeDevelopment = 0.0;     ///< 3 x mean over maximum depth; 1 for a cone.
    std::vector<HypsographyStep> steps; ///< From depth 0 down, none deeper than the maximum.
};

/// Area and volume at any depth: the area straight between the steps, the volume what lies below it
/// then. Nothing below the greatest depth.
[[nodiscard]] HypsographyStep stepAt(const Hypsography& form, units::Depth depth);

/// The table with one row every `apart` from depth 0 down to the greatest depth; at most a thousand
/// rows. Empty where there are no steps, or `apart` is nothing.
[[nodiscard]] std::vector<HypsographyStep> rowsEvery(const Hypsography& form, units::Length apart);

} // namespace surface
