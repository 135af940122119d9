// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/lon_lat.h"
#include "core/soundings/survey_day.h"

#include <cmath>
#include <vector>

namespace support {

/// The shore of a square bowl of 23 ha round 3.1 E 55.2 N.
inline std::vector<geo::LonLatPiece> bowlShore() {
    return {{{{3.096, 55.198}, {3.104, 55.198}, {3.104, 55.202}, {3.096, 55.202}}, {}}};
}

/// Its soundings: 8 m in the middle, shelving evenly to all sides.
inline soundings::SurveyDay bowlDay() {
    soundings::SurveyDay day;
    day.passStarts = {0};
    for (int row = 0; row < 30; ++row) {
        for (int col = 0; col < 30; ++col) {
            const double x = -1.0 + 2.0 * col / 29.0;
            const double y = -1.0 + 2.0 * row / 29.0;
            day.soundings.edit().push_back({{3.1 + 0.0038 * x, 55.2 + 0.0019 * y},
                                            units::Depth::metres(8.0 - 4.0 * std::hypot(x, y)),
                                            {}});
        }
    }
    return day;
}

} // namespace support
