// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/sounding_pick.h"

namespace chart {

std::optional<SoundingPick> pickOfKept(const reduction::ReducedSurvey& survey, std::size_t kept) {
    std::size_t left = kept;
    for (std::size_t day = 0; day < survey.days.size(); ++day) {
        const auto& verdicts = survey.days[day].verdicts;
        for (std::size_t i = 0; i < verdicts.size(); ++i) {
            if (verdicts[i] == soundings::Verdict::kept && left-- == 0) {
                return SoundingPick{static_cast<int>(day), i};
            }
        }
    }
    return std::nullopt;
}

} // namespace chart
