// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/tools/polygon_tool.h"

#include "app/chart/water_path.h"

namespace chart {

namespace {

constexpr double sameCorner_m = 1.0; // the second click of a double click lands on the first

} // namespace

std::optional<Made> PolygonTool::press(geo::WaterPoint at) {
    if (ring_.empty() || geo::distance_m(ring_.back(), at) > sameCorner_m) {
        if (ring_.size() >= 3 && geo::distance_m(ring_.front(), at) <= sameCorner_m) {
            return finish();
        }
        ring_.push_back(at);
    }
    under_ = at;
    return std::nullopt;
}

std::optional<Made> PolygonTool::move(geo::WaterPoint at, bool isHeld) {
    static_cast<void>(isHeld);
    under_ = at;
    return std::nullopt;
}

std::optional<Made> PolygonTool::release(geo::WaterPoint at) {
    under_ = at;
    return std::nullopt;
}

std::optional<Made> PolygonTool::finish() {
    if (ring_.size() < 3) {
        return std::nullopt;
    }
    return RingMade{std::exchange(ring_, {})};
}

bool PolygonTool::drop() {
    return !std::exchange(ring_, {}).empty();
}

bool PolygonTool::stepBack() {
    if (ring_.empty()) {
        return false;
    }
    ring_.pop_back();
    return true;
}

void PolygonTool::paint(QPainter& painter, const ViewFrame& view, const Palette& palette) const {
    if (ring_.empty()) {
        return;
    }
    geo::Path line = ring_;
    line.push_back(under_);
    const QPolygonF way = screenLine(line, view, 0.0);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(palette.card, 4.0));
    painter.drawPolyline(way);
    painter.setPen(QPen(palette.rust, 1.8));
    painter.drawPolyline(way);
    painter.setPen(QPen(withAlpha(palette.rust, 0.7), 1.0, Qt::DashLine));
    painter.drawLine(way.last(), way.first());
    painter.setPen(QPen(palette.rust, 1.6));
    painter.setBrush(palette.card);
    for (const geo::WaterPoint corner : ring_) {
        painter.drawEllipse(view.toScreen(corner), 3.5, 3.5);
    }
}

} // namespace chart
