// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/surface/solver/active_cells.h"

#include <vector>

namespace surface::solver {

/// A shape that a water tends to have from its outline alone, 0 at the shore and at most 1.
struct TrendShape {
    Field rise;
    int wider = 0; ///< How many lengths of its kind are wider: the more, the less it is believed.
};

/// The shapes that the trend is mixed of.
struct TrendBasis {
    std::vector<TrendShape> shapes;
};

/// For each of several lengths L, s the distance to the shore: a bank, 1 - exp(-s / L); the
/// solution u of u - L^2 lap(u) = 1 inside, u = 0 at the shore, which knows a bay from open water;
/// and, for lengths of its own, a shelf and then a drop, 1 - exp(-(s / L)^2), which no mixture of
/// the others makes, as they all are steepest at the shore.
/// \param shore_m distance to the shore; `isInside` 1 where the centre is in the water.
/// Empty where the user stopped it.
[[nodiscard]] TrendBasis trendBasisOf(const ActiveCells& cells, const Field& shore_m,
                                      const Field& isInside, int threads,
                                      const base::Progress& progress);

} // namespace surface::solver
