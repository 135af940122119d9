// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/tools/cut_line_tool.h"

namespace chart {

namespace {

constexpr double shortest_m = 3.0; // less is a slip of the hand

} // namespace

std::optional<Made> CutLineTool::press(geo::WaterPoint at) {
    from_ = at;
    to_ = at;
    return std::nullopt;
}

std::optional<Made> CutLineTool::move(geo::WaterPoint at, bool isHeld) {
    if (!isHeld) {
        from_.reset();
    }
    to_ = at;
    return std::nullopt;
}

std::optional<Made> CutLineTool::release(geo::WaterPoint at) {
    const auto from = std::exchange(from_, std::nullopt);
    if (!from || geo::distance_m(*from, at) < shortest_m) {
        return std::nullopt;
    }
    return LineMade{*from, at};
}

bool CutLineTool::drop() {
    return std::exchange(from_, std::nullopt).has_value();
}

void CutLineTool::paint(QPainter& painter, const ViewFrame& view, const Palette& palette) const {
    if (!from_) {
        return;
    }
    const QPointF a = view.toScreen(*from_);
    const QPointF b = view.toScreen(to_);
    painter.setPen(QPen(palette.card, 4.0));
    painter.drawLine(a, b);
    painter.setPen(QPen(palette.ink, 1.6, Qt::DashLine));
    painter.drawLine(a, b);
    painter.setBrush(palette.card);
    painter.setPen(QPen(palette.ink, 1.6));
    painter.drawEllipse(a, 4.0, 4.0);
    painter.drawEllipse(b, 4.0, 4.0);
}

void paintCut(QPainter& painter, const ViewFrame& view, const LineMade& cut,
              const Palette& palette) {
    const QPointF a = view.toScreen(cut.from);
    const QPointF b = view.toScreen(cut.to);
    painter.setPen(QPen(withAlpha(palette.card, 0.8), 3.6));
    painter.drawLine(a, b);
    painter.setPen(QPen(palette.ink, 1.2, Qt::DashDotLine));
    painter.drawLine(a, b);
}

} // namespace chart
