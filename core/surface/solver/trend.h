// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/surface/solver/samples.h"
#include "core/surface/solver/trend_basis.h"

namespace surface::solver {

/// How deep this water tends to be at each cell: the mixture of the basis shapes, none negative,
/// that fits the samples best. Samples are thinned by blocks of 25 m, so that dense tracks do not
/// outvote lone ones, and weighted after Huber.
[[nodiscard]] Field trendOf(const ActiveCells& cells, const TrendBasis& basis,
                            const std::vector<Sample>& samples);

/// The non-negative x that minimises x'Gx / 2 - c'x, G symmetric (n x n, row by row): projected
/// Gauss-Seidel.
[[nodiscard]] std::vector<double> nonNegativeLeastSquares(const std::vector<double>& g,
                                                          const std::vector<double>& c);

} // namespace surface::solver
