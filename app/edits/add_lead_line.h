// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"
#include "core/soundings/lead_line.h"

#include <vector>

namespace edits {

/// Adds soundings by lead line, each with a fresh id; those that the water has already are left
/// out.
void addLeadLine(open_water::OpenWater& open, std::vector<soundings::LeadLineSounding> soundings);

} // namespace edits
