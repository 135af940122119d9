// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/contours/band.h"
#include "core/geo/water_frame.h"
#include "core/grid/depth_grid.h"
#include "core/grid/mask.h"
#include "core/sections/numbering.h"
#include "core/sections/section.h"
#include "core/sections/section_settings.h"
#include "core/structure/zone.h"
#include "core/weed/weed_map.h"

#include <optional>
#include <span>

namespace sections {

inline const Numbering noNumbering;

/// What the division looks at; everything stays with the caller, who keeps it alive during the
/// call. All grids lie on the mask's frame.
struct DivideInput {
    const grid::DepthGrid& depth; ///< At the level to be fished.
    const grid::Mask& mask;
    const geo::Outline& outline;
    const geo::WaterFrame& frame;
    const contours::Bands& bands; ///< Their limit is the deepest depth worth fishing.
    /// Not 0 where the fishery forbids boats or fishing; nothing for none.
    const grid::Grid<std::uint8_t>* closed = nullptr;
    /// 0 sounded, 1 inferred, 2 guess, by cell; nothing where it is not known.
    const grid::Grid<std::uint8_t>* trustNames = nullptr;
    const structure::ZoneMap* structure = nullptr; ///< Nothing where it has not been found.
    const weed::WeedMap* weed = nullptr;           ///< Nothing where it has not been mapped.
    /// New numbers run clockwise from here; without one, from the north.
    std::optional<geo::WaterPoint> launch = std::nullopt;
    std::span<const SectionName> names = {}; ///< Names that the user has given.
    /// What was shown before: its borders stay where they can. Nothing: divided from nothing.
    const Numbering& numbering = noNumbering;
};

/// Divides the fishable water (not too deep, not bare, not closed, inside the shore) into connected
/// sections near the wanted size, cut where the water itself divides: at necks, along changes of
/// depth, never across land. Numbered clockwise from the launch, cards filled.
///
/// Every fishable cell is in exactly one section, but for pockets below the least size.
/// \return wrongUse for a setting out of its range, frames that differ, or a wanted size below four
/// cells; unusableInput where nothing is fishable (all too deep, or all closed: the message says
/// which). A wanted size above the whole water gives one section for each water by itself. Same
/// input, same sections.
[[nodiscard]] base::Result<SectionMap>
divideWater(const DivideInput& input, const SectionSettings& settings, base::Progress& progress);

} // namespace sections
