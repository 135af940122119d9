// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/agree_offset.h"

#include "app/edits/change_water.h"
#include "app/wording/tongue.h"
#include "core/acts/survey_days.h"

namespace edits {

void agreeOffset(open_water::OpenWater& open, soundings::SurveyDayId id,
                 std::optional<units::Length> offset) {
    act(open,
        offset ? wording::Tongue::tr("Tie survey day") : wording::Tongue::tr("Untie survey day"),
        [&](const water::Water& water) { return acts::agreeOffset(water, id, offset); });
}

} // namespace edits
