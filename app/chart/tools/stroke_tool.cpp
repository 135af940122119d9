// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/tools/stroke_tool.h"

#include "app/chart/water_path.h"

namespace chart {

namespace {

constexpr double shortest_m = 3.0; // less is a slip of the hand

} // namespace

std::optional<Made> StrokeTool::press(geo::WaterPoint at) {
    line_ = {at};
    return std::nullopt;
}

std::optional<Made> StrokeTool::move(geo::WaterPoint at, bool isHeld) {
    if (!isHeld) {
        line_.clear();
    } else if (!line_.empty()) {
        line_.push_back(at);
    }
    return std::nullopt;
}

std::optional<Made> StrokeTool::release(geo::WaterPoint at) {
    geo::Path line = std::exchange(line_, {});
    if (line.empty()) {
        return std::nullopt;
    }
    line.push_back(at);
    if (geo::lengthOf(line).inMetres() < shortest_m) {
        return std::nullopt;
    }
    return StrokeMade{std::move(line)};
}

bool StrokeTool::drop() {
    return !std::exchange(line_, {}).empty();
}

void StrokeTool::paint(QPainter& painter, const ViewFrame& view, const Palette& palette) const {
    if (line_.size() < 2) {
        return;
    }
    const QPolygonF way = screenLine(line_, view, 1.0);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(palette.card, 4.0));
    painter.drawPolyline(way);
    painter.setPen(QPen(palette.rust, 1.8));
    painter.drawPolyline(way);
}

} // namespace chart
