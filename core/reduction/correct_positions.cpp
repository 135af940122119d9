// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reduction/correct_positions.h"

#include "core/reduction/track_series.h"

#include <algorithm>
#include <chrono>

namespace reduction {

namespace {

double secondsBetween(units::Moment from, units::Moment to) {
    return std::chrono::duration<double>(to - from).count();
}

/// Kept soundings with times that follow one another without a gap.
using Run = std::vector<std::size_t>;

std::vector<Run> runsOf(const soundings::SurveyDay& day, const ReducedDay& reduced) {
    constexpr double longestGap_s = 10.0;
    std::vector<Run> runs;
    for (const TrackSeries& series : seriesOf(day, reduced)) {
        runs.emplace_back();
        for (const std::size_t i : series.index) {
            const auto& time = day.soundings[i].time;
            if (!time) {
                continue;
            }
            Run& run = runs.back();
            const double step_s =
                run.empty() ? 1.0 : secondsBetween(*day.soundings[run.back()].time, *time);
            if (!(step_s > 0.0 && step_s <= longestGap_s)) {
                runs.emplace_back();
            }
            runs.back().push_back(i);
        }
    }
    return runs;
}

void moveAlong(const soundings::SurveyDay& day, const Run& run, double delay_s,
               ReducedDay& reduced) {
    if (run.size() < 2) {
        return;
    }
    std::vector<double> times_s;
    std::vector<geo::WaterPoint> points;
    for (const std::size_t i : run) {
        times_s.push_back(secondsBetween(*day.soundings[run.front()].time, *day.soundings[i].time));
        points.push_back(reduced.points[i]);
    }
    for (std::size_t k = 0; k < run.size(); ++k) {
        const double at_s = times_s[k] + delay_s;
        const auto after = std::ranges::lower_bound(times_s, at_s) - times_s.begin();
        const std::size_t b =
            std::clamp<std::size_t>(static_cast<std::size_t>(after), 1, run.size() - 1);
        const double share = (at_s - times_s[b - 1]) / (times_s[b] - times_s[b - 1]);
        reduced.points[run[k]] = {points[b - 1].x_m + share * (points[b].x_m - points[b - 1].x_m),
                                  points[b - 1].y_m + share * (points[b].y_m - points[b - 1].y_m)};
    }
}

} // namespace

ReducedSurvey correctPositions(const std::vector<soundings::SurveyDay>& days,
                               ReducedSurvey survey) {
    for (std::size_t d = 0; d < days.size(); ++d) {
        const double delay_s = days[d].agreedDelay_s.value_or(0.0);
        if (delay_s == 0.0) {
            continue;
        }
        for (const Run& run : runsOf(days[d], survey.days[d])) {
            moveAlong(days[d], run, delay_s, survey.days[d]);
        }
    }
    return survey;
}

} // namespace reduction
