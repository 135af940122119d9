// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/tools/lasso_tool.h"

#include "app/chart/water_path.h"

namespace chart {

std::optional<Made> LassoTool::press(geo::WaterPoint at) {
    ring_ = {at};
    return std::nullopt;
}

std::optional<Made> LassoTool::move(geo::WaterPoint at, bool isHeld) {
    if (isHeld && !ring_.empty()) {
        ring_.push_back(at);
    }
    return std::nullopt;
}

std::optional<Made> LassoTool::release(geo::WaterPoint at) {
    geo::Ring ring = std::exchange(ring_, {});
    static_cast<void>(at);
    if (ring.size() < 3) {
        return std::nullopt;
    }
    return RingMade{std::move(ring)};
}

bool LassoTool::drop() {
    return !std::exchange(ring_, {}).empty();
}

void LassoTool::paint(QPainter& painter, const ViewFrame& view, const Palette& palette) const {
    if (ring_.size() < 2) {
        return;
    }
    const QPolygonF way = screenLine(ring_, view, 1.0);
    painter.setBrush(withAlpha(palette.rust, 0.12));
    painter.setPen(QPen(palette.rust, 1.6, Qt::DashLine));
    painter.drawPolygon(way);
}

} // namespace chart
