// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/side_view/side_frame.h"

#include <algorithm>
#include <cmath>

namespace side_view {

SideFrame SideFrame::showing(const QRectF& box, double length_m, double deepest_m,
                             double least_air_m) {
    SideFrame frame;
    frame.box = box;
    frame.from_m = 0.0;
    frame.to_m = std::max(length_m, 1.0);
    // Air for the boat and the letters over it, ground for the letters under the bottom.
    const double water_m = std::max(deepest_m, 1.0);
    const double most = box.height() / (1.55 * water_m) / frame.pixelsPerMetreAlong();
    // A round exaggeration reads better than 2.37.
    const double round = most >= 10.0  ? std::floor(most / 5.0) * 5.0
                         : most >= 2.0 ? std::floor(most)
                         : most >= 1.0 ? std::floor(most * 2.0) / 2.0
                                       : most;
    const double whole_m = box.height() / (frame.pixelsPerMetreAlong() * round);
    frame.air_m = std::max(least_air_m, 0.20 * whole_m);
    frame.deepest_m = std::max(whole_m - frame.air_m, 1.1 * water_m);
    return frame;
}

} // namespace side_view
