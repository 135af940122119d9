// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/set_aside_soundings.h"

#include "app/edits/change_water.h"
#include "app/wording/tongue.h"
#include "core/acts/verdicts.h"

namespace edits {

void setAsideSoundings(open_water::OpenWater& open, const water::SoundingChoice& choice) {
    act(open, wording::Tongue::tr("Set soundings aside"),
        [&](const water::Water& water) { return acts::setAsideSoundings(water, choice); });
}

} // namespace edits
