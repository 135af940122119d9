// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reduction/reduction_terms.h"

#include "core/reduction/correct_level.h"
#include "core/reduction/correct_sound_speed.h"

namespace reduction {

std::optional<units::WaterLevel> chartLevelOf(const std::vector<soundings::SurveyDay>& days,
                                              const ReductionSettings& settings) {
    if (settings.chartLevel) {
        return settings.chartLevel;
    }
    for (const soundings::SurveyDay& day : days) {
        if (const auto level = day.gauge.levelAt(std::nullopt)) {
            return level;
        }
    }
    return std::nullopt;
}

ReductionTerms termsOf(const std::vector<soundings::SurveyDay>& days, std::size_t dayPosition,
                       std::size_t sounding, const ReductionSettings& settings) {
    const soundings::SurveyDay& day = days[dayPosition];
    const soundings::Sounding& one = day.soundings[sounding];
    ReductionTerms terms;
    terms.shown = one.shown;
    terms.soundSpeed =
        one.shown.asLength() * (soundSpeedFactor(day.sounder, day.waterTemperature) - 1.0);
    terms.draft = day.sounder.draft.asLength();
    terms.level = levelCorrection(day.gauge, one.time, chartLevelOf(days, settings));
    if (dayPosition < settings.dayOffsets.size()) {
        terms.dayOffset = settings.dayOffsets[dayPosition];
    }
    terms.reduced = terms.shown + units::Depth::fromLength(terms.soundSpeed + terms.draft +
                                                           terms.level + terms.dayOffset);
    return terms;
}

} // namespace reduction
