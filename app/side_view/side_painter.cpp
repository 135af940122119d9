// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/side_view/side_painter.h"

#include "app/chart/boat_drawing.h"
#include "app/chart/depth_colours.h"
#include "app/chart/label_space.h"
#include "app/chart/lettering.h"
#include "app/chart/palette.h"
#include "app/side_view/rig_drawing.h"
#include "app/wording/tongue.h"

#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace side_view {

namespace {

using chart::Palette;
using chart::withAlpha;

/// Calls `stretch` for each unbroken row of samples over water: first and one past the last.
template <class Act>
void overWater(const Cut& cut, const Act& stretch) {
    std::size_t first = 0;
    while (first < cut.samples.size()) {
        while (first < cut.samples.size() && !cut.samples[first].depth_m) {
            ++first;
        }
        std::size_t last = first;
        while (last < cut.samples.size() && cut.samples[last].depth_m) {
            ++last;
        }
        if (last > first + 1) {
            stretch(first, last);
        }
        first = std::max(last, first + 1);
    }
}

/// The bottom moved down by `shift` times the half-width, land at the surface.
QPolygonF bottomLine(const SideOn& on, double shift) {
    QPolygonF line;
    for (const CutSample& sample : on.scene.cut.samples) {
        const double depth = sample.depth_m.value_or(0.0);
        line.append(on.frame.at(sample.along_m, std::max(depth + shift * sample.halfWidth_m, 0.0)));
    }
    return line;
}

void paintWater(const SideOn& on) {
    const SideFrame& frame = on.frame;
    const QRectF& box = frame.box;
    const double surface = frame.at(0.0, 0.0).y();
    on.painter.fillRect(box, on.palette.card);
    const QRectF water(box.left(), surface, box.width(), box.bottom() - surface);
    on.painter.fillRect(water, on.palette.water);
    // Bands as faint levels of their own colours.
    for (std::size_t i = 0; i < on.scene.bands.count(); ++i) {
        const double top = frame.at(0.0, on.scene.bands.from(i).inMetres()).y();
        const auto to = on.scene.bands.to(i);
        const double foot = to ? frame.at(0.0, to->inMetres()).y() : box.bottom();
        const QRectF level = QRectF(box.left(), top, box.width(), foot - top).intersected(water);
        on.painter.fillRect(level, withAlpha(on.palette.band(i, on.scene.bands.count()), 0.30));
    }
}

void paintGround(const SideOn& on) {
    QPolygonF ground = bottomLine(on, 0.0);
    ground.append(on.frame.box.bottomRight());
    ground.append(on.frame.box.bottomLeft());
    on.painter.setPen(Qt::NoPen);
    on.painter.setBrush(on.palette.bed);
    on.painter.drawPolygon(ground);
}

/// The trust as a band round the bottom: sand, hatched where a guess.
void paintTrust(const SideOn& on) {
    const Cut& cut = on.scene.cut;
    overWater(cut, [&](std::size_t first, std::size_t last) {
        QPolygonF band;
        for (std::size_t i = first; i < last; ++i) {
            const CutSample& s = cut.samples[i];
            band.append(on.frame.at(s.along_m, std::max(*s.depth_m - s.halfWidth_m, 0.0)));
        }
        for (std::size_t i = last; i-- > first;) {
            const CutSample& s = cut.samples[i];
            band.append(on.frame.at(s.along_m, *s.depth_m + s.halfWidth_m));
        }
        on.painter.setPen(Qt::NoPen);
        on.painter.setBrush(withAlpha(chart::mixed(on.palette.sand, on.palette.ink, 0.25), 0.50));
        on.painter.drawPolygon(band);
    });
    QPainterPath hatching;
    const double gap = 6.0 * on.scale;
    double next = on.frame.box.left();
    for (const CutSample& s : cut.samples) {
        const QPointF at = on.frame.at(s.along_m, s.depth_m.value_or(0.0));
        if (at.x() < next || !s.depth_m) {
            continue;
        }
        next = at.x() + gap;
        if (s.trust == surface::TrustName::guess) {
            const double reach = s.halfWidth_m * on.frame.pixelsPerMetreDown();
            hatching.moveTo(at + QPointF(-0.5 * gap, reach));
            hatching.lineTo(at + QPointF(0.5 * gap, -reach));
        }
    }
    on.painter.strokePath(hatching, QPen(withAlpha(on.palette.ink, 0.6), 0.9 * on.scale));
}

void paintBottomLine(const SideOn& on) {
    const Cut& cut = on.scene.cut;
    const QPolygonF line = bottomLine(on, 0.0);
    QPainterPath sure;
    QPainterPath guessed;
    for (qsizetype i = 1; i < line.size(); ++i) {
        const CutSample& s = cut.samples[static_cast<std::size_t>(i)];
        QPainterPath& path = s.depth_m && s.trust == surface::TrustName::guess ? guessed : sure;
        if (path.isEmpty() || path.currentPosition() != line[i - 1]) {
            path.moveTo(line[i - 1]);
        }
        path.lineTo(line[i]);
    }
    QPen pen(on.palette.ink, 1.8 * on.scale, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin);
    on.painter.strokePath(sure, pen);
    pen.setDashPattern({4.0, 2.5});
    on.painter.strokePath(guessed, pen);
}

void paintWeed(const SideOn& on) {
    const double gap = 6.0 * on.scale;
    double next = on.frame.box.left();
    int blade = 0;
    QPainterPath blades;
    for (const CutSample& s : on.scene.cut.samples) {
        const QPointF foot = on.frame.at(s.along_m, s.depth_m.value_or(0.0));
        if (foot.x() < next || !s.depth_m || s.weed_m <= 0.0) {
            continue;
        }
        next = foot.x() + gap;
        // No two blades alike, none above the likely height.
        const double share = 0.70 + 0.30 * std::abs(std::sin(2.4 * blade++));
        const double height = share * s.weed_m * on.frame.pixelsPerMetreDown();
        const double lean = 4.0 * on.scale * std::sin(1.7 * blade);
        blades.moveTo(foot);
        blades.quadTo(foot + QPointF(-0.4 * lean, -0.5 * height), foot + QPointF(lean, -height));
    }
    on.painter.strokePath(blades,
                          QPen(on.palette.reed, 1.5 * on.scale, Qt::SolidLine, Qt::RoundCap));
}

void paintFish(const SideOn& on) {
    const double length = 17.0 * on.scale;
    std::vector<QPointF> taken;
    for (const SideFish& fish : on.scene.fish) {
        const double bottom = on.scene.cut.depthAt_m(fish.along_m);
        QPointF at = on.frame.at(fish.along_m, fish.depth_m.value_or(bottom));
        at -= QPointF(0.0, fish.depth_m ? 0.0 : 0.5 * length);
        while (std::any_of(taken.begin(), taken.end(), [&](QPointF other) {
            return std::hypot(other.x() - at.x(), other.y() - at.y()) < 0.6 * length;
        })) {
            at += QPointF(1.1 * length, 0.0);
        }
        taken.push_back(at);
        const QPainterPath shape = chart::fishShape(length).translated(at);
        on.painter.setPen(QPen(on.palette.plum, 1.2 * on.scale));
        on.painter.setBrush(fish.landed ? on.palette.plum : on.palette.card);
        on.painter.drawPath(shape);
    }
}

/// Depths down the left edge, at round steps of the user's unit.
void paintDepths(const SideOn& on) {
    const bool isMetric = on.scene.words.isMetric();
    const auto inUnit = [&](double n) {
        return isMetric ? units::Depth::metres(n) : units::Depth::feet(n);
    };
    const double perUnit = on.frame.pixelsPerMetreDown() * inUnit(1.0).inMetres();
    double step = 1.0;
    for (const double wider : {1.0, 2.0, 5.0, 10.0, 20.0, 50.0}) {
        step = wider;
        if (wider * perUnit >= 17.0 * on.scale) {
            break;
        }
    }
    const QFont font = chart::typeface(chart::TypeSize::small, 0.92 * on.scale);
    const QRectF& box = on.frame.box;
    for (double n = 0.0;; n += step) {
        const double y = on.frame.at(0.0, inUnit(n).inMetres()).y();
        if (y > box.bottom() - 8.0 * on.scale) {
            break;
        }
        on.painter.setPen(QPen(on.palette.ink, 1.0 * on.scale));
        on.painter.drawLine(QPointF(box.left(), y), QPointF(box.left() + 7.0 * on.scale, y));
        const QString text =
            n == 0.0 ? QStringLiteral("0 %1").arg(on.scene.words.depthUnit()) : QString::number(n);
        const QRectF plain = chart::boxOf(font, text, {});
        const double up = n == 0.0 ? 0.6 * plain.height() : 0.0; // clear of the surface's line
        const QPointF middle(box.left() + 10.0 * on.scale + 0.5 * plain.width(), y - up);
        on.labels.block(chart::boxOf(font, text, middle));
        chart::drawText(on.painter, font, middle, text, {on.palette.ink, on.palette.card},
                        2.2 * on.scale);
    }
}

void paintLegend(const SideOn& on) {
    const double times = on.frame.exaggeration();
    const QString heights =
        std::abs(times - 1.0) < 0.02
            ? wording::Tongue::tr("to scale")
            : wording::Tongue::tr("heights × %1").arg(wording::Tongue::shortNumber(times, 1));
    const QString text =
        on.scene.rod ? wording::Tongue::tr("along the cast of rod %1, %2; shaded: trust ±")
                           .arg(*on.scene.rod + 1)
                           .arg(heights)
        : on.scene.mark
            ? wording::Tongue::tr("along the ropes, %1; baits at their own depth; shaded: trust ±")
                  .arg(heights)
            : wording::Tongue::tr("%1 long, %2; shaded: trust ±")
                  .arg(on.scene.words.length(units::Length::metres(on.scene.cut.length_m())),
                       heights);
    const QFont font = chart::typeface(chart::TypeSize::small, 0.92 * on.scale);
    const QRectF plain = chart::boxOf(font, text, {});
    const QRectF& box = on.frame.box;
    const QPointF middle(box.right() - 0.5 * plain.width() - 8.0 * on.scale,
                         box.bottom() - 0.5 * plain.height() - 5.0 * on.scale);
    on.labels.block(chart::boxOf(font, text, middle));
    chart::drawText(on.painter, font, middle, text, {on.palette.ink, on.palette.bed},
                    2.4 * on.scale);
}

void paintPointed(const SideOn& on) {
    if (!on.scene.pointed_m) {
        return;
    }
    const auto& samples = on.scene.cut.samples;
    const auto under =
        std::lower_bound(samples.begin(), samples.end() - 1, *on.scene.pointed_m,
                         [](const CutSample& s, double along) { return s.along_m < along; });
    const double depth = under->depth_m.value_or(0.0);
    const QPointF foot = on.frame.at(*on.scene.pointed_m, depth);
    const QPointF top = on.frame.at(*on.scene.pointed_m, 0.0);
    on.painter.setPen(QPen(on.palette.rust, 1.0 * on.scale, Qt::DashLine));
    on.painter.drawLine(top, foot);
    if (!under->depth_m) {
        return;
    }
    const QString text = on.scene.words.depth(units::Depth::metres(depth)) + QStringLiteral("  ") +
                         on.scene.words.plusMinus(units::Depth::metres(under->halfWidth_m));
    const QFont font = chart::typeface(chart::TypeSize::small, on.scale, chart::TypeStyle::bold);
    const double half = 0.5 * chart::boxOf(font, text, {}).width() + 6.0 * on.scale;
    const bool hasRoom = foot.x() + 2.0 * half < on.frame.box.right();
    chart::drawText(on.painter, font,
                    {foot.x() + (hasRoom ? half : -half), 0.5 * (top.y() + foot.y())}, text,
                    {on.palette.rust, on.palette.card}, 2.6 * on.scale);
}

} // namespace

