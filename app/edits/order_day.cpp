// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/order_day.h"

#include "app/edits/change_water.h"
#include "app/wording/tongue.h"
#include "core/acts/day_by_hand.h"

namespace edits {

void orderDay(open_water::OpenWater& open, const std::vector<geo::LonLat>& order) {
    act(open, wording::Tongue::tr("Order the day"),
        [&](const water::Water& water) { return acts::orderDay(water, order); });
}

void freeOrder(open_water::OpenWater& open) {
    act(open, wording::Tongue::tr("Give the order back"),
        [&](const water::Water& water) { return acts::freeOrder(water); });
}

void setStayAt(open_water::OpenWater& open, geo::LonLat place,
               std::optional<std::chrono::seconds> length) {
    act(open, wording::Tongue::tr("Set stay"),
        [&](const water::Water& water) { return acts::setStayAt(water, place, length); });
}

} // namespace edits
