// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"

#include <chrono>
#include <optional>
#include <vector>

namespace edits {

/// The boat goes to the marks at these places in this order.
void orderDay(open_water::OpenWater& open, const std::vector<geo::LonLat>& order);
/// Gives the order back to the program.
void freeOrder(open_water::OpenWater& open);
/// How long to stay on the mark at a place; nothing: as long as the day gives.
void setStayAt(open_water::OpenWater& open, geo::LonLat place,
               std::optional<std::chrono::seconds> length);

} // namespace edits
