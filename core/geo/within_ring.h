// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/path.h"

namespace geo {

/// Whether the ring goes round the place; a ring that crosses itself leaves out what it goes round
/// twice.
[[nodiscard]] bool isWithin(const Ring& ring, WaterPoint place);

} // namespace geo
