// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/marks/mark.h"
#include "core/water/document/day_by_hand.h"

#include <cstddef>
#include <optional>

namespace water {

/// Whether two places are those of one mark: within 1 m (our choice, no source), for a plan made
/// anew rounds.
[[nodiscard]] bool isOneMark(geo::LonLat a, geo::LonLat b);

/// Where a place stands in the order by hand; nothing where it has none or is not in it.
[[nodiscard]] std::optional<std::size_t> turnOf(const DayByHand& hand, geo::LonLat place);

/// Whether there is an order by hand and it is of just these marks, so that it holds.
[[nodiscard]] bool isOrderOf(const DayByHand& hand, const std::vector<marks::Mark>& marks);

/// How long the user wants to stay on the mark at a place; nothing: as long as the day gives.
[[nodiscard]] std::optional<std::chrono::seconds> stayWantedAt(const DayByHand& hand,
                                                               geo::LonLat place);

} // namespace water
