// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/lon_lat.h"

#include <chrono>
#include <vector>

namespace water {

/// What the user himself laid down of the day. Marks are known by their places: ranks change with
/// every slider.
struct DayByHand {
    /// How long he wants to stay on the mark at a place, without the time at the ropes.
    struct Stay {
        geo::LonLat place;
        std::chrono::seconds length{}; ///< 5 minutes to 12 hours.
        friend bool operator==(const Stay&, const Stay&) = default;
    };
    /// The places of the marks as the boat is to go; holds while the marks are just these. Empty:
    /// the program's order.
    std::vector<geo::LonLat> order;
    std::vector<Stay> stays; ///< At most one for a place.
    friend bool operator==(const DayByHand&, const DayByHand&) = default;
};

} // namespace water
