// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/stretch.h"

#include "core/surface/solver/conjugate_gradients.h"
#include "core/surface/solver/energy.h"

#include <algorithm>

namespace surface::solver {

namespace {

constexpr double block_m = 25.0;
constexpr double membrane = 3.0;
constexpr double reach_m = 400.0;
constexpr double bending = 300000.0;
/// What the trend may miss by without being stretched: a share of its own depth and some metres.
constexpr double missShare = 0.2;
constexpr double miss_m = 0.3;
constexpr double leastStretch = -0.9;
constexpr double mostStretch = 4.0;
constexpr double tolerance = 2e-3;

} // namespace

Field stretched(const ActiveCells& cells, const Field& trend, const std::vector<Sample>& samples,
                int threads, const base::Progress& progress) {
    StencilMatrix<double> matrix(cells);
    addBending(cells, bending, matrix);
    addMembrane(cells, membrane, matrix);
    addSize(cells, membrane / (reach_m * reach_m), matrix);
    Field right(cells.places(), 0.0);
    const std::vector<double> thin = thinningWeights(samples, block_m);
    for (std::size_t i = 0; i < samples.size(); ++i) {
        const double m = samples[i].at.of(trend);
        if (m < 1e-3) {
            continue;
        }
        const double weight = thin[i] / (missShare * missShare * m * m + miss_m * miss_m);
        addPull(cells, samples[i].at, (samples[i].depth_m - m) / m, weight * m * m, matrix, right);
    }
    Multigrid multigrid(cells, threads);
    multigrid.setMatrix(matrix);
    Field e(cells.places(), 0.0);
    Field result = trend;
    const Ended ended =
        conjugateGradients(cells, matrix, multigrid, right, e, tolerance, threads, progress);
    if (!ended.wasStopped) {
        cells.forEach([&](std::size_t p, std::size_t) {
            result[p] = trend[p] * (1.0 + std::clamp(e[p], leastStretch, mostStretch));
        });
    }
    return result;
}

} // namespace surface::solver
