// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reduction/correct_depths.h"

#include <fmt/format.h>

namespace reduction {

base::Result<ReducedSurvey> correctDepths(const std::vector<soundings::SurveyDay>& days,
                                          const geo::WaterFrame& frame,
                                          const ReductionSettings& settings,
                                          base::Progress& progress) {
    if (!settings.dayOffsets.empty() && settings.dayOffsets.size() != days.size()) {
        return base::fail(
            base::ErrorKind::wrongUse,
            fmt::format("{} offsets for {} survey days", settings.dayOffsets.size(), days.size()),
            "", "tie the days again");
    }
    progress.begin("reducing the soundings");
    ReductionSettings fixed = settings; // The chart level is looked up once, not for each sounding.
    fixed.chartLevel = chartLevelOf(days, settings);
    ReducedSurvey survey;
    for (std::size_t d = 0; d < days.size(); ++d) {
        if (progress.stopAsked()) {
            return std::unexpected(base::cancelled());
        }
        const std::vector<soundings::Sounding>& given = days[d].soundings;
        std::vector<geo::LonLat> places;
        places.reserve(given.size());
        ReducedDay reduced;
        reduced.depth_m.reserve(given.size());
        for (std::size_t i = 0; i < given.size(); ++i) {
            places.push_back(given[i].place);
            reduced.depth_m.push_back(termsOf(days, d, i, fixed).reduced.inMetres());
        }
        reduced.points = frame.toWater(places);
        reduced.verdicts.assign(given.size(), soundings::Verdict::kept);
        for (const std::size_t i : days[d].setAsideByHand) {
            if (i < reduced.verdicts.size()) {
                reduced.verdicts[i] = soundings::Verdict::byHand;
            }
        }
        survey.days.push_back(std::move(reduced));
        progress.tell(static_cast<double>(d + 1) / static_cast<double>(days.size()));
    }
    return survey;
}

} // namespace reduction
