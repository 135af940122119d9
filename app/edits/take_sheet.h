// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"

namespace edits {

/// Keeps what stands on a sheet that was made for the boat. It is not undone: what is on paper is
/// not taken back. OpenWater::failed() tells what cannot be done.
void takeSheet(open_water::OpenWater& open, const water::BoatSheet& sheet);

} // namespace edits
