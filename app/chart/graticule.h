// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/view_frame.h"
#include "core/geo/water_frame.h"

#include <QString>

#include <vector>

namespace chart {

/// One line of equal longitude or latitude, as far as the view shows it.
struct GraticuleLine {
    enum class Kind { meridian, parallel };
    Kind kind = Kind::meridian;
    double degrees = 0.0;              ///< East or north positive; a multiple of its step.
    int decimals = 0;                  ///< That its step needs.
    std::vector<geo::WaterPoint> path; ///< From south to north, or from west to east.
};

/// Meridians and parallels of WGS 84 across the view, at steps of 1, 2 or 5 times a power of ten of
/// a degree: the shortest at which neighbours lie at least `least` pixels apart. In decimal degrees
/// as wording::Words::place() counts them. Nothing for a view that shows more than a few degrees.
/// \param least more than 0.
[[nodiscard]] std::vector<GraticuleLine> graticuleOf(const geo::WaterFrame& frame,
                                                     const ViewFrame& view, double least);

/// "55.21° N", "3.105° E"; the same in every language, as a position is.
[[nodiscard]] QString wordsOf(const GraticuleLine& line);

} // namespace chart
