// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/layers/crossings_layer.h"

#include "app/chart/crossing_dot.h"

namespace chart {

void CrossingsLayer::paint(LayerContext& on) const {
    for (const std::size_t i : crossingsShown(on.content, on.view, on.scale)) {
        const reduction::Crossing& crossing = on.content.derived.checked->crossings[i];
        drawDot(on.painter, on.view.toScreen(crossing.at), dotOf(crossing, on.scale), on.palette,
                on.scale);
    }
}

} // namespace chart
