// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/bottom_operator.h"
#include "core/surface/solver/conjugate_gradients.h"
#include "core/surface/solver/energy.h"
#include "core/surface/solver/samples.h"
#include "core/surface/solver/spikes.h"
#include "core/surface/solver/trend.h"
#include "core/surface/solver/trend_ground.h"
#include "core/surface/solver/trust_calibration.h"
#include "tests/core/surface/dense.h"
#include "tests/core/surface/tracks.h"

#include <cmath>
#include <random>

#include <gtest/gtest.h>

namespace {

using surface::solver::ActiveCells;
using surface::solver::ErrorGrowth;
using surface::solver::Field;
using surface::solver::Multigrid;
using Matrix = surface::solver::StencilMatrix<double>;

/// The gridding system of a ring-shaped water with a few pulls, and its cells.
struct System {
    System() {
        const support::MadeUpWater water = support::madeUpWater(
            {{support::circle({0.0, 0.0}, 200.0), {support::circle({40.0, 0.0}, 60.0)}}},
            [](geo::WaterPoint) { return 5.0; }, 10.0);
        cells = ActiveCells::of(water.mask);
        matrix = Matrix(cells);
        right.assign(cells.places(), 0.0);
        surface::solver::addBending(cells, 300.0, matrix);
        surface::solver::addMembrane(cells, 0.03, matrix);
        for (const geo::WaterPoint p : {geo::WaterPoint{-150.0, 0.0}, geo::WaterPoint{0.0, 150.0},
                                        geo::WaterPoint{120.0, -120.0}}) {
            const auto at = surface::solver::footprintOf(cells, water.mask.frame(), p);
            surface::solver::addPull(cells, at.value(), p.x_m / 50.0, 100.0, matrix, right);
        }
    }
    ActiveCells cells;
    Matrix matrix;
    Field right;
};

TEST(Solver, AgreesWithADirectSolution) {
    const System system;
    Multigrid multigrid(system.cells, 1);
    multigrid.setMatrix(system.matrix);
    Field x(system.cells.places(), 0.0);
    const base::Progress progress;
    const auto ended = surface::solver::conjugateGradients(system.cells, system.matrix, multigrid,
                                                           system.right, x, 1e-4, 1, progress);
    EXPECT_LT(ended.iterations, 30);
    const dense::Vector exact = dense::solved(dense::of(system.cells, system.matrix),
                                              dense::of(system.cells, system.right));
    system.cells.forEach([&](std::size_t place, std::size_t unknown) {
        ASSERT_NEAR(x[place], exact[unknown], 0.005);
    });
}

TEST(StencilMatrix, TimesAFieldIsTheSumOfItsNumbersTimesTheValuesAround) {
    const System system;
    std::mt19937 random(5);
    std::uniform_real_distribution<double> any(-1.0, 1.0);
    Field x(system.cells.places(), 0.0);
    system.cells.forEach([&](std::size_t p, std::size_t) { x[p] = any(random); });
    Field y(system.cells.places(), 0.0);
    surface::solver::multiply(system.cells, system.matrix, x, y, 1);
    const dense::Vector exact =
        dense::product(dense::of(system.cells, system.matrix), dense::of(system.cells, x));
    system.cells.forEach([&](std::size_t place, std::size_t unknown) {
        ASSERT_NEAR(y[place], exact[unknown], 1e-9);
    });
}

// One after the other from the north-west, three rows apart at once, and back the same way: the
// cycle is symmetric, as conjugate gradients need it to be.
TEST(Multigrid, CyclesAreSymmetric) {
    const System system;
    Multigrid multigrid(system.cells, 1);
    multigrid.setMatrix(system.matrix);
    std::mt19937 random(6);
    std::uniform_real_distribution<double> any(-1.0, 1.0);
    Field a(system.cells.places(), 0.0);
    Field b = a;
    system.cells.forEach([&](std::size_t p, std::size_t) {
        a[p] = any(random);
        b[p] = any(random);
    });
    const auto cycled = [&](const Field& residual) {
        const std::vector<float>& x = multigrid.cycle(residual);
        return Field(x.begin(), x.end());
    };
    const Field ofA = cycled(a);
    const Field ofB = cycled(b);
    double along = 0.0;
    double across = 0.0;
    double size = 0.0;
    system.cells.forEach([&](std::size_t p, std::size_t) {
        along += ofA[p] * b[p];
        across += a[p] * ofB[p];
        size += std::abs(ofA[p] * b[p]);
    });
    EXPECT_NEAR(along, across, 1e-4 * size);
}

TEST(BottomOperator, IsTheMatrixOfItsEnergyForAnyThreads) {
    const support::MadeUpWater water = support::madeUpWater(
        {{support::circle({0.0, 0.0}, 400.0), {support::circle({40.0, 0.0}, 60.0)}}},
        [](geo::WaterPoint) { return 5.0; }, 4.0);
    const ActiveCells cells = ActiveCells::of(water.mask);
    std::mt19937 random(11);
    std::uniform_real_distribution<double> any(-1.0, 1.0);
    Field x(cells.places(), 0.0);
    const std::vector<float> none(cells.places(), 0.0F);
    surface::solver::ContourDirections contours{none, none, none};
    cells.forEach([&](std::size_t p, std::size_t) {
        const double angle = 3.0 * any(random);
        const double sure = p % 7 == 0 ? 0.0 : 0.5 + 0.5 * any(random);
        x[p] = 10.0 * any(random);
        contours.xx[p] = static_cast<float>(sure * std::cos(angle) * std::cos(angle));
        contours.xy[p] = static_cast<float>(sure * std::cos(angle) * std::sin(angle));
        contours.yy[p] = static_cast<float>(sure * std::sin(angle) * std::sin(angle));
    });
    Matrix matrix(cells);
    Field right(cells.places(), 0.0);
    surface::solver::BottomOperator bottom(cells);
    surface::solver::addBending(cells, 300.0, matrix);
    surface::solver::addMembrane(cells, 0.03, matrix);
    surface::solver::addContourBending(cells, contours, 9000.0, matrix);
    bottom.setBends(300.0, 0.03, 9000.0, &contours);
    for (int k = 0; k < 50; ++k) {
        const geo::WaterPoint p{350.0 * any(random), 15.0 * any(random) + 150.0};
        const auto at = surface::solver::footprintOf(cells, water.mask.frame(), p);
        surface::solver::addPull(cells, at.value(), 3.0, 100.0, matrix, right);
        bottom.addPull(at.value(), 100.0);
    }
    Field wanted(cells.places(), 0.0);
    surface::solver::multiply(cells, matrix, x, wanted, 1);
    for (const int threads : {1, 2, 3}) {
        Field product(cells.places(), 0.0);
        bottom.multiply(x, product, threads);
        cells.forEach([&](std::size_t p, std::size_t) {
            ASSERT_NEAR(product[p], wanted[p], 1e-9 * 9000.0 * 10.0) << threads << " threads";
        });
    }
}

TEST(Energy, BendingOfAPlaneIsNothing) {
    const System system;
    Matrix bending(system.cells);
    surface::solver::addBending(system.cells, 1.0, bending);
    Field plane(system.cells.places(), 0.0);
    for (const ActiveCells::Run& run : system.cells.runs()) {
        for (int col = run.begin; col < run.end; ++col) {
            plane[system.cells.place(col, run.row)] = 3.0 + 0.5 * col - 0.25 * run.row;
        }
    }
    Field product(system.cells.places(), 0.0);
    surface::solver::multiply(system.cells, bending, plane, product, 1);
    system.cells.forEach(
        [&](std::size_t place, std::size_t) { ASSERT_NEAR(product[place], 0.0, 1e-12); });
}

TEST(Energy, OnlyBendsAlongTheContourCostExtra) {
    // a gutter along x: straight along its contours, bent across them
    const System system;
    Matrix along(system.cells);
    const std::vector<float> none(system.cells.places(), 0.0F);
    const surface::solver::ContourDirections contours{
        std::vector<float>(system.cells.places(), 1.0F), none, none};
    surface::solver::addContourBending(system.cells, contours, 1.0, along);
    Field gutter(system.cells.places(), 0.0);
    Field crossed(system.cells.places(), 0.0);
    for (const ActiveCells::Run& run : system.cells.runs()) {
        for (int col = run.begin; col < run.end; ++col) {
            gutter[system.cells.place(col, run.row)] = 0.1 * run.row * run.row;
            crossed[system.cells.place(col, run.row)] = 0.1 * col * col;
        }
    }
    const auto energyOf = [&](const Field& field) {
        Field product(system.cells.places(), 0.0);
        surface::solver::multiply(system.cells, along, field, product, 1);
        double sum = 0.0;
        system.cells.forEach(
            [&](std::size_t place, std::size_t) { sum += field[place] * product[place]; });
        return sum;
    };
    EXPECT_NEAR(energyOf(gutter), 0.0, 1e-9);
    EXPECT_GT(energyOf(crossed), 1e-3);
}

TEST(Trend, NonNegativeLeastSquaresHoldsTheWrongSignAtNothing) {
    // minimum of (x0 - 2)^2 + (x1 + 1)^2 with both at least 0 is (2, 0)
    const auto x = surface::solver::nonNegativeLeastSquares({1.0, 0.0, 0.0, 1.0}, {2.0, -1.0});
    EXPECT_NEAR(x[0], 2.0, 1e-6);
    EXPECT_DOUBLE_EQ(x[1], 0.0);
}

// Fifty soundings where the boat lay count as much as one elsewhere: each block of 25 m has one
// voice. With a single shape of 1 the trend is the mean of the blocks.
TEST(Trend, HearsEachBlockOnceHoweverDenselySounded) {
    const support::MadeUpWater water = support::madeUpWater(
        {{support::rectangle(-20.0, -20.0, 260.0, 260.0), {}}}, [](geo::WaterPoint) { return 3.0; },
        10.0);
    const ActiveCells cells = ActiveCells::of(water.mask);
    std::vector<surface::solver::Sample> samples;
    const auto sound = [&](geo::WaterPoint p, double depth_m) {
        const auto at = surface::solver::footprintOf(cells, water.mask.frame(), p);
        samples.push_back({at.value(), p, depth_m});
    };
    for (int k = 0; k < 50; ++k) {
        sound({8.0 + 0.1 * k, 12.0}, 3.0);
    }
    sound({60.0, 60.0}, 3.04);
    sound({110.0, 10.0}, 3.04);
    const surface::solver::TrendBasis one{{{Field(cells.places(), 1.0), 0}}};
    const Field trend = surface::solver::trendOf(cells, one, samples);
    cells.forEach([&](std::size_t place, std::size_t) {
        EXPECT_NEAR(trend[place], (3.0 + 2.0 * 3.04) / 3.0, 0.002);
    });
}

TEST(Spikes, AreFoundOnASlopeAndADropOffIsKept) {
    std::vector<soundings::KeptSounding> track;
    for (int i = 0; i < 60; ++i) { // 3 m flat, a bank of 1 in 3, then 9 m flat
        const double x_m = 2.0 * i;
        track.push_back(tracks::at({x_m, 0.0}, std::clamp(3.0 + (x_m - 50.0) / 3.0, 3.0, 9.0)));
    }
    EXPECT_TRUE(surface::solver::spikesIn(track).empty());
    track[30].depth_m += 2.0;
    EXPECT_EQ(surface::solver::spikesIn(track), std::vector<std::size_t>{30});
}

/// Errors that grow with distance and with the unevenness of the bottom.
class MadeUpErrors {
public:
    explicit MadeUpErrors(unsigned seed) : random_(seed) {}

