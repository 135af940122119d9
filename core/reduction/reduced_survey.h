// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/water_frame.h"
#include "core/geo/water_point.h"
#include "core/soundings/survey_day.h"
#include "core/soundings/verdict.h"

#include <map>
#include <string>
#include <vector>

namespace reduction {

/// One survey day reduced to chart level; each vector has one entry for each of its soundings.
struct ReducedDay {
    std::vector<geo::WaterPoint> points; ///< In the water's frame.
    std::vector<double> depth_m;         ///< Reduced, positive down.
    std::vector<soundings::Verdict> verdicts;
};

/// All survey days reduced, with what is set aside and why. Days in their order.
struct ReducedSurvey {
    std::vector<ReducedDay> days;

    [[nodiscard]] std::size_t soundingCount() const;
    [[nodiscard]] std::size_t keptCount() const;
    /// How many are set aside by reason ("spike"); reasons without any are not there.
    [[nodiscard]] std::map<std::string, std::size_t> setAsideCounts() const;
};

/// The kept soundings of all days for drawing, day by day in track order. A pass ends where the
/// track breaks; soundings set aside do not break it.
[[nodiscard]] std::vector<soundings::KeptSounding>
keptSoundings(const std::vector<soundings::SurveyDay>& days, const ReducedSurvey& survey);

} // namespace reduction
