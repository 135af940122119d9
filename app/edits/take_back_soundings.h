// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"
#include "core/water/questions/soundings_within.h"

namespace edits {

/// Takes these soundings back into the drawing, whether a rule set them aside or the user did.
void takeBackSoundings(open_water::OpenWater& open, const water::SoundingChoice& choice);

} // namespace edits
