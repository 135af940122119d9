// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/soundings_view.h"

#include "app/wording/counted_words.h"
#include "app/wording/tongue.h"

namespace days::survey_day {

namespace {

using wording::Words;

QString levelOf(const soundings::SurveyDay& day, const Words& words) {
    if (const auto level = day.gauge.constantLevel()) {
        return words.levelChange(*level - units::WaterLevel());
    }
    return day.gauge.isKnown() ? wording::Tongue::tr("table") : wording::Tongue::tr("not read");
}

} // namespace

SoundingsView soundingsViewOf(const ViewInput& input) {
    SoundingsView view;
    std::size_t all = 0;
    for (const soundings::SurveyDay& day : input.water.days) {
        all += day.soundings.size();
        view.rows.push_back(
            {QString::fromStdString(day.name), Words::count(day.soundings.size()),
             levelOf(day, input.words),
             day.waterTemperature ? input.words.temperature(*day.waterTemperature) : QString()});
    }
    const std::size_t days = input.water.days.size();
    view.state =
        days == 0
            ? wording::Tongue::tr("none yet")
            : QStringLiteral("%1, %2").arg(wording::Tongue::counted("%n days", "%n day", days),
                                           wording::soundingsCounted(static_cast<qint64>(all)));
    if (const std::size_t byHand = input.water.leadLine.size(); byHand > 0) {
        view.others = wording::Tongue::counted("and %n soundings by lead line",
                                               "and %n sounding by lead line", byHand);
    }
    return view;
}

} // namespace days::survey_day
