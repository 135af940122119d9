// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/chart_content.h"
#include "app/side_view/brush.h"
#include "app/side_view/side_frame.h"

#include <QPainter>

#include <optional>
#include <vector>

namespace side_view {

/// One sounding of a survey day, as far along the track as the boat had come.
struct ProfilePoint {
    double along_m = 0.0; ///< Steps to positions that were set aside do not count.
    double depth_m = 0.0; ///< Reduced, below chart level.
    soundings::Verdict verdict = soundings::Verdict::kept;
    std::size_t sounding = 0; ///< Position in its day.
    geo::WaterPoint at;
};

/// The depths of one survey day in the order of the track. A value.
struct TrackProfile {
    std::vector<ProfilePoint> points;
    [[nodiscard]] double length_m() const { return points.empty() ? 0.0 : points.back().along_m; }
    [[nodiscard]] double deepest_m() const; ///< Of the kept ones, with room for spikes.
    /// The point nearest to a place on the track; nothing where there is none within `most_m`.
    [[nodiscard]] std::optional<std::size_t> nearest(geo::WaterPoint p, double most_m) const;
    [[nodiscard]] std::optional<std::size_t> nearestAlong(double along_m) const;
};

[[nodiscard]] TrackProfile makeTrackProfile(const reduction::ReducedDay& day);

/// What of a profile is shown, and how.
struct ProfileScene {
    TrackProfile profile;
    double from_m = 0.0;
    double to_m = 1.0;
    wording::Words words{wording::Words()};
    chart::Inks inks = chart::Inks::light;
    double typeScale = 1.0;             ///< Of letters and pens.
    std::optional<std::size_t> pointed; ///< Position in the profile's points.
    std::optional<std::size_t> chosen;  ///< The same, of the one that is looked at.
    std::optional<Brush> brush;         ///< While soundings are set aside or taken back by hand.
};

[[nodiscard]] SideFrame frameOf(const ProfileScene& scene, const QRectF& box);
/// Where a point is drawn: what is deeper than the page stands on its edge, so that it is not lost.
[[nodiscard]] QPointF pixelOf(const ProfilePoint& point, const SideFrame& frame, double scale);
/// The point drawn nearest to a pixel; where none is near, the one nearest along the track.
[[nodiscard]] std::optional<std::size_t> pointUnder(const ProfileScene& scene, const QRectF& box,
                                                    QPointF pixel);
/// The bottom under the track; what is set aside with the signs that the chart uses.
void paintProfile(QPainter& painter, const ProfileScene& scene, const QRectF& box,
                  double scale = 1.0);
/// The same in two parts: what stays while the hand moves, and what follows it.
void paintTrack(QPainter& painter, const ProfileScene& scene, const QRectF& box, double scale);
void paintOverTrack(QPainter& painter, const ProfileScene& scene, const QRectF& box, double scale);

} // namespace side_view
