// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPointF>
#include <QRectF>

namespace side_view {

/// What part of a cut is shown and how large: metres along and metres below the surface to pixels.
/// A value.
struct SideFrame {
    QRectF box;             ///< On the page.
    double from_m = 0.0;    ///< Along, at the left edge.
    double to_m = 1.0;      ///< Along, at the right edge.
    double air_m = 1.0;     ///< Height above the surface at the upper edge.
    double deepest_m = 1.0; ///< Depth at the lower edge.

    [[nodiscard]] double pixelsPerMetreAlong() const { return box.width() / (to_m - from_m); }
    [[nodiscard]] double pixelsPerMetreDown() const { return box.height() / (air_m + deepest_m); }
    /// How many times heights are drawn larger than lengths.
    [[nodiscard]] double exaggeration() const {
        return pixelsPerMetreDown() / pixelsPerMetreAlong();
    }
    [[nodiscard]] QPointF at(double along_m, double depth_m) const {
        return {box.left() + (along_m - from_m) * pixelsPerMetreAlong(),
                box.top() + (air_m + depth_m) * pixelsPerMetreDown()};
    }
    [[nodiscard]] double alongAt(double x) const {
        return from_m + (x - box.left()) / pixelsPerMetreAlong();
    }

    /// The whole of a cut in `box`: a little air and a little ground, heights never drawn smaller
    /// than lengths, and to scale where the page is high enough for it.
    [[nodiscard]] static SideFrame showing(const QRectF& box, double length_m, double deepest_m,
                                           double least_air_m);
};

} // namespace side_view
