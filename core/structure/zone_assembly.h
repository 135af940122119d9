// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/grid/depth_grid.h"
#include "core/grid/mask.h"
#include "core/structure/zone.h"

#include <optional>

namespace structure {

/// The kind of every cell as a number: that of a ZoneKind, or negative for none.
using KindGrid = grid::Grid<std::int32_t>;

[[nodiscard]] constexpr std::int32_t codeOf(ZoneKind kind) {
    return static_cast<std::int32_t>(kind);
}

/// The water that zones are described against.
struct ZoneGround {
    const grid::DepthGrid& depth;
    const grid::Mask& mask;
    const grid::Grid<float>* trustHalfWidth_m = nullptr; ///< Nothing where it is not known.
    std::optional<geo::WaterPoint> launch;               ///< Where the numbering begins.
};

/// Zones out of cells: connected pieces of one kind, with outline, depths, area, trust and name,
/// kinds in the order of ZoneKind, within a kind clockwise from the launch (or from north).
/// Lines along edges are not drawn here.
[[nodiscard]] ZoneMap zonesFrom(const KindGrid& kindOfCell, const ZoneGround& ground);

/// Gives the kind of its longest border to every piece of fewer than `leastCells` cells, "no kind"
/// being one of them, smallest pieces first. \return how many pieces were joined so.
std::size_t joinSmallPieces(KindGrid& kindOfCell, const grid::Mask& mask, std::size_t leastCells);

} // namespace structure
