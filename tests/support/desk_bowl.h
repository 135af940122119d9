// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/edits/add_survey_day.h"
#include "app/edits/change_settings.h"
#include "app/edits/set_shoreline.h"
#include "app/open_water/open_water.h"

#include <cmath>

namespace support {

/// Makes again what no longer holds, and waits for it. \return whether all of it holds.
inline bool derive(open_water::OpenWater& open) {
    open.deriveUpTo(water::Step::sections);
    open.jobs().finishAll();
    return open.isCurrent(water::Step::sections);
}

/// Lays a square bowl of 23 ha, 8 m deep in the middle, into a new water, and draws it.
/// \return whether it is drawn.
inline bool layBowl(open_water::OpenWater& open) {
    soundings::SurveyDay day;
    day.passStarts = {0};
    for (int row = 0; row < 30; ++row) {
        for (int col = 0; col < 30; ++col) {
            const double x = -1.0 + 2.0 * col / 29.0;
            const double y = -1.0 + 2.0 * row / 29.0;
            day.soundings.push_back({{3.1 + 0.0038 * x, 55.2 + 0.0019 * y},
                                     units::Depth::metres(8.0 - 4.0 * std::hypot(x, y)),
                                     {}});
        }
    }
    return edits::addSurveyDay(open, day) &&
           edits::setShoreline(
               open,
               {{{{3.096, 55.198}, {3.104, 55.198}, {3.104, 55.202}, {3.096, 55.202}}, {}}}) &&
           edits::changeSettings(
               open, "Set cell",
               [](water::Settings& settings) { settings.cell = units::Length::metres(6.0); }) &&
           derive(open);
}

} // namespace support
