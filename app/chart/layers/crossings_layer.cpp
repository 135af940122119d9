// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/layers/crossings_layer.h"

#include "app/chart/crossing_dot.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace chart {

void CrossingsLayer::paint(LayerContext& on) const {
    if (!on.content.derived.checked) {
        return;
    }
    std::vector<const reduction::Crossing*> seen;
    for (const reduction::Crossing& crossing : on.content.derived.checked->crossings) {
        if (on.view.box().holds(crossing.at)) {
            seen.push_back(&crossing);
        }
    }
    // The largest differences on top.
    std::stable_sort(seen.begin(), seen.end(),
                     [](const reduction::Crossing* a, const reduction::Crossing* b) {
                         return std::abs(a->difference_m()) < std::abs(b->difference_m());
                     });
    for (const reduction::Crossing* crossing : seen) {
        drawDot(on.painter, on.view.toScreen(crossing->at), dotOf(*crossing, on.scale), on.palette,
                on.scale);
    }
}

} // namespace chart
