// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"
#include "app/preferences/preferences.h"

namespace days {

class ChartLink;

/// What each of the three days works on; owned by the main window, outlives them.
struct DayContext {
    open_water::OpenWater& open;
    preferences::Preferences& preferences;
    ChartLink& chart;
};

} // namespace days
