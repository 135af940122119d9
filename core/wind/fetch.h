// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/outline.h"
#include "core/grid/mask.h"
#include "core/units/bearing.h"
#include "core/units/length.h"

namespace wind {

/// Open water upwind of a place.
struct Fetch {
    units::Length straight;  ///< To the first shore straight upwind.
    units::Length effective; ///< Mean over 15 radials, every 6 degrees to 42 each way, weighted by
                             ///< the cosine of the angle.
};

/// The fetch of `place` in a wind from `windFrom`, by exact radials to the shore, islands included.
/// Zero for a place that is not in the water.
/// Source: Saville 1954 (BEB TM 70), in the form of USGS UMESC PSR 97-08: sum F cos a / sum cos a.
[[nodiscard]] Fetch fetchAt(const geo::Outline& outline, geo::WaterPoint place,
                            units::Bearing windFrom);

/// Straight fetch in metres at the centre of every active cell, 0 elsewhere. One sweep over the
/// cells: right to about a cell where the shore is plain.
[[nodiscard]] grid::Grid<float> fetchGrid_m(const grid::Mask& mask, units::Bearing windFrom);

/// Effective fetch in metres, as in Fetch, at the centre of every active cell: 15 sweeps.
[[nodiscard]] grid::Grid<float> effectiveFetchGrid_m(const grid::Mask& mask,
                                                     units::Bearing windFrom);

} // namespace wind
