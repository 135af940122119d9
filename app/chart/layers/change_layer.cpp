// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/layers/change_layer.h"

#include "app/chart/change_sign.h"
#include "app/chart/texture.h"

namespace chart {

namespace {

constexpr double gap = 9.0; // between signs, in pixels

} // namespace

void ChangeLayer::paint(LayerContext& on) const {
    if (!on.content.years || !on.content.derived.outline) {
        return;
    }
    const surface::BottomChange& change = on.content.years->change;
    const grid::GridFrame& frame = change.rise_m.frame();
    strew(on.view, on.content.derived.outline->box(), gap * on.scale,
          [&](geo::WaterPoint place, QPointF at, double) {
              const grid::Cell cell = frame.cellOf(place);
              if (frame.holds(cell) && change.isSure(frame.index(cell))) {
                  drawChange(on, at, static_cast<double>(change.rise_m[cell]));
              }
          });
}

} // namespace chart
