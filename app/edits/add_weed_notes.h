// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"
#include "core/weed/weed_note.h"

#include <vector>

namespace edits {

/// Adds notes of weed, each with a fresh id; those that the water has already are left out.
void addWeedNotes(open_water::OpenWater& open, std::vector<weed::WeedNote> notes);

} // namespace edits
