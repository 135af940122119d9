// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"
#include "core/water/questions/soundings_within.h"

namespace edits {

/// Sets these soundings aside by hand.
void setAsideSoundings(open_water::OpenWater& open, const water::SoundingChoice& choice);

} // namespace edits
