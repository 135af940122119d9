// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"
#include "core/soundings/lead_line.h"

namespace edits {

void removeLeadLine(open_water::OpenWater& open, soundings::LeadLineId id);

} // namespace edits
