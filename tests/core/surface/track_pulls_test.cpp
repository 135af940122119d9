// SPDX-License-Identifier: GPL-3.0-or-later
// Soundings whose positions drift along the track, against the covariance written out.
#include "core/surface/solver/bottom.h"
#include "core/surface/solver/ground.h"
#include "core/surface/solver/track_pulls.h"
#include "core/surface/solver/trend_ground.h"
#include "tests/core/surface/dense.h"
#include "tests/core/surface/tracks.h"

#include <cmath>
#include <numeric>
#include <optional>
#include <random>
#include <utility>

#include <gtest/gtest.h>

namespace {

using surface::solver::ActiveCells;
using surface::solver::Field;
using surface::solver::PositionDrift;
using surface::solver::Sample;
using surface::solver::TrackPull;
using surface::solver::TrackPulls;

/// Three passes over a water, pulled by chance.
struct Tracks {
    explicit Tracks(unsigned seed)
        : water(support::madeUpWater(
              {{support::rectangle(-100.0, -100.0, 100.0, 100.0), {}}},
              [](geo::WaterPoint) { return 5.0; }, 10.0)),
          cells(ActiveCells::of(water.mask)) {
        std::mt19937 random(seed);
        std::uniform_real_distribution<double> any(-1.0, 1.0);
        for (const double y_m : {-60.0, 0.0, 55.0}) {
            double x_m = -80.0 + 5.0 * any(random);
            while (x_m < 80.0) {
                const geo::WaterPoint p{x_m, y_m + 2.0 * any(random)};
                samples.push_back(
                    {surface::solver::footprintOf(cells, water.mask.frame(), p).value(), p, 5.0});
                pulls.push_back({20.0 + 19.0 * any(random), 0.4 * any(random), 0.4 * any(random)});
                x_m += 6.0 + 5.9 * any(random);
            }
        }
        field.assign(cells.places(), 0.0);
        cells.forEach([&](std::size_t p, std::size_t) { field[p] = 10.0 * any(random); });
    }
    /// P' N^-1 values, N = S + G C G' with all its numbers.
    [[nodiscard]] Field weighedPlainly(const dense::Vector& values,
                                       const PositionDrift& drift) const {
        const std::size_t n = samples.size();
        dense::Matrix covariance = dense::zeros(n);
        for (std::size_t i = 0; i < n; ++i) {
            double sailed_m = 0.0;
            for (std::size_t j = i; j < n; ++j) {
                sailed_m += j > i ? geo::distance_m(samples[j - 1].point, samples[j].point) : 0.0;
                covariance[i][j] = covariance[j][i] =
                    drift.deviation_m * drift.deviation_m * std::exp(-sailed_m / drift.reach_m) *
                    (pulls[i].east * pulls[j].east + pulls[i].north * pulls[j].north);
            }
            covariance[i][i] += 1.0 / pulls[i].weight;
        }
        const dense::Vector weighed = dense::solved(covariance, values);
        Field result(cells.places(), 0.0);
        for (std::size_t i = 0; i < n; ++i) {
            for (std::size_t k = 0; k < 4; ++k) {
                result[samples[i].at.places[k]] += samples[i].at.weights[k] * weighed[i];
            }
        }
        return result;
    }
    [[nodiscard]] dense::Vector valuesOf(const Field& x) const {
        dense::Vector values;
        for (const Sample& sample : samples) {
            values.push_back(sample.at.of(x));
        }
        return values;
    }
    support::MadeUpWater water;
    ActiveCells cells;
    std::vector<Sample> samples;
    std::vector<TrackPull> pulls;
    Field field;
};

void expectNear(const Field& found, const Field& wanted) {
    for (std::size_t p = 0; p < found.size(); ++p) {
        ASSERT_NEAR(found[p], wanted[p], 1e-8 * (1.0 + std::abs(wanted[p])));
    }
}

TEST(TrackPulls, AreTheInverseOfTheWholeCovariance) {
    for (const unsigned seed : {1U, 2U, 3U, 4U, 5U}) {
        SCOPED_TRACE(testing::Message() << "seed " << seed);
        const Tracks tracks(seed);
        for (const PositionDrift drift :
             {PositionDrift{0.8, 35.0}, PositionDrift{3.0, 200.0}, PositionDrift{0.0, 35.0}}) {
            TrackPulls pulls;
            pulls.set(tracks.samples, tracks.pulls, drift);
            Field product(tracks.cells.places(), 0.0);
            pulls.addTimes(tracks.field, product);
            expectNear(product, tracks.weighedPlainly(tracks.valuesOf(tracks.field), drift));
            dense::Vector values;
            for (const Sample& sample : tracks.samples) {
                values.push_back(0.1 * sample.point.x_m);
            }
            Field right(tracks.cells.places(), 0.0);
            pulls.addRight(values, right);
            expectNear(right, tracks.weighedPlainly(values, drift));
        }
    }
}

TEST(TrackPulls, OfASoundingOnItsOwnIsLessByWhatItsPositionDoesToItsDepth) {
    Tracks tracks(7);
    tracks.samples.resize(1);
    TrackPulls pulls;
    pulls.set(tracks.samples, {{100.0, 0.3, 0.4}}, {0.8, 35.0});
    Field right(tracks.cells.places(), 0.0);
    pulls.addRight({1.0}, right);
    double sum = 0.0;
    for (const double value : right) {
        sum += value;
    }
    EXPECT_NEAR(sum, 1.0 / (0.01 + 0.64 * 0.25), 1e-9);
}

TEST(TrackPulls, TwiceAtOnePlaceIsStillANumber) {
    Tracks tracks(8);
    tracks.samples = {tracks.samples.front(), tracks.samples.front(), tracks.samples.front()};
    TrackPulls pulls;
    pulls.set(tracks.samples, {{100.0, 0.3, 0.4}, {100.0, 0.3, 0.4}, {0.0, 0.3, 0.4}}, {0.8, 35.0});
    Field right(tracks.cells.places(), 0.0);
    pulls.addRight({1.0, 1.0, 1.0}, right);
    double sum = 0.0;
    for (const double value : right) {
        sum += value;
    }
    EXPECT_NEAR(sum, 1.0 / (0.005 + 0.64 * 0.25), 0.02);
}

/// Depths of a bank, 1 in 3, with a ledge that winds along it.
double bank_m(geo::WaterPoint p) {
    return 12.0 + p.y_m / 3.0 + 0.8 * std::sin((p.y_m + 6.0 * std::sin(p.x_m / 45.0)) / 12.0);
}

/// The bank as drawn from these soundings, on cells of 5 m.
struct Drawn {
    surface::solver::Ground ground;
    surface::solver::Bottom bottom;
};

Drawn drawnFrom(const support::MadeUpWater& water,
                const std::vector<soundings::KeptSounding>& soundings, const PositionDrift& drift) {
    std::vector<std::size_t> positions(soundings.size());
    std::iota(positions.begin(), positions.end(), 0U);
    const base::Progress silent;
    auto ground =
        surface::solver::groundOf(water.outline, units::Length::metres(5.0), 1, silent).value();
    const auto trendGround =
        surface::solver::TrendGround::of(water.outline, units::Length::metres(10.0), 1, silent)
            .value();
    surface::solver::BottomSettings settings;
    settings.threads = 1;
    settings.stiffness = 30.0; // what such a ledge asks for
    settings.drift = drift;
    surface::solver::BottomDrawer drawer(
        ground.cells, surface::solver::shorePullsOf(water.outline, ground.cells, ground.frame()),
        1);
    auto bottom = drawer.draw(
        trendGround.onto(ground, trendGround.trendFrom(soundings, positions, silent)),
        surface::solver::samplesOf(ground, soundings, positions), settings, std::nullopt, silent);
    return {std::move(ground), std::move(bottom)};
}

/// Under the bank, between two shores.
support::MadeUpWater bankWater() {
    return support::madeUpWater({{support::rectangle(-150.0, -30.0, 150.0, 90.0), {}}}, bank_m,
                                5.0);
}

/// Root mean square error of the bank as drawn from tracks that drift by 1.5 m an axis.
double missOf_m(const PositionDrift& drift, unsigned seed) {
    const support::MadeUpWater water = bankWater();
    std::vector<soundings::KeptSounding> soundings = tracks::lines(water, 10.0, 3.0, 0.05, seed);
    std::mt19937 random(seed);
    std::normal_distribution<double> normal(0.0, 1.0);
    const double alike = std::exp(-3.0 / 35.0);
    double east_m = 0.0;
    double north_m = 0.0;
    for (soundings::KeptSounding& s : soundings) {
        east_m = alike * east_m + 1.5 * std::sqrt(1.0 - alike * alike) * normal(random);
        north_m = alike * north_m + 1.5 * std::sqrt(1.0 - alike * alike) * normal(random);
        s.x_m += east_m;
        s.y_m += north_m;
    }
    const auto [ground, bottom] = drawnFrom(water, soundings, drift);
    double squares = 0.0;
    double count = 0.0;
    for (const ActiveCells::Run& run : ground.cells.runs()) {
        for (int col = run.begin; col < run.end; ++col) {
            const geo::WaterPoint p =
                ground.frame().centre({col - ActiveCells::padding, run.row - ActiveCells::padding});
            if (std::abs(p.x_m) < 130.0 && p.y_m > -10.0 && p.y_m < 70.0) {
                const double off_m = bottom.depth_m[ground.cells.place(col, run.row)] - bank_m(p);
                squares += off_m * off_m;
                count += 1.0;
            }
        }
    }
    return std::sqrt(squares / count);
}

TEST(TrackPulls, ABankSoundedByDriftingTracksIsDrawnNearerToTheTruth) {
    double with = 0.0;
    double without = 0.0;
    for (const unsigned seed : {1U, 2U, 3U, 4U, 5U, 6U}) {
        with += std::log(missOf_m({.deviation_m = 0.8, .reach_m = 35.0}, seed));
        without += std::log(missOf_m({.deviation_m = 0.0, .reach_m = 35.0}, seed));
    }
    EXPECT_LT(std::exp((with - without) / 6.0), 0.95);
}

// By hand with a lead line, each far from the one before: no track, and nothing drifts along it.
TEST(TrackPulls, LoneSoundingsAreBelievedAsTheyAre) {
    const support::MadeUpWater water = bankWater();
    const auto soundings = tracks::lines(water, 40.0, 50.0);
    ASSERT_GT(soundings.size(), 12U);
    const Drawn with = drawnFrom(water, soundings, {.deviation_m = 0.8, .reach_m = 35.0});
    const Drawn without = drawnFrom(water, soundings, {.deviation_m = 0.0, .reach_m = 35.0});
    EXPECT_EQ(with.bottom.depth_m, without.bottom.depth_m);
}

} // namespace
