// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/edits/add_survey_day.h"
#include "app/edits/change_settings.h"
#include "app/edits/set_shoreline.h"
#include "app/open_water/open_water.h"
#include "tests/support/bowl.h"

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
    return edits::addSurveyDay(open, bowlDay()) && edits::setShoreline(open, bowlShore()) &&
           edits::changeSettings(
               open, "Set cell",
               [](water::Settings& settings) { settings.cell = units::Length::metres(6.0); }) &&
           derive(open);
}

} // namespace support
