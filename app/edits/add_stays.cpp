// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/add_stays.h"

#include "app/edits/change_water.h"
#include "core/acts/stays.h"

namespace edits {

logbook::StayId addStays(open_water::OpenWater& open, const QString& name, logbook::Log stays) {
    const logbook::StayId first(water::freshId(*open.water()));
    const auto before = open.water();
    act(open, name,
        [&](const water::Water& water) { return acts::addStays(water, std::move(stays)); });
    return open.water() == before ? logbook::StayId() : first;
}

} // namespace edits
