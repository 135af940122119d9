// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/trend_ground.h"

#include "core/surface/solver/stretch.h"
#include "core/surface/solver/trend.h"

#include <cmath>

namespace surface::solver {

namespace {

/// 0 at the shore, 1 far off, the other way round on land.
double rise(double shore_m) {
    constexpr double length_m = 20.0;
    return shore_m / (std::abs(shore_m) + length_m);
}

} // namespace

base::Result<TrendGround> TrendGround::of(const geo::Outline& outline, units::Length cell,
                                          int threads, const base::Progress& progress) {
    TrendGround made;
    made.threads_ = threads;
    base::Result<Ground> ground = groundOf(outline, cell, threads, progress);
    if (!ground) {
        return std::unexpected(ground.error());
    }
    made.ground_ = std::move(*ground);
    const ActiveCells& cells = made.ground_.cells;
    Field inside(cells.places(), 0.0);
    Field shore_m(cells.places(), 0.0);
    cells.forEach([&](std::size_t p, std::size_t) {
        inside[p] = made.ground_.shore_m[p] > 0.0 ? 1.0 : 0.0;
        shore_m[p] = std::abs(made.ground_.shore_m[p]);
    });
    made.basis_ = trendBasisOf(cells, shore_m, inside, threads, progress);
    if (made.basis_.shapes.empty()) {
        return std::unexpected(base::cancelled());
    }
    return made;
}

Field TrendGround::trendFrom(std::span<const soundings::KeptSounding> soundings,
                             std::span<const std::size_t> positions,
                             const base::Progress& progress) const {
    const std::vector<Sample> samples = mergedSamplesOf(ground_, soundings, positions);
    const Field trend = trendOf(ground_.cells, basis_, samples);
    return stretched(ground_.cells, trend, samples, threads_, progress);
}

Field TrendGround::onto(const Ground& fine, const Field& trend) const {
    const ActiveCells& cells = ground_.cells;
    Field ratio(cells.places(), 0.0);
    cells.forEach([&](std::size_t p, std::size_t) {
        const double shore_m = ground_.shore_m[p];
        // too near the shore the ratio of two small numbers says nothing
        ratio[p] = shore_m > 0.1 * cells.cell_m() ? trend[p] / rise(shore_m) : -1.0;
    });
    Field result(fine.cells.places(), 0.0);
    const int pad = ActiveCells::padding;
    for (const ActiveCells::Run& run : fine.cells.runs()) {
        for (int col = run.begin; col < run.end; ++col) {
            const std::size_t p = fine.cells.place(col, run.row);
            const auto at = footprintOf(cells, ground_.frame(),
                                        fine.frame().centre({col - pad, run.row - pad}));
            double sum = 0.0;
            double weights = 0.0;
            for (std::size_t k = 0; at && k < 4; ++k) {
                if (at->weights[k] > 0.0 && ratio[at->places[k]] >= 0.0) {
                    sum += at->weights[k] * ratio[at->places[k]];
                    weights += at->weights[k];
                }
            }
            if (weights > 0.0) {
                result[p] = sum / weights * rise(fine.shore_m[p]);
            }
        }
    }
    return result;
}

} // namespace surface::solver
