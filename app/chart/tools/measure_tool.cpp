// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/tools/measure_tool.h"

#include "app/chart/chart_content.h"
#include "app/chart/lettering.h"
#include "app/chart/water_path.h"
#include "app/wording/tongue.h"

namespace chart {

namespace {
constexpr double samePlace_m = 0.2; // the second click of a double click lands on the first
} // namespace

QString measuredWords(const geo::Path& way, const wording::Words& words) {
    if (way.size() < 2) {
        return {};
    }
    double whole_m = 0.0;
    for (std::size_t i = 1; i < way.size(); ++i) {
        whole_m += geo::distance_m(way[i - 1], way[i]);
    }
    const geo::WaterPoint from = way[way.size() - 2];
    const geo::WaterPoint to = way.back();
    const QString whole = words.length(units::Length::metres(whole_m));
    const QString towards = wording::Words::bearing(geo::bearing(from, to));
    return way.size() == 2 ? QStringLiteral("%1 %2").arg(whole, towards)
                           : wording::Tongue::tr("%1, last leg %2 %3")
                                 .arg(whole, words.length(geo::distance(from, to)), towards);
}

void MeasureTool::takeContent(const ChartContent& content) {
    words_ = content.words;
    scale_ = content.typeScale;
}

std::optional<Made> MeasureTool::press(geo::WaterPoint at) {
    if (isFinished_) {
        way_.clear();
        isFinished_ = false;
    }
    if (way_.empty() || geo::distance_m(way_.back(), at) > samePlace_m) {
        way_.push_back(at);
    }
    under_ = at;
    return std::nullopt;
}

std::optional<Made> MeasureTool::move(geo::WaterPoint at, bool isHeld) {
    static_cast<void>(isHeld);
    under_ = at;
    return std::nullopt;
}

std::optional<Made> MeasureTool::release(geo::WaterPoint at) {
    under_ = at;
    return std::nullopt;
}

std::optional<Made> MeasureTool::finish() {
    isFinished_ = way_.size() >= 2;
    return std::nullopt;
}

bool MeasureTool::drop() {
    isFinished_ = false;
    return !std::exchange(way_, {}).empty();
}

bool MeasureTool::stepBack() {
    isFinished_ = false;
    if (way_.empty()) {
        return false;
    }
    way_.pop_back();
    return true;
}

void MeasureTool::paint(QPainter& painter, const ViewFrame& view, const Palette& palette) const {
    if (way_.empty()) {
        return;
    }
    geo::Path line = way_;
    if (!isFinished_) {
        line.push_back(under_);
    }
    const QPolygonF way = screenLine(line, view, 0.0);
    painter.setBrush(Qt::NoBrush);
    for (const QPen& pen : {QPen(palette.card, 4.0 * scale_), QPen(palette.ink, 1.8 * scale_)}) {
        painter.setPen(pen);
        painter.drawPolyline(way);
    }
    painter.setPen(QPen(palette.ink, 1.6 * scale_));
    painter.setBrush(palette.card);
    for (const geo::WaterPoint place : way_) {
        painter.drawEllipse(view.toScreen(place), 3.5 * scale_, 3.5 * scale_);
    }
    const QString text = measuredWords(line, words_);
    if (text.isEmpty()) {
        return;
    }
    const QFont font = typeface(TypeSize::normal, scale_, TypeStyle::bold);
    QRectF box = boxOf(font, text, way.last() + QPointF(0.0, -18.0 * scale_));
    // Beside the pointer, and on the page.
    box.moveLeft(std::clamp(box.left(), 4.0, std::max(4.0, view.size().width() - box.width() - 4)));
    box.moveTop(std::max(box.top(), 4.0));
    drawText(painter, font, box.center(), text, {palette.ink, palette.card}, 3.0 * scale_);
}

} // namespace chart
