// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/side_view/track_profile.h"

#include "app/chart/lettering.h"
#include "app/chart/palette.h"
#include "app/chart/set_aside_sign.h"
#include "app/side_view/brush_stroke.h"
#include "app/wording/spoken_names.h"
#include "app/wording/tongue.h"

#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace side_view {

namespace {

bool isPlaceWrong(soundings::Verdict verdict) {
    return chart::familyOf(verdict) == chart::ReasonFamily::position;
}

void paintChosen(QPainter& painter, const ProfileScene& scene, const SideFrame& frame,
                 const chart::Palette& palette, double scale) {
    if (!scene.chosen || *scene.chosen >= scene.profile.points.size()) {
        return;
    }
    const ProfilePoint& point = scene.profile.points[*scene.chosen];
    const QPointF at = pixelOf(point, frame, scale);
    painter.setBrush(Qt::NoBrush);
    for (const QPen& pen : {QPen(palette.card, 4.4 * scale), QPen(palette.rust, 2.2 * scale)}) {
        painter.setPen(pen);
        painter.drawEllipse(at, 8.5 * scale, 8.5 * scale);
    }
}

void paintPointed(QPainter& painter, const ProfileScene& scene, const SideFrame& frame,
                  const chart::Palette& palette, double scale) {
    if (!scene.pointed || *scene.pointed >= scene.profile.points.size()) {
        return;
    }
    const ProfilePoint& point = scene.profile.points[*scene.pointed];
    const QPointF at = pixelOf(point, frame, scale);
    painter.setPen(QPen(palette.rust, 1.0 * scale, Qt::DashLine));
    painter.drawLine(frame.at(point.along_m, 0.0), at);
    QString text = scene.words.depth(units::Depth::metres(point.depth_m));
    if (point.verdict != soundings::Verdict::kept) {
        text += wording::Tongue::tr("  set aside: %1").arg(wording::spoken(point.verdict));
    }
    const QFont font = chart::typeface(chart::TypeSize::small, scale, chart::TypeStyle::bold);
    const double half = 0.5 * chart::boxOf(font, text, {}).width() + 8.0 * scale;
    const bool hasRoom = at.x() + 2.0 * half < frame.box.right();
    const double y = std::clamp(at.y() - 12.0 * scale, frame.box.top() + 12.0 * scale,
                                frame.box.bottom() - 12.0 * scale);
    chart::drawText(painter, font, {at.x() + (hasRoom ? half : -half), y}, text,
                    {palette.rust, palette.card}, 2.6 * scale);
}

} // namespace

double TrackProfile::deepest_m() const {
    double deepest = 1.0;
    for (const ProfilePoint& point : points) {
        if (point.verdict == soundings::Verdict::kept) {
            deepest = std::max(deepest, point.depth_m);
        }
    }
    return 1.25 * deepest;
}

std::optional<std::size_t> TrackProfile::nearest(geo::WaterPoint p, double most_m) const {
    std::optional<std::size_t> found;
    double least = most_m;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const double apart = geo::distance_m(points[i].at, p);
        if (apart <= least) {
            least = apart;
            found = i;
        }
    }
    return found;
}

std::optional<std::size_t> TrackProfile::nearestAlong(double along_m) const {
    if (points.empty()) {
        return std::nullopt;
    }
    const auto next =
        std::lower_bound(points.begin(), points.end(), along_m,
                         [](const ProfilePoint& p, double along) { return p.along_m < along; });
    if (next == points.begin()) {
        return 0;
    }
    const auto i = static_cast<std::size_t>(next - points.begin());
    const bool isBefore =
        next == points.end() || along_m - points[i - 1].along_m <= points[i].along_m - along_m;
    return isBefore ? i - 1 : i;
}

TrackProfile makeTrackProfile(const reduction::ReducedDay& day) {
    TrackProfile profile;
    double along = 0.0;
    std::optional<geo::WaterPoint> last;
    for (std::size_t i = 0; i < day.points.size(); ++i) {
        if (!isPlaceWrong(day.verdicts[i])) {
            along += last ? geo::distance_m(*last, day.points[i]) : 0.0;
            last = day.points[i];
        }
        profile.points.push_back({along, day.depth_m[i], day.verdicts[i], i, day.points[i]});
    }
    return profile;
}

SideFrame frameOf(const ProfileScene& scene, const QRectF& box) {
    const double deepest = scene.profile.deepest_m();
    return {box, scene.from_m, std::max(scene.to_m, scene.from_m + 1.0), 0.16 * deepest, deepest};
}

