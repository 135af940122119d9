// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/tools/note_tool.h"

namespace chart {

std::optional<Made> NoteTool::press(geo::WaterPoint at) {
    under_ = at;
    return std::nullopt;
}

std::optional<Made> NoteTool::move(geo::WaterPoint at, bool isHeld) {
    static_cast<void>(isHeld);
    under_ = at;
    return std::nullopt;
}

std::optional<Made> NoteTool::release(geo::WaterPoint at) {
    return PointMade{at};
}

void NoteTool::paint(QPainter& painter, const ViewFrame& view, const Palette& palette) const {
    if (!under_) {
        return;
    }
    const QPointF at = view.toScreen(*under_);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(palette.card, 4.0));
    painter.drawEllipse(at, 7.0, 7.0);
    painter.setPen(QPen(palette.rust, 1.8));
    painter.drawEllipse(at, 7.0, 7.0);
}

} // namespace chart
