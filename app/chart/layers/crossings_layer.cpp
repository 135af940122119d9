// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/layers/crossings_layer.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace chart {

namespace {

constexpr double fullAt_m = 0.6; // a difference that gets the full colour of its side

} // namespace

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
        const double share = crossing->difference_m() / fullAt_m;
        const double radius = (3.0 + 2.5 * std::min(std::abs(share), 1.0)) * on.scale;
        on.painter.setPen(QPen(withAlpha(on.palette.ink, 0.75), 0.9 * on.scale));
        on.painter.setBrush(on.palette.difference(share));
        on.painter.drawEllipse(on.view.toScreen(crossing->at), radius, radius);
    }
}

} // namespace chart
