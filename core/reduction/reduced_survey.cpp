// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reduction/reduced_survey.h"

#include <algorithm>
#include <chrono>
#include <limits>

namespace reduction {

namespace {

double secondsOf(const soundings::Sounding& sounding) {
    return sounding.time ? std::chrono::duration<double>(sounding.time->time_since_epoch()).count()
                         : std::numeric_limits<double>::quiet_NaN();
}

} // namespace

std::size_t ReducedSurvey::soundingCount() const {
    std::size_t count = 0;
    for (const ReducedDay& day : days) {
        count += day.verdicts.size();
    }
    return count;
}

std::size_t ReducedSurvey::keptCount() const {
    std::size_t count = 0;
    for (const ReducedDay& day : days) {
        count +=
            static_cast<std::size_t>(std::ranges::count(day.verdicts, soundings::Verdict::kept));
    }
    return count;
}

std::map<std::string, std::size_t> ReducedSurvey::setAsideCounts() const {
    std::map<std::string, std::size_t> counts;
    for (const ReducedDay& day : days) {
        for (const soundings::Verdict verdict : day.verdicts) {
            if (verdict != soundings::Verdict::kept) {
                ++counts[std::string(nameOf(verdict))];
            }
        }
    }
    return counts;
}

std::vector<soundings::KeptSounding> keptSoundings(const std::vector<soundings::SurveyDay>& days,
                                                   const ReducedSurvey& survey) {
    std::vector<soundings::KeptSounding> kept;
    kept.reserve(survey.keptCount());
    int pass = -1;
    for (std::size_t d = 0; d < survey.days.size(); ++d) {
        const ReducedDay& day = survey.days[d];
        auto nextStart = days[d].passStarts.begin();
        ++pass;
        for (std::size_t i = 0; i < day.verdicts.size(); ++i) {
            while (nextStart != days[d].passStarts.end() && *nextStart <= i) {
                pass += *nextStart > 0 ? 1 : 0;
                ++nextStart;
            }
            if (day.verdicts[i] == soundings::Verdict::kept) {
                const soundings::Sounding& from = days[d].soundings[i];
                kept.push_back({from.place, day.points[i].x_m, day.points[i].y_m, day.depth_m[i],
                                static_cast<int>(d), pass, secondsOf(from)});
            }
        }
    }
    return kept;
}

} // namespace reduction
