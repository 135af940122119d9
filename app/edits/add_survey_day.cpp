// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/add_survey_day.h"

#include "app/edits/change_water.h"
#include "app/wording/tongue.h"
#include "core/acts/survey_days.h"

namespace edits {

base::Result<void> addSurveyDay(open_water::OpenWater& open, soundings::SurveyDay day) {
    return addSurveyDays(open, {std::move(day)});
}

base::Result<void> addSurveyDays(open_water::OpenWater& open,
                                 const std::vector<soundings::SurveyDay>& days) {
    const QString name = QString::fromStdString(days.front().name);
    return tryAct(open, wording::Tongue::tr("Bring in %1").arg(name),
                  [&](const water::Water& water) {
                      base::Result<water::Water> after = water;
                      for (const soundings::SurveyDay& day : days) {
                          after = after ? acts::addSurveyDay(*after, day) : after;
                      }
                      return after;
                  });
}

} // namespace edits
