// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/verdict_now.h"

#include <algorithm>

namespace chart {

using soundings::Verdict;

Verdict verdictNow(const soundings::SurveyDay& day, const reduction::ReducedDay& judged,
                   std::size_t i) {
    if (std::ranges::binary_search(day.setAsideByHand, i)) {
        return Verdict::byHand;
    }
    // Taken back by hand, be it from a rule or from the user's own hand before.
    if (judged.verdicts[i] == Verdict::byHand || std::ranges::binary_search(day.keptByHand, i)) {
        return Verdict::kept;
    }
    return judged.verdicts[i];
}

bool isLookedOver(const ChartContent& content) {
    if (!content.water || !content.derived.checked) {
        return false;
    }
    return std::ranges::equal(
        content.water->days, content.derived.checked->survey.days,
        [](const soundings::SurveyDay& day, const reduction::ReducedDay& judged) {
            return day.soundings.size() == judged.points.size();
        });
}

std::vector<Verdict> verdictsNow(const ChartContent& content, std::size_t day) {
    const reduction::ReducedDay& judged = content.derived.checked->survey.days[day];
    std::vector<Verdict> verdicts = judged.verdicts;
    if (isLookedOver(content)) {
        for (std::size_t i = 0; i < verdicts.size(); ++i) {
            verdicts[i] = verdictNow(content.water->days[day], judged, i);
        }
    }
    return verdicts;
}

} // namespace chart
