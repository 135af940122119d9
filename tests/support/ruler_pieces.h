// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/gdal/raster_file.h"
#include "core/grid/cell_polygons.h"
#include "core/grid/depth_grid.h"
#include "core/grid/mask.h"

#include <cstddef>
#include <vector>

namespace support {

/// A lake whose bottom is known, and what of it is not too deep to fish.
struct KnownLake {
    grid::DepthGrid depth;
    grid::Mask mask;
    std::vector<std::size_t> fishable; ///< Cells, ascending.
};

/// \param depths positive down; dry or unknown where not above 0.
[[nodiscard]] KnownLake knownLake(const gdal::Raster& depths, double limit_m);

/// Pieces cut from the fishable water by k-means (Lloyd, S. P. 1982, Least squares quantization in
/// PCM, IEEE Trans. Inform. Theory 28, 129-137) by straight-line distance: the best of three
/// starts drawn with a probability as the squared distance from those before (k-means++, Arthur and
/// Vassilvitskii 2007).
[[nodiscard]] grid::PieceGrid rulerPieces(const KnownLake& lake, std::size_t count);

/// How well pieces came out, counted in cells and cell sides, so that none gains from smoothing.
struct PieceFigures {
    double explained = 0.0; ///< Share of the variance of depth that lies between the pieces.
    /// Median of 4 pi A / P^2 (Polsby and Popper 1991).
    double compactness = 0.0;
    /// Pieces that lie in more than one part in water that hangs together along sides of cells.
    std::size_t torn = 0;
};

[[nodiscard]] PieceFigures figuresOf(const KnownLake& lake, const grid::PieceGrid& pieces,
                                     std::size_t count);

} // namespace support
