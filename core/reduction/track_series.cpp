// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reduction/track_series.h"

#include "core/reduction/robust.h"

#include <cmath>

namespace reduction {

double TrackSeries::step_m() const {
    constexpr double least_m = 0.1;
    std::vector<double> steps_m;
    for (std::size_t i = 1; i < size(); ++i) {
        steps_m.push_back(along_m[i] - along_m[i - 1]);
    }
    return steps_m.empty() ? least_m : std::fmax(least_m, medianOf(std::move(steps_m)));
}

std::vector<TrackSeries> seriesOf(const soundings::SurveyDay& day, const ReducedDay& reduced) {
    std::vector<TrackSeries> all;
    auto nextStart = day.passStarts.begin();
    bool begins = true;
    for (std::size_t i = 0; i < reduced.verdicts.size(); ++i) {
        while (nextStart != day.passStarts.end() && *nextStart <= i) {
            begins = true;
            ++nextStart;
        }
        if (reduced.verdicts[i] != soundings::Verdict::kept) {
            continue;
        }
        if (begins) {
            all.emplace_back();
            begins = false;
        }
        TrackSeries& series = all.back();
        const double step_m =
            series.size() == 0
                ? 0.0
                : geo::distance_m(reduced.points[series.index.back()], reduced.points[i]);
        series.along_m.push_back(series.size() == 0 ? 0.0 : series.along_m.back() + step_m);
        series.index.push_back(i);
        series.shown_m.push_back(day.soundings[i].shown.inMetres());
    }
    return all;
}

} // namespace reduction
