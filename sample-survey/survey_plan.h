// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sample-survey/bottom.h"
#include "sample-survey/waterway.h"

#include <vector>

namespace sample {

/// A round piece of the water in which the later survey days run no lines.
struct ThinArea {
    Point middle;
    double radius_m = 0.0;
};

const std::vector<ThinArea>& thinAreas();

/// Where the boats are kept.
Point launchPlace();

/// The ways the boat takes on the three survey days, each from the launch and back:
/// day 1: a lap along the bank, then lines north and south;
/// day 2: laps of the weedy bay and of both islands, then lines east and west;
/// day 3: slanting lines, some lines across them, a zigzag through the bay, and once more over hump
/// and bar.
Line surveyWay(const Bottom& bottom, const Waterway& waterway, int day);

} // namespace sample
