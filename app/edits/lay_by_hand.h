// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"

namespace edits {

/// Keeps a mark with an anchor or a bait where the user laid it. \param name what he did: "Lay bow
/// anchor". \param from where the pinned mark was, if there is one.
void layByHand(open_water::OpenWater& open, const QString& name, geo::LonLat from,
               const water::PinnedMark& mark);
/// Gives anchors and baits of the pinned mark at `place` back to the program.
void freeLie(open_water::OpenWater& open, geo::LonLat place);

} // namespace edits
