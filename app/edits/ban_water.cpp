// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/ban_water.h"

#include "app/edits/change_water.h"
#include "app/wording/tongue.h"
#include "core/acts/bans.h"

namespace edits {

void banWater(open_water::OpenWater& open, const water::BannedWater& banned) {
    act(open, wording::Tongue::tr("Ban water"),
        [&](const water::Water& water) { return acts::banWater(water, banned); });
}

void banRound(open_water::OpenWater& open, geo::LonLat place, units::Length radius,
              const std::string& name) {
    act(open, wording::Tongue::tr("Ban mark"),
        [&](const water::Water& water) { return acts::banRound(water, place, radius, name); });
}

void liftBan(open_water::OpenWater& open, std::size_t which) {
    act(open, wording::Tongue::tr("Lift ban"),
        [&](const water::Water& water) { return acts::liftBan(water, which); });
}

void nameBan(open_water::OpenWater& open, std::size_t which, const std::string& name) {
    act(open, wording::Tongue::tr("Name banned water"),
        [&](const water::Water& water) { return acts::nameBan(water, which, name); });
}

} // namespace edits
