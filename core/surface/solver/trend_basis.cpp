// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/trend_basis.h"

#include "core/surface/solver/conjugate_gradients.h"

#include <algorithm>
#include <cmath>

namespace surface::solver {

namespace {

constexpr std::array<double, 5> lengths_m{8.0, 20.0, 50.0, 125.0, 312.0};
constexpr std::array<double, 5> shelves_m{10.0, 20.0, 40.0, 80.0, 160.0};
constexpr double tolerance = 1e-3;

/// The five-point matrix of u - L^2 lap(u). A side towards a cell whose centre is on land leads to
/// the shore at the distance shore_m, where u = 0.
StencilMatrix<double> screenedMatrix(const ActiveCells& cells, const Field& shore_m,
                                     const Field& isInside, double length_m) {
    constexpr std::array<Step, 4> sides{Step{-1, 0}, Step{1, 0}, Step{0, -1}, Step{0, 1}};
    constexpr std::array<std::size_t, 4> offsets{11, 13, 7, 17};
    const double h = cells.cell_m();
    const double coupling = length_m * length_m / (h * h);
    StencilMatrix<double> matrix(cells);
    cells.forEach([&](std::size_t p, std::size_t unknown) {
        double* row = matrix.row(unknown);
        row[StencilMatrix<double>::middle] = 1.0;
        if (isInside[p] == 0.0) {
            return;
        }
        for (std::size_t k = 0; k < sides.size(); ++k) {
            const std::size_t other = StencilMatrix<double>::stepped(cells, p, sides[k]);
            if (isInside[other] != 0.0) {
                row[StencilMatrix<double>::middle] += coupling;
                row[offsets[k]] -= coupling;
            } else {
                row[StencilMatrix<double>::middle] +=
                    coupling * h / std::clamp(shore_m[p], 0.2 * h, h);
            }
        }
    });
    return matrix;
}

} // namespace

TrendBasis trendBasisOf(const ActiveCells& cells, const Field& shore_m, const Field& isInside,
                        int threads, const base::Progress& progress) {
    TrendBasis basis;
    Multigrid multigrid(cells, threads);
    Field u(cells.places(), 0.0);
    const auto add = [&](int wider, const auto& riseAt) {
        TrendShape& shape = basis.shapes.emplace_back(Field(cells.places(), 0.0), wider);
        cells.forEach(
            [&](std::size_t p, std::size_t) { shape.rise[p] = isInside[p] * riseAt(shore_m[p]); });
    };
    int wider = static_cast<int>(lengths_m.size());
    for (const double length_m : lengths_m) {
        add(--wider, [length_m](double s_m) { return 1.0 - std::exp(-s_m / length_m); });
        const StencilMatrix<double> matrix = screenedMatrix(cells, shore_m, isInside, length_m);
        multigrid.setMatrix(matrix);
        const Ended ended =
            conjugateGradients(cells, matrix, multigrid, isInside, u, tolerance, threads, progress);
        if (ended.wasStopped) {
            return {};
        }
        basis.shapes.push_back({u, wider});
    }
    wider = static_cast<int>(shelves_m.size());
    for (const double length_m : shelves_m) {
        add(--wider, [length_m](double s_m) {
            return 1.0 - std::exp(-(s_m / length_m) * (s_m / length_m));
        });
    }
    return basis;
}

} // namespace surface::solver
