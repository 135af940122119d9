// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"
#include "core/soundings/lead_line.h"

namespace edits {

/// Puts the sounding in the place of the one with its id.
void changeLeadLine(open_water::OpenWater& open, const soundings::LeadLineSounding& sounding);

} // namespace edits
