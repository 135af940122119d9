// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/inks.h"
#include "core/grid/grid.h"
#include "core/surface/drawn_water.h"

#include <QColor>
#include <QImage>

#include <memory>

namespace chart {

/// How the chart shows what it does not know: paper laid over the depths, thicker the less they can
/// be trusted, and where the depth is a guess.
struct TrustFade {
    grid::GridFrame frame;   ///< That of the trust, or a coarser one over the same box.
    grid::Grid<float> guess; ///< Share of guesses round the cell, 0 to 1.
    QImage veil;             ///< Paper with its thickness as alpha, one pixel for each cell.

    /// True where the neighbourhood of p is mostly a guess.
    [[nodiscard]] bool isGuess(geo::WaterPoint p) const;
    /// Made once for each drawn water and kind of paper.
    [[nodiscard]] static std::shared_ptr<const TrustFade>
    of(const std::shared_ptr<const surface::DrawnWater>& drawn, Inks inks);
};

/// Thickness of the veil, 0 to 1: nothing up to 0.6 of the half-width at which a depth becomes a
/// guess (the larger of 0.5 m and 10 % of it), then growing to three times that.
[[nodiscard]] double veilOver(double depth_m, double halfWidth_m);

} // namespace chart
