// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/remove_survey_day.h"

#include "app/edits/change_water.h"

namespace edits {

void removeSurveyDay(open_water::OpenWater& open, soundings::SurveyDayId id) {
    change(open, QObject::tr("Remove survey day"), {water::Part::days}, [id](water::Water& water) {
        std::erase_if(water.days, [id](const auto& day) { return day.id == id; });
    });
}

} // namespace edits
