// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/add_survey_day.h"

#include "app/edits/change_water.h"
#include "core/acts/survey_days.h"

namespace edits {

base::Result<void> addSurveyDay(open_water::OpenWater& open, soundings::SurveyDay day) {
    return tryAct(open, QObject::tr("Bring in %1").arg(QString::fromStdString(day.name)),
                  [&](const water::Water& water) { return acts::addSurveyDay(water, day); });
}

} // namespace edits
