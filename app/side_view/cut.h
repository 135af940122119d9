// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/path.h"
#include "core/marks/mark.h"
#include "core/surface/trust.h"
#include "core/units/length.h"
#include "core/water/document/derived.h"

#include <optional>
#include <vector>

namespace side_view {

/// The water at one place of a cut.
struct CutSample {
    double along_m = 0.0; ///< From the start of the path.
    geo::WaterPoint at;
    std::optional<double> depth_m; ///< Today; nothing on land and where it is dry.
    double halfWidth_m = 0.0;      ///< Of the trust, 95 %.
    surface::TrustName trust = surface::TrustName::sounded;
    double weed_m = 0.0; ///< Likely height of weed above the bottom; 0 where there is likely none.
};

/// The bottom under a path, as the side view draws it. A value.
struct Cut {
    geo::Path path;
    std::vector<CutSample> samples; ///< At even steps, the first at 0, the last at the end.

    [[nodiscard]] bool isEmpty() const { return samples.size() < 2; }
    [[nodiscard]] double length_m() const { return isEmpty() ? 0.0 : samples.back().along_m; }
    /// The greatest depth with its trust added; 0 where the cut meets no water.
    [[nodiscard]] double deepest_m() const;
    /// Today's depth of the sample at or just beyond so far along; 0 on land.
    [[nodiscard]] double depthAt_m(double along_m) const;
    /// The place so far along; held to the ends.
    [[nodiscard]] geo::WaterPoint placeAt(double along_m) const;
    /// Where the path passes nearest to p; nothing if that is farther than `most_m`.
    [[nodiscard]] std::optional<double> alongOf(geo::WaterPoint p, double most_m) const;
};

/// \param rise today's level above chart level. \param samples at least 2.
[[nodiscard]] Cut makeCut(const water::Derived& derived, const geo::Path& path, units::Length rise,
                          int samples = 400);

/// The way through both anchors of the mark and its lie, with `beyond` to spare at both ends; the
/// bow points to the end.
[[nodiscard]] geo::Path pathThrough(const marks::Mark& mark, units::Length beyond);
/// Straight from the boat to the bait of one of its rods, and `beyond` past both ends.
[[nodiscard]] geo::Path pathOfCast(const marks::Mark& mark, std::size_t rod, units::Length beyond);

} // namespace side_view