QPointF pixelOf(const ProfilePoint& point, const SideFrame& frame, double scale) {
    QPointF at = frame.at(point.along_m, point.depth_m);
    at.setY(std::min(at.y(), frame.box.bottom() - 6.0 * scale));
    return at;
}

std::optional<std::size_t> pointUnder(const ProfileScene& scene, const QRectF& box, QPointF pixel) {
    constexpr double within = 7.0; // pixels
    const SideFrame frame = frameOf(scene, box);
    const auto& points = scene.profile.points;
    const double reach_m = within / frame.pixelsPerMetreAlong();
    const double along_m = frame.alongAt(pixel.x());
    std::optional<std::size_t> found;
    double least = within;
    const auto first =
        std::lower_bound(points.begin(), points.end(), along_m - reach_m,
                         [](const ProfilePoint& p, double along) { return p.along_m < along; });
    for (auto point = first; point != points.end() && point->along_m <= along_m + reach_m;
         ++point) {
        const QPointF way = pixelOf(*point, frame, scene.typeScale) - pixel;
        const double apart = std::hypot(way.x(), way.y());
        if (apart < least) {
            least = apart;
            found = static_cast<std::size_t>(point - points.begin());
        }
    }
    return found ? found : scene.profile.nearestAlong(along_m);
}

void paintProfile(QPainter& painter, const ProfileScene& scene, const QRectF& box, double scale) {
    paintTrack(painter, scene, box, scale);
    paintOverTrack(painter, scene, box, scale);
}

void paintOverTrack(QPainter& painter, const ProfileScene& scene, const QRectF& box, double scale) {
    const chart::Palette& palette = chart::Palette::of(scene.inks);
    const SideFrame frame = frameOf(scene, box);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, true);
    painter.setClipRect(box, Qt::IntersectClip);
    paintChosen(painter, scene, frame, palette, scale);
    if (scene.brush) {
        paintBrush(painter, scene, box, scale);
    } else {
        paintPointed(painter, scene, frame, palette, scale);
    }
    painter.restore();
}

void paintTrack(QPainter& painter, const ProfileScene& scene, const QRectF& box, double scale) {
    const chart::Palette& palette = chart::Palette::of(scene.inks);
    const SideFrame frame = frameOf(scene, box);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, true);
    painter.setClipRect(box, Qt::IntersectClip);
    painter.fillRect(box, palette.card);
    const double surface = frame.at(0.0, 0.0).y();
    painter.fillRect(QRectF(box.left(), surface, box.width(), box.bottom() - surface),
                     palette.water);
    QPolygonF bottom;
    std::array<QPainterPath, chart::allReasonFamilies.size()> aside;
    for (const ProfilePoint& point : scene.profile.points) {
        if (point.along_m < frame.from_m - 50.0 || point.along_m > frame.to_m + 50.0) {
            continue;
        }
        const auto family = chart::familyOf(point.verdict);
        if (!family) {
            bottom.append(frame.at(point.along_m, point.depth_m));
            continue;
        }
        chart::addSign(aside[static_cast<std::size_t>(*family)], *family,
                       pixelOf(point, frame, scale), 3.2 * scale);
    }
    if (bottom.size() >= 2) {
        QPolygonF ground = bottom;
        ground.append({bottom.last().x(), box.bottom()});
        ground.append({bottom.first().x(), box.bottom()});
        painter.setPen(Qt::NoPen);
        painter.setBrush(palette.bed);
        painter.drawPolygon(ground);
        painter.setPen(QPen(palette.ink, 1.4 * scale));
        painter.drawPolyline(bottom);
    }
    painter.setPen(QPen(palette.depthAt(0.75), 1.4 * scale));
    painter.drawLine(QPointF(box.left(), surface), QPointF(box.right(), surface));
    for (const chart::ReasonFamily family : chart::allReasonFamilies) {
        painter.strokePath(aside[static_cast<std::size_t>(family)],
                           QPen(chart::colourOf(palette, family), 1.6 * scale));
    }
    const QString legend =
        wording::Tongue::tr(
            "%1 to %2 along the track; × echo, + position, □ other passes or by hand")
            .arg(scene.words.length(units::Length::metres(std::max(frame.from_m, 0.0))),
                 scene.words.length(units::Length::metres(frame.to_m)));
    const QFont font = chart::typeface(chart::TypeSize::small, 0.92 * scale);
    const QRectF plain = chart::boxOf(font, legend, {});
    chart::drawText(painter, font,
                    {box.right() - 0.5 * plain.width() - 8.0 * scale, box.top() + 11.0 * scale},
                    legend, {palette.faintInk, palette.card}, 2.0 * scale);
    painter.restore();
}

} // namespace side_view
