// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/take_back_soundings.h"

#include "app/edits/change_water.h"
#include "app/wording/tongue.h"
#include "core/acts/verdicts.h"

namespace edits {

void takeBackSoundings(open_water::OpenWater& open, const water::SoundingChoice& choice) {
    const auto checked = open.derived().checked;
    act(open, wording::Tongue::tr("Take soundings back"), [&](const water::Water& water) {
        return acts::takeBackSoundings(water, choice,
                                       checked ? checked->survey : reduction::ReducedSurvey());
    });
}

} // namespace edits
