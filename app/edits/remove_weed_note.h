// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"
#include "core/weed/weed_note.h"

namespace edits {

/// Takes one note of weed out of the water.
void removeWeedNote(open_water::OpenWater& open, weed::WeedNoteId id);

} // namespace edits
