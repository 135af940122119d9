// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geo/within_ring.h"

namespace geo {

bool isWithin(const Ring& ring, WaterPoint p) {
    bool isInside = false;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const WaterPoint a = ring[i];
        const WaterPoint b = ring[(i + 1) % ring.size()];
        if ((a.y_m > p.y_m) != (b.y_m > p.y_m) &&
            p.x_m < a.x_m + (b.x_m - a.x_m) * (p.y_m - a.y_m) / (b.y_m - a.y_m)) {
            isInside = !isInside;
        }
    }
    return isInside;
}

} // namespace geo
