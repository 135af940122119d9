// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/surface/solver/samples.h"
#include "core/surface/solver/trend_basis.h"

namespace surface::solver {

/// What is left of many equations when their squares are summed: x'Gx / 2 - c'x.
struct NormalEquations {
    std::vector<double> g; ///< Symmetric, row by row.
    std::vector<double> c;
    double weight = 0.0; ///< In all.
};

/// Of sum_i weight_i (sum_k x_k values_ik - depth_i)^2, `values` sample by sample.
[[nodiscard]] NormalEquations normalEquationsOf(const std::vector<double>& values,
                                                const std::vector<double>& weights,
                                                const std::vector<Sample>& samples);

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
