// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/geo/outline.h"
#include "core/surface/drawn_water.h"
#include "core/surface/survey_line.h"
#include "core/units/speed.h"

#include <chrono>
#include <string>
#include <vector>

namespace surface {

/// The trip that may be made.
struct LineSettings {
    /// Where the boat starts and ends; taken to the nearest cell of water.
    geo::WaterPoint launch;
    /// Time on the water, 5 minutes to 24 hours. 2 hours: a morning before the fishing.
    std::chrono::minutes time{120};
    /// Speed while sounding and between lines, 0.2 to 5 m/s. 1.5 m/s: slow enough for a clean echo.
    units::Speed speed = units::Speed::metresPerSecond(1.5);
    /// Shortest line worth proposing, 10 to 5000 m. 60 m: below it the turns cost more than the
    /// line gives.
    units::Length shortest = units::Length::metres(60.0);
    /// Lines at most, 1 to 100. 20: what two hours give room for where lines have a sensible
    /// length; more is a survey of its own.
    int mostLines = 20;
    /// How far a line stays off the shore, 0 to 200 m. 5 m: the boat's draught and its turning.
    units::Length offShore = units::Length::metres(5.0);
};

/// One sentence for each setting out of its range; none where all is well.
[[nodiscard]] std::vector<std::string> problemsIn(const LineSettings& settings);

/// Where to sound next: straight lines inside the water, chosen one after the other so that each
/// lowers the summed trust half-width most for each metre of boat travel, put in order as one trip
/// over water from the launch and back within the time given. Lines keep to cells of `drawn` that
/// hold a depth: water that is not to be sounded is left out by clearing them.
/// \param worth how much each cell counts, 0 up, on the frame of the depths; of no cells: all count
/// alike. The means of the trip are weighed by it too.
/// \return wrongUse for settings out of range; unusableInput where the launch lies farther than
/// 200 m from the water, or no line fits into the water and the time; cancelled.
[[nodiscard]] base::Result<SurveyTrip>
proposeLines(const DrawnWater& drawn, const geo::Outline& outline, const grid::Grid<float>& worth,
             const LineSettings& settings, base::Progress& progress);

} // namespace surface
