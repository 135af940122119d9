// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/lay_by_hand.h"

#include "app/edits/change_water.h"
#include "app/wording/tongue.h"
#include "core/acts/plan.h"

namespace edits {

void layByHand(open_water::OpenWater& open, const QString& name, geo::LonLat from,
               const water::PinnedMark& mark) {
    act(open, name, [&](const water::Water& water) { return acts::layByHand(water, from, mark); });
}

void freeLie(open_water::OpenWater& open, geo::LonLat place) {
    act(open, wording::Tongue::tr("Give anchors and baits back"),
        [&](const water::Water& water) { return acts::freeLie(water, place); });
}

} // namespace edits