    ErrorGrowth::Observation next() {
        const double d_m = distance_(random_);
        const double uneven = unevenness_(random_);
        const double error_m = normal_(random_) * 2.0 * uneven * std::sqrt(d_m);
        return {{d_m, uneven, 0.0}, std::abs(error_m)};
    }
    std::vector<ErrorGrowth::Observation> many(int count) {
        std::vector<ErrorGrowth::Observation> made;
        std::generate_n(std::back_inserter(made), count, [this] { return next(); });
        return made;
    }

private:
    std::mt19937 random_;
    std::uniform_real_distribution<double> distance_{1.0, 60.0};
    std::uniform_real_distribution<double> unevenness_{0.02, 0.3};
    std::normal_distribution<double> normal_{0.0, 1.0};
};

double coveredShare(const ErrorGrowth& growth,
                    const std::vector<ErrorGrowth::Observation>& observations) {
    const auto covered = std::ranges::count_if(
        observations, [&](const auto& o) { return o.error_m <= growth.halfWidth_m(o.facts); });
    return static_cast<double>(covered) / static_cast<double>(observations.size());
}

TEST(ErrorGrowth, CoversNineteenInTwentyOfErrorsMadeTheSameWay) {
    for (const unsigned seed : {7U, 8U, 9U}) {
        SCOPED_TRACE(testing::Message() << "seed " << seed);
        MadeUpErrors errors(seed);
        const ErrorGrowth growth = ErrorGrowth::from(errors.many(4000), 0.02);
        const auto later = errors.many(4000);
        EXPECT_NEAR(coveredShare(growth, later), 0.95, 0.015);
        std::vector<ErrorGrowth::Observation> rough;
        std::ranges::copy_if(later, std::back_inserter(rough),
                             [](const auto& o) { return o.facts.unevenness > 0.2; });
        EXPECT_NEAR(coveredShare(growth, rough), 0.95, 0.03) << "where the bottom is uneven";
        EXPECT_GT(growth.halfWidth_m({200.0, 0.1, 0.0}), growth.halfWidth_m({60.0, 0.1, 0.0}));
    }
}

TEST(ErrorGrowth, AllowsForPositionsOnASlopeEvenAtASounding) {
    MadeUpErrors errors(3);
    const ErrorGrowth growth = ErrorGrowth::from(errors.many(500), 0.08);
    EXPECT_GE(growth.halfWidth_m({0.0, 0.01, 0.0}), 1.96 * 0.08);
    EXPECT_GE(growth.halfWidth_m({0.0, 0.01, 0.5}), 1.0);
}

TEST(ErrorGrowth, IsWideWhereNothingCanBeHeldOut) {
    const ErrorGrowth growth = ErrorGrowth::from({}, 0.08);
    EXPECT_GT(growth.halfWidth_m({100.0, 0.1, 0.05}), 5.0);
    EXPECT_GT(growth.halfWidth_m({400.0, 0.1, 0.05}), growth.halfWidth_m({100.0, 0.1, 0.05}));
}

TEST(TrendGround, BetweenCoarseCellsTheBankRisesByHalfInTwentyMetres) {
    // A trend of d / (d + 20 m) times 6 m at a distance d from the shore is the same on fine cells,
    // also nearer to the shore than the middle of any coarse cell.
    const support::MadeUpWater water = support::madeUpWater(
        {{support::rectangle(0.0, 0.0, 400.0, 240.0), {}}}, [](geo::WaterPoint) { return 5.0; },
        10.0);
    const base::Progress silent;
    const auto coarse =
        surface::solver::TrendGround::of(water.outline, units::Length::metres(40.0), 1, silent);
    const auto fine =
        surface::solver::groundOf(water.outline, units::Length::metres(4.0), 1, silent);
    ASSERT_TRUE(coarse && fine);
    const auto bank_m = [](double shore_m) { return 6.0 * shore_m / (shore_m + 20.0); };
    Field trend(coarse->ground().cells.places(), 0.0);
    coarse->ground().cells.forEach(
        [&](std::size_t p, std::size_t) { trend[p] = bank_m(coarse->ground().shore_m[p]); });
    const Field finer = coarse->onto(*fine, trend);
    std::size_t compared = 0;
    fine->cells.forEach([&](std::size_t p, std::size_t) {
        if (fine->shore_m[p] > 0.0 && finer[p] != 0.0) {
            EXPECT_NEAR(finer[p], bank_m(fine->shore_m[p]), 1e-6) << fine->shore_m[p];
            ++compared;
        }
    });
    EXPECT_GT(compared, 5000U);
}

} // namespace
