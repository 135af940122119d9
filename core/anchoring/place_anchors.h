// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/anchoring/anchor_set.h"
#include "core/anchoring/boat_settings.h"
#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/grid/depth_grid.h"

#include <cstdint>

namespace anchoring {

/// Where to drop two anchors so that the boat lies with its middle on `mark`, bow to the wind.
///
/// Ropes are straight once tight; the depth is read where the anchor lands, so run and depth are
/// solved together. Where an anchor, a rope or the boat would come ashore, the bow is turned off
/// the wind and the ropes are shortened as little as will do, within the settings. The same where
/// any of them would come into closed water. Where the boat is to lie to one anchor, it lands
/// upwind of her, and she has room to swing right round it clear of shore and closed water, the
/// rope shortened within the settings if need be. \param depth below today's level. \param closed
/// cells where no boat may be (not 0), on the frame of `depth`; null where there are none. \return
/// unusableInput where the mark is on land or too shallow to float, where no turn and no rope
/// within the settings keeps both anchors in the water, or where the rope does not reach the bottom
/// with the least scope; wrongUse for a setting out of its range.
[[nodiscard]] base::Result<AnchorSet> placeAnchors(const grid::DepthGrid& depth,
                                                   const grid::Grid<std::uint8_t>* closed,
                                                   geo::WaterPoint mark, const Weather& weather,
                                                   const BoatSettings& boat,
                                                   base::Progress& progress);

} // namespace anchoring
