// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"

namespace edits {

/// Keeps a mark where the user wants it. \param from the pinned mark at this place, if there is
/// one, moves instead; else a new one is added.
void pinMark(open_water::OpenWater& open, geo::LonLat from, const water::PinnedMark& mark);

} // namespace edits
