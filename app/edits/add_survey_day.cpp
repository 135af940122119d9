// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/add_survey_day.h"

#include "app/edits/change_water.h"

namespace edits {

base::Result<void> addSurveyDay(open_water::OpenWater& open, soundings::SurveyDay day) {
    water::Water trial;
    trial.frame = open.water()->frame;
    trial.shoreline = open.water()->shoreline;
    trial.days = {day};
    if (auto laid = water::layFrame(trial); !laid) {
        return laid;
    }
    day.id = soundings::SurveyDayId(water::freshId(*open.water()));
    std::vector<water::Part> parts{water::Part::days};
    if (!open.water()->frame) {
        parts.push_back(water::Part::facts);
    }
    const QString name = QObject::tr("Bring in %1").arg(QString::fromStdString(day.name));
    change(open, name, parts, [&](water::Water& water) {
        water.days.push_back(day);
        water.frame = trial.frame;
    });
    return {};
}

} // namespace edits
