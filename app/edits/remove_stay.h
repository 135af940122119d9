// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"

namespace edits {

/// Takes a stay and its runs out of the log.
void removeStay(open_water::OpenWater& open, logbook::StayId id);

} // namespace edits