void paintScene(QPainter& painter, const SideScene& scene, const QRectF& box, double scale) {
    paintStill(painter, scene, box, scale);
    paintPointer(painter, scene, box, scale);
}

void paintPointer(QPainter& painter, const SideScene& scene, const QRectF& box, double scale) {
    if (scene.cut.isEmpty()) {
        return;
    }
    chart::LabelSpace labels(box);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, true);
    painter.setClipRect(box, Qt::IntersectClip);
    paintPointed({painter, scene, frameOf(scene, box), Palette::of(scene.inks), labels, scale});
    painter.restore();
}

void paintStill(QPainter& painter, const SideScene& scene, const QRectF& box, double scale) {
    const Palette& palette = Palette::of(scene.inks);
    chart::LabelSpace labels(box);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, true);
    painter.setClipRect(box, Qt::IntersectClip);
    if (scene.cut.isEmpty()) {
        painter.fillRect(box, palette.card);
        painter.restore();
        return;
    }
    const SideOn on{painter, scene, frameOf(scene, box), palette, labels, scale};
    paintWater(on);
    paintGround(on);
    paintTrust(on);
    paintWeed(on);
    paintBottomLine(on);
    const double surface = on.frame.at(0.0, 0.0).y();
    painter.setPen(QPen(palette.depthAt(0.75), 1.4 * scale));
    painter.drawLine(QPointF(box.left(), surface), QPointF(box.right(), surface));
    paintDepths(on);
    paintLegend(on);
    paintFish(on);
    if (scene.mark) {
        drawRig(on, *scene.mark, scene.tackle);
    }
    painter.restore();
}

} // namespace side_view
