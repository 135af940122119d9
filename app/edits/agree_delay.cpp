// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/agree_delay.h"

#include "app/edits/change_water.h"
#include "app/wording/tongue.h"
#include "core/acts/survey_days.h"

namespace edits {

void agreeDelay(open_water::OpenWater& open, soundings::SurveyDayId id,
                std::optional<double> delay_s) {
    act(open,
        delay_s ? wording::Tongue::tr("Take out delay") : wording::Tongue::tr("Take back delay"),
        [&](const water::Water& water) { return acts::agreeDelay(water, id, delay_s); });
}

} // namespace edits
