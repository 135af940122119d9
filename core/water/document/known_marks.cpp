// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/document/known_marks.h"

#include "core/geo/water_frame.h"

#include <algorithm>

namespace water {

bool isOneMark(geo::LonLat a, geo::LonLat b) {
    return geo::courseBetween(a, b).distance.inMetres() < 1.0;
}

std::optional<std::size_t> turnOf(const DayByHand& hand, geo::LonLat place) {
    const auto found = std::ranges::find_if(
        hand.order, [place](geo::LonLat other) { return isOneMark(place, other); });
    return found == hand.order.end()
               ? std::nullopt
               : std::optional(static_cast<std::size_t>(found - hand.order.begin()));
}

bool isOrderOf(const DayByHand& hand, const std::vector<marks::Mark>& marks) {
    std::vector<bool> isTaken(hand.order.size(), false);
    for (const marks::Mark& mark : marks) {
        const auto turn = turnOf(hand, mark.lonLat);
        if (!turn || isTaken[*turn]) {
            return false;
        }
        isTaken[*turn] = true;
    }
    return !marks.empty() && hand.order.size() == marks.size();
}

std::optional<std::chrono::seconds> stayWantedAt(const DayByHand& hand, geo::LonLat place) {
    const auto found = std::ranges::find_if(
        hand.stays, [place](const DayByHand::Stay& stay) { return isOneMark(stay.place, place); });
    return found == hand.stays.end() ? std::nullopt : std::optional(found->length);
}

} // namespace water
