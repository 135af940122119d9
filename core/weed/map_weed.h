// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/geo/water_frame.h"
#include "core/grid/depth_grid.h"
#include "core/grid/mask.h"
#include "core/soundings/lead_line.h"
#include "core/weed/weed_map.h"
#include "core/weed/weed_note.h"
#include "core/weed/weed_settings.h"

#include <optional>
#include <span>

namespace weed {

/// Where weed is likely: depth and water clarity give a first guess in every cell; the notes and
/// the lead line's findings first shift it by depth over the whole water, then correct it round
/// about themselves (beta-binomial smoothing with a Gaussian over distance and depth). Beds are
/// cells where weed is more likely than not; their borders with open water are weed edges.
///
/// Without notes the map rests on depth and clarity alone. Without a Secchi depth no bed is drawn
/// where no note speaks for it, and WeedMap::growthLimit is absent. Distances are over water: a
/// note says nothing about the other side of a spit.
/// \param depth below chart level, on the mask's frame. Notes outside the water are counted and
/// otherwise left alone. \return wrongUse for a setting out of its range, a Secchi depth that is
/// not positive, or frames that differ; cancelled.
[[nodiscard]] base::Result<WeedMap>
mapWeed(const grid::DepthGrid& depth, const grid::Mask& mask, std::span<const WeedNote> notes,
        std::span<const soundings::LeadLineSounding> leadLine, std::optional<units::Depth> secchi,
        const geo::WaterFrame& frame, const WeedSettings& settings, base::Progress& progress);

} // namespace weed
