// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/surface/solver/energy.h"

namespace surface::solver {

/// How the bottom lies around each cell: which way its contours run and how steep it is.
struct LayOfBottom {
    ContourDirections contours;
    Field slope; ///< Root mean square slope nearby, metres per metre.
};

/// From the structure tensor of a bottom, blurred over `blur_m` (Bigün and Granlund 1987): its weak
/// direction is the contour's, the difference of its eigenvalues over their sum says how sure.
[[nodiscard]] LayOfBottom layOf(const ActiveCells& cells, const Field& depth_m, double blur_m,
                                int threads);

} // namespace surface::solver
