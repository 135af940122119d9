// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/surface/solver/active_cells.h"

#include <vector>

namespace surface::solver {

/// Shapes that a water tends to have from its outline alone, each 0 at the shore and at most 1.
struct TrendBasis {
    std::vector<Field> shapes;
};

/// For each of several lengths L: 1 - exp(-s / L) with s the distance to the shore, and the
/// solution u of u - L^2 lap(u) = 1 inside, u = 0 at the shore, which knows a bay from open water.
/// \param shore_m distance to the shore; `isInside` 1 where the centre is in the water.
/// Empty where the user stopped it.
[[nodiscard]] TrendBasis trendBasisOf(const ActiveCells& cells, const Field& shore_m,
                                      const Field& isInside, int threads,
                                      const base::Progress& progress);

} // namespace surface::solver
