// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/sounding_view.h"

#include "app/chart/verdict_now.h"
#include "app/wording/adding_up.h"
#include "app/wording/spoken_names.h"
#include "app/wording/tongue.h"
#include "core/water/questions/sounding_terms.h"

#include <algorithm>
#include <array>

namespace days::survey_day {

namespace {

using soundings::SurveyDay;
using wording::Words;

QString titleOf(const SurveyDay& day, const soundings::Sounding& sounding,
                const units::Clock& clock) {
    constexpr int timeFrom = 11; // of "2026-10-03T08:10:00+01:00"
    constexpr int timeLength = 8;
    const QString name = QString::fromStdString(day.name);
    if (!sounding.time) {
        return wording::Tongue::tr("%1, no time").arg(name);
    }
    return QStringLiteral("%1, %2").arg(
        name, QString::fromStdString(units::isoLocalText(*sounding.time, clock))
                  .mid(timeFrom, timeLength));
}

QString soundSpeedLabel(const SurveyDay& day, const Words& words) {
    if (!day.sounder.measuresBySound) {
        return wording::Tongue::tr("speed of sound: not by sound");
    }
    return day.waterTemperature ? wording::Tongue::tr("speed of sound at %1")
                                      .arg(words.temperature(*day.waterTemperature))
                                : wording::Tongue::tr("speed of sound: water not known");
}

QString levelLabel(const SurveyDay& day, const soundings::Sounding& sounding, const Words& words) {
    const auto level = day.gauge.levelAt(sounding.time);
    return level ? wording::Tongue::tr("water level, gauge %1")
                       .arg(words.levelChange(*level - units::WaterLevel()))
                 : wording::Tongue::tr("water level: gauge not read");
}

std::vector<QStringList> termRows(const water::Water& water, const SurveyDay& day,
                                  std::size_t dayPosition, std::size_t sounding,
                                  const Words& words) {
    const reduction::ReductionTerms terms = water::soundingTerms(water, dayPosition, sounding);
    const std::array amounts{terms.shown.asLength(), terms.soundSpeed, terms.draft, terms.level,
                             terms.dayOffset};
    const std::array labels{wording::Tongue::tr("shown by the sounder"),
                            soundSpeedLabel(day, words),
                            wording::Tongue::tr("draft of the transducer"),
                            levelLabel(day, day.soundings[sounding], words),
                            day.agreedOffset ? wording::Tongue::tr("agreed for this day")
                                             : wording::Tongue::tr("nothing agreed for this day"),
                            wording::Tongue::tr("below chart level")};
    const QStringList written = wording::sumWritten(words, amounts);
    std::vector<QStringList> rows;
    for (std::size_t i = 0; i < labels.size(); ++i) {
        const bool isSum = i + 1 == labels.size();
        rows.push_back({labels[i], (isSum ? QStringLiteral("= ") : QString()) +
                                       written[static_cast<qsizetype>(i)]});
    }
    return rows;
}

} // namespace

std::optional<SoundingView> soundingViewOf(const ViewInput& input, chart::SoundingPick pick) {
    const auto day = static_cast<std::size_t>(pick.day);
    const auto& days = input.water.days;
    if (!input.derived.checked || day >= days.size() ||
        day >= input.derived.checked->survey.days.size() ||
        pick.sounding >= days[day].soundings.size() ||
        pick.sounding >= input.derived.checked->survey.days[day].verdicts.size()) {
        return std::nullopt;
    }
    const soundings::Sounding& sounding = days[day].soundings[pick.sounding];
    SoundingView view;
    view.title = titleOf(days[day], sounding, input.water.clock);
    view.place = Words::place(sounding.place);
    view.terms = termRows(input.water, days[day], day, pick.sounding, input.words);
    view.held =
        chart::verdictNow(days[day], input.derived.checked->survey.days[day], pick.sounding);
    const bool isByHand = std::ranges::binary_search(days[day].keptByHand, pick.sounding);
    view.verdict = view.held != soundings::Verdict::kept
                       ? wording::Tongue::tr("set aside: %1").arg(wording::spoken(view.held))
                   : isByHand ? wording::Tongue::tr("kept by hand")
                              : wording::Tongue::tr("kept");
    return view;
}

} // namespace days::survey_day
