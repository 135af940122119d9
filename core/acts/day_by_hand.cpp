// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acts/day_by_hand.h"

#include "core/water/document/known_marks.h"

#include <algorithm>

namespace acts {

using base::ErrorKind;
using base::Result;
using water::DayByHand;
using water::Water;

Result<Water> orderDay(const Water& water, const std::vector<geo::LonLat>& order) {
    for (std::size_t i = 0; i < order.size(); ++i) {
        for (std::size_t j = 0; j < i; ++j) {
            if (water::isOneMark(order[i], order[j])) {
                return base::fail(ErrorKind::wrongUse, "a mark stands twice in the order",
                                  "the day", "give each mark once");
            }
        }
    }
    if (order.empty()) {
        return base::fail(ErrorKind::wrongUse, "an order of no marks is none", "the day",
                          "find marks first");
    }
    Water after = water;
    after.dayByHand.order = order;
    return after;
}

Result<Water> freeOrder(const Water& water) {
    if (water.dayByHand.order.empty()) {
        return base::fail(ErrorKind::wrongUse, "the order is the program's already", "the day",
                          "nothing needs to be done");
    }
    Water after = water;
    after.dayByHand.order.clear();
    return after;
}

Result<Water> setStayAt(const Water& water, geo::LonLat place,
                        std::optional<std::chrono::seconds> length) {
    if (length && (*length < std::chrono::minutes(5) || *length > std::chrono::hours(12))) {
        return base::fail(ErrorKind::wrongUse, "the stay is out of its range", "the day",
                          "choose 5 minutes to 12 hours");
    }
    Water after = water;
    auto& stays = after.dayByHand.stays;
    const auto known = std::ranges::find_if(stays, [place](const DayByHand::Stay& stay) {
        return water::isOneMark(stay.place, place);
    });
    if (length && known != stays.end()) {
        known->length = *length;
    } else if (length) {
        stays.push_back({place, *length});
    } else if (known != stays.end()) {
        stays.erase(known);
    }
    return after;
}

} // namespace acts
