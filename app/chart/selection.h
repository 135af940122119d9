// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/sounding_pick.h"
#include "core/logbook/stay.h"

#include <cstddef>
#include <optional>

namespace chart {

/// What of the water is chosen to be looked at: one value for chart, side view and the lists of all
/// days. Numbers mean something only together with the map, plan and crossings that they count.
struct Selection {
    std::optional<int> mark; ///< Rank.
    /// Of that mark's rods, by position; nothing: the lie as a whole. Never without a mark.
    std::optional<std::size_t> rod;
    std::optional<int> section;
    std::optional<int> zone; ///< Structure zones first, then weed zones.
    std::optional<logbook::StayId> stay;
    std::optional<SoundingPick> sounding;
    std::optional<std::size_t> crossing; ///< Position among all. Never beside a sounding.
    friend bool operator==(const Selection&, const Selection&) = default;
};

} // namespace chart
