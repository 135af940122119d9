// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/set_shoreline.h"

#include "app/edits/change_water.h"
#include "app/wording/tongue.h"
#include "core/acts/shore.h"

namespace edits {

base::Result<void> setShoreline(open_water::OpenWater& open,
                                std::vector<geo::LonLatPiece> shoreline) {
    return tryAct(open, wording::Tongue::tr("Set shoreline"), [&](const water::Water& water) {
        return acts::setShoreline(water, std::move(shoreline));
    });
}

} // namespace edits
