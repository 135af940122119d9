// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/water/document/water.h"

#include <chrono>
#include <optional>
#include <vector>

namespace acts {

/// The boat goes to the marks at these places in this order, as long as the marks are just these.
/// \return wrongUse where a place is there twice, or none is.
[[nodiscard]] base::Result<water::Water> orderDay(const water::Water& water,
                                                  const std::vector<geo::LonLat>& order);

/// Gives the order back to the program; stays that the user wants stay.
/// \return wrongUse where he gave none.
[[nodiscard]] base::Result<water::Water> freeOrder(const water::Water& water);

/// How long the user wants to stay on the mark at a place; nothing: as long as the day gives.
/// \return wrongUse for a stay out of 5 minutes to 12 hours.
[[nodiscard]] base::Result<water::Water> setStayAt(const water::Water& water, geo::LonLat place,
                                                   std::optional<std::chrono::seconds> length);

} // namespace acts
