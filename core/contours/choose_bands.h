// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/contours/band.h"
#include "core/contours/counts_in.h"
#include "core/grid/depth_grid.h"
#include "core/grid/mask.h"

#include <optional>
#include <vector>

namespace contours {

/// Bands that suit a water of this depth: the limit is the usual one, or, in a water that is not so
/// deep, the first round depth below all of it; four to six bands of one round step down to the
/// limit, and a few wide ones below it.
/// \param deepest of the water; not positive: as if it were just as deep as the limit.
/// \param limit where the user chose one: then the last step before it may be narrower.
[[nodiscard]] Bands chooseBands(units::Depth deepest, CountsIn unit,
                                std::optional<units::Depth> limit = std::nullopt);

/// How deep the water is but for the deepest thousandth of its area: a single hole, or a single bad
/// sounding, makes no bands.
[[nodiscard]] units::Depth depthToChooseBy(const grid::DepthGrid& depth, const grid::Mask& mask);

/// Depths of contours: every band edge, and round steps that leave some fifteen lines.
[[nodiscard]] std::vector<units::Depth> contourLevels(const Bands& bands, units::Depth deepest,
                                                      CountsIn unit);

} // namespace contours
