// SPDX-License-Identifier: GPL-3.0-or-later
// The trend from the outline, its shapes and its stretch, against their formulas and dense linear
// algebra.
#include "core/surface/solver/energy.h"
#include "core/surface/solver/stretch.h"
#include "core/surface/solver/trend.h"
#include "core/surface/solver/trend_basis.h"
#include "tests/core/surface/dense.h"
#include "tests/support/made_up_water.h"

#include <algorithm>
#include <cmath>
#include <random>
#include <utility>

#include <gtest/gtest.h>

namespace {

using surface::solver::ActiveCells;
using surface::solver::Field;
using surface::solver::Sample;
using surface::solver::TrendBasis;

/// A square water with the distance of each cell to its shore, and the shapes that follow.
struct Square {
    explicit Square(double half_m = 200.0)
        : water(support::madeUpWater(
              {{support::rectangle(-half_m, -half_m, half_m, half_m), {}}},
              [](geo::WaterPoint) { return 5.0; }, 10.0)),
          cells(ActiveCells::of(water.mask)), shore_m(cells.places(), 0.0),
          inside(cells.places(), 0.0) {
        for (const ActiveCells::Run& run : cells.runs()) {
            for (int col = run.begin; col < run.end; ++col) {
                const geo::WaterPoint p = water.mask.frame().centre(
                    {col - ActiveCells::padding, run.row - ActiveCells::padding});
                const std::size_t at = cells.place(col, run.row);
                const double off_m = half_m - std::max(std::abs(p.x_m), std::abs(p.y_m));
                shore_m[at] = std::abs(off_m);
                inside[at] = off_m > 0.0 ? 1.0 : 0.0;
            }
        }
        basis = surface::solver::trendBasisOf(cells, shore_m, inside, 1, base::Progress());
    }
    [[nodiscard]] Sample sample(geo::WaterPoint p, double depth_m) const {
        return {surface::solver::footprintOf(cells, water.mask.frame(), p).value(), p, depth_m};
    }
    support::MadeUpWater water;
    ActiveCells cells;
    Field shore_m;
    Field inside;
    TrendBasis basis;
};

TEST(TrendBasis, HasBanksThatFallAwayAtOnceAndShelvesThatDropLater) {
    const Square square;
    const std::array banks_m{8.0, 20.0, 50.0, 125.0, 312.0};
    const std::array shelves_m{10.0, 20.0, 40.0, 80.0, 160.0};
    ASSERT_EQ(square.basis.shapes.size(), 15U);
    square.cells.forEach([&](std::size_t p, std::size_t) {
        for (std::size_t k = 0; k < 5 && square.inside[p] > 0.0; ++k) {
            const double bank = 1.0 - std::exp(-square.shore_m[p] / banks_m[k]);
            const double shelf = 1.0 - std::exp(-std::pow(square.shore_m[p] / shelves_m[k], 2));
            ASSERT_NEAR(square.basis.shapes[2 * k].rise[p], bank, 1e-12);
            ASSERT_NEAR(square.basis.shapes[10 + k].rise[p], shelf, 1e-12);
        }
    });
    // the wider a shape, the sooner it is believed
    for (std::size_t k = 0; k < 5; ++k) {
        for (const std::size_t at : {2 * k, 2 * k + 1, 10 + k}) {
            EXPECT_EQ(square.basis.shapes[at].wider, 4 - static_cast<int>(k));
        }
    }
}

TEST(Trend, EquationsAreTheWeightedSumsOfAllPairs) {
    std::mt19937 random(4);
    std::uniform_real_distribution<double> any(0.0, 1.0);
    constexpr std::size_t n = 7;
    std::vector<Sample> samples(40);
    std::vector<double> values(samples.size() * n);
    std::vector<double> weights(samples.size());
    std::ranges::generate(values, [&] { return any(random); });
    std::ranges::generate(weights, [&] { return any(random); });
    for (Sample& sample : samples) {
        sample.depth_m = 10.0 * any(random);
    }
    const auto sums = surface::solver::normalEquationsOf(values, weights, samples);
    double weight = 0.0;
    for (const double one : weights) {
        weight += one;
    }
    EXPECT_NEAR(sums.weight, weight, 1e-12);
    for (std::size_t k = 0; k < n; ++k) {
        double c = 0.0;
        for (std::size_t i = 0; i < samples.size(); ++i) {
            c += weights[i] * values[i * n + k] * samples[i].depth_m;
        }
        EXPECT_NEAR(sums.c[k], c, 1e-10);
        for (std::size_t l = 0; l < n; ++l) {
            double g = 0.0;
            for (std::size_t i = 0; i < samples.size(); ++i) {
                g += weights[i] * values[i * n + k] * values[i * n + l];
            }
            EXPECT_NEAR(sums.g[k * n + l], g, 1e-11) << k << ", " << l;
        }
    }
}

// A metre for 40 m off the bank and then down to nine: sounded on one side, drawn on the other.
TEST(Trend, MakesAShelfAndThenADropWhereThatWasSounded) {
    const Square square;
    const auto bottom_m = [](double shore_m) {
        return 1.0 - std::exp(-shore_m / 8.0) +
               8.0 * (1.0 - std::exp(-std::pow(shore_m / 80.0, 2)));
    };
    std::vector<Sample> samples;
    for (double x_m = -195.0; x_m < 0.0; x_m += 3.0) {
        samples.push_back(square.sample({x_m, 0.0}, bottom_m(200.0 + x_m)));
    }
    const Field trend = surface::solver::trendOf(square.cells, square.basis, samples);
    square.cells.forEach([&](std::size_t p, std::size_t) {
        if (square.shore_m[p] > 10.0) {
            ASSERT_NEAR(trend[p], bottom_m(square.shore_m[p]), 0.35) << square.shore_m[p];
        }
    });
}

/// The stretch of `trend` by its formula: all numbers kept.
Field stretchedPlainly(const Square& square, const Field& trend,
                       const std::vector<Sample>& samples) {
    const ActiveCells& cells = square.cells;
    surface::solver::StencilMatrix<double> smooth(cells);
    surface::solver::addBending(cells, 300000.0, smooth);
    surface::solver::addMembrane(cells, 3.0, smooth);
    surface::solver::addSize(cells, 3.0 / (400.0 * 400.0), smooth);
    dense::Matrix a = dense::of(cells, smooth);
    dense::Vector b(cells.unknowns(), 0.0);
    const auto blockOf = [](const Sample& s) {
        return std::pair(std::floor(s.point.x_m / 25.0), std::floor(s.point.y_m / 25.0));
    };
    for (const Sample& s : samples) {
        const auto inBlock = std::ranges::count_if(
            samples, [&](const Sample& other) { return blockOf(other) == blockOf(s); });
        const double m = s.at.of(trend);
        const double v = 1.0 / (0.2 * 0.2 * m * m + 0.3 * 0.3) / static_cast<double>(inBlock);
        for (std::size_t j = 0; j < 4; ++j) {
            for (std::size_t k = 0; k < 4; ++k) {
                a[static_cast<std::size_t>(cells.unknownAt(s.at.places[j]))]
                 [static_cast<std::size_t>(cells.unknownAt(s.at.places[k]))] +=
                    v * m * m * s.at.weights[j] * s.at.weights[k];
            }
            b[static_cast<std::size_t>(cells.unknownAt(s.at.places[j]))] +=
                v * m * (s.depth_m - m) * s.at.weights[j];
        }
    }
    const dense::Vector e = dense::solved(std::move(a), std::move(b));
    Field result(cells.places(), 0.0);
    cells.forEach([&](std::size_t place, std::size_t unknown) {
        result[place] = trend[place] * (1.0 + std::clamp(e[unknown], -0.9, 4.0));
    });
    return result;
}

TEST(Stretch, IsTheSmoothFactorOfLeastEnergy) {
    const Square square(100.0);
    Field trend(square.cells.places(), 0.0);
    square.cells.forEach([&](std::size_t p, std::size_t) {
        trend[p] = 6.0 * (1.0 - std::exp(-square.shore_m[p] / 50.0));
    });
    // half as deep again in the west, ten times sounded in one block; two thirds of it in the east
    std::vector<Sample> samples;
    for (int k = 0; k < 10; ++k) {
        samples.push_back(square.sample({-60.0 + 0.5 * k, 3.0}, 5.0));
    }
    for (const double y_m : {-60.0, -20.0, 20.0, 60.0}) {
        samples.push_back(square.sample({-40.0, y_m}, 1.5 * 4.0));
        samples.push_back(square.sample({40.0, y_m}, 0.67 * 4.0));
    }
    const Field exact = stretchedPlainly(square, trend, samples);
    const Field found =
        surface::solver::stretched(square.cells, trend, samples, 1, base::Progress());
    double most = 0.0;
    square.cells.forEach([&](std::size_t p, std::size_t) {
        ASSERT_NEAR(found[p], exact[p], 0.01);
        most = std::max(most, std::abs(exact[p] - trend[p]));
    });
    EXPECT_GT(most, 0.5);
}

TEST(Trend, OfNoSampleIsNoDepth) {
    const Square square;
    const Field trend = surface::solver::trendOf(square.cells, square.basis, {});
    EXPECT_TRUE(std::ranges::all_of(trend, [](double depth_m) { return depth_m == 0.0; }));
}

} // namespace
