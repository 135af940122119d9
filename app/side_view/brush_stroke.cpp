// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/side_view/brush_stroke.h"

#include "app/chart/lettering.h"
#include "app/chart/palette.h"
#include "app/wording/tongue.h"

#include <algorithm>
#include <cmath>

namespace side_view {

namespace {

bool canActOn(BrushAct act, const ProfilePoint& point) {
    return (point.verdict == soundings::Verdict::kept) == (act == BrushAct::setAside);
}

double length(QPointF way) {
    return std::hypot(way.x(), way.y());
}

/// From a pixel to the piece between two others.
double apart(QPointF p, QPointF from, QPointF to) {
    const QPointF way = to - from;
    const double squared = QPointF::dotProduct(way, way);
    const double share =
        squared > 0.0 ? std::clamp(QPointF::dotProduct(p - from, way) / squared, 0.0, 1.0) : 0.0;
    return length(p - from - share * way);
}

QString hintOf(const Brush& brush) {
    const QString what = brush.act == BrushAct::setAside ? wording::Tongue::tr("set aside")
                                                         : wording::Tongue::tr("take back");
    return brush.isHeld ? QStringLiteral("%1: %2").arg(what).arg(brush.met.size())
                        : wording::Tongue::tr("brush to %1").arg(what);
}

} // namespace

void drawOn(ProfileScene& scene, const QRectF& box, QPointF to) {
    if (!scene.brush) {
        return;
    }
    Brush& brush = *scene.brush;
    const QPointF from = brush.at.value_or(to);
    brush.at = to;
    const SideFrame frame = frameOf(scene, box);
    const auto& points = scene.profile.points;
    const double first_m = frame.alongAt(std::min(from.x(), to.x()) - brushRadius);
    const double last_m = frame.alongAt(std::max(from.x(), to.x()) + brushRadius);
    auto point = std::ranges::lower_bound(points, first_m, {}, &ProfilePoint::along_m);
    for (; point != points.end() && point->along_m <= last_m; ++point) {
        if (canActOn(brush.act, *point) &&
            apart(pixelOf(*point, frame, scene.typeScale), from, to) <= brushRadius) {
            brush.met.insert(static_cast<std::size_t>(point - points.begin()));
        }
    }
}

void paintBrush(QPainter& painter, const ProfileScene& scene, const QRectF& box, double scale) {
    if (!scene.brush) {
        return;
    }
    const chart::Palette& palette = chart::Palette::of(scene.inks);
    const SideFrame frame = frameOf(scene, box);
    const Brush& brush = *scene.brush;
    painter.setBrush(brush.act == BrushAct::setAside ? QBrush(Qt::NoBrush) : QBrush(palette.rust));
    for (const std::size_t i : brush.met) {
        const QPointF at = pixelOf(scene.profile.points[i], frame, scale);
        painter.setPen(QPen(palette.rust, 1.6 * scale));
        painter.drawEllipse(at, 3.4 * scale, 3.4 * scale);
    }
    painter.setBrush(Qt::NoBrush);
    if (brush.at) {
        for (const QPen& pen : {QPen(palette.card, 3.6 * scale), QPen(palette.rust, 1.6 * scale)}) {
            painter.setPen(pen);
            painter.drawEllipse(*brush.at, brushRadius * scale, brushRadius * scale);
        }
    }
    const QString hint = hintOf(brush);
    const QFont font = chart::typeface(chart::TypeSize::small, scale, chart::TypeStyle::bold);
    const double half = 0.5 * chart::boxOf(font, hint, {}).width();
    chart::drawText(painter, font, {box.left() + half + 8.0 * scale, box.top() + 11.0 * scale},
                    hint, {palette.rust, palette.card}, 2.6 * scale);
}

} // namespace side_view
