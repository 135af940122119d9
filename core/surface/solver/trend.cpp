// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/trend.h"

#include <algorithm>
#include <cmath>

namespace surface::solver {

namespace {

constexpr double block_m = 25.0;
constexpr double huber = 1.5;
constexpr int rounds = 6;
/// A little pull to 0 for the widest shapes, as a share of the soundings, `narrower` times as much
/// for each narrower length: where soundings are too few to tell, the gentle bank is taken.
constexpr double ridge = 1e-4;
constexpr double narrower = 2.5;

/// 1.4826 x the median of |values|.
double robustSpread(std::vector<double> values) {
    for (double& value : values) {
        value = std::abs(value);
    }
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return 1.4826 * *middle;
}

} // namespace

std::vector<double> nonNegativeLeastSquares(const std::vector<double>& g,
                                            const std::vector<double>& c) {
    constexpr int sweeps = 4000;
    const std::size_t n = c.size();
    std::vector<double> x(n, 0.0);
    for (int sweep = 0; sweep < sweeps; ++sweep) {
        double moved = 0.0;
        for (std::size_t i = 0; i < n; ++i) {
            if (!(g[i * n + i] > 0.0)) {
                continue;
            }
            double rest = c[i];
            for (std::size_t j = 0; j < n; ++j) {
                rest -= g[i * n + j] * x[j];
            }
            const double next = std::max(0.0, x[i] + rest / g[i * n + i]);
            moved = std::max(moved, std::abs(next - x[i]));
            x[i] = next;
        }
        if (moved < 1e-6) {
            break;
        }
    }
    return x;
}

NormalEquations normalEquationsOf(const std::vector<double>& values,
                                  const std::vector<double>& weights,
                                  const std::vector<Sample>& samples) {
    const std::size_t n = samples.empty() ? 0 : values.size() / samples.size();
    NormalEquations sums{std::vector<double>(n * n, 0.0), std::vector<double>(n, 0.0), 0.0};
    for (std::size_t i = 0; i < samples.size(); ++i) {
        const double* own = values.data() + i * n;
        sums.weight += weights[i];
        for (std::size_t k = 0; k < n; ++k) {
            const double weighted = weights[i] * own[k];
            sums.c[k] += weighted * samples[i].depth_m;
            for (std::size_t l = 0; l <= k; ++l) {
                sums.g[k * n + l] += weighted * own[l];
            }
        }
    }
    for (std::size_t k = 0; k < n; ++k) {
        for (std::size_t l = 0; l < k; ++l) {
            sums.g[l * n + k] = sums.g[k * n + l];
        }
    }
    return sums;
}

Field trendOf(const ActiveCells& cells, const TrendBasis& basis,
              const std::vector<Sample>& samples) {
    const std::size_t n = basis.shapes.size();
    const std::size_t count = samples.size();
    const std::vector<double> thin = thinningWeights(samples, block_m);
    std::vector<double> values(count * n);
    for (std::size_t i = 0; i < count; ++i) {
        for (std::size_t k = 0; k < n; ++k) {
            values[i * n + k] = samples[i].at.of(basis.shapes[k].rise);
        }
    }
    std::vector<double> weights = thin;
    std::vector<double> x(n, 0.0);
    std::vector<double> errors(count);
    for (int round = 0; round < rounds && count > 0; ++round) {
        NormalEquations sums = normalEquationsOf(values, weights, samples);
        for (std::size_t k = 0; k < n; ++k) {
            sums.g[k * n + k] += ridge * sums.weight * std::pow(narrower, basis.shapes[k].wider);
        }
        x = nonNegativeLeastSquares(sums.g, sums.c);
        for (std::size_t i = 0; i < count; ++i) {
            errors[i] = -samples[i].depth_m;
            for (std::size_t k = 0; k < n; ++k) {
                errors[i] += x[k] * values[i * n + k];
            }
        }
        const double limit = huber * std::max(robustSpread(errors), 0.05);
        for (std::size_t i = 0; i < count; ++i) {
            weights[i] = thin[i] * std::min(1.0, limit / std::max(std::abs(errors[i]), 1e-9));
        }
    }
    Field trend(cells.places(), 0.0);
    cells.forEach([&](std::size_t p, std::size_t) {
        for (std::size_t k = 0; k < n; ++k) {
            trend[p] += x[k] * basis.shapes[k].rise[p];
        }
    });
    return trend;
}

} // namespace surface::solver
