// SPDX-License-Identifier: GPL-3.0-or-later
// Volumes, areas and shore numbers against closed formulas and published tables.
#include "core/surface/measure_water.h"

#include "tests/support/made_up_water.h"

#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

namespace {

surface::Hypsography measured(const support::MadeUpWater& water, double step_m = 1.0) {
    base::Progress progress;
    surface::MeasureSettings settings;
    settings.step = units::Length::metres(step_m);
    return surface::measureWater(water.depth, water.mask, water.outline, settings, progress)
        .value();
}

// Exact solid: cone R = 100 m, h = 9 m: pi R^2 h / 3 = 94247.780 m3; volume development 1.
TEST(VolumeReference, ConeOf100MetresBy9) {
    const surface::Hypsography form = measured(support::cone(100.0, 9.0, 2.5));
    EXPECT_NEAR(form.volume.inCubicMetres(), 94247.780, 0.005 * 94247.780);
    EXPECT_NEAR(form.volumeDevelopment, 1.0, 0.03);
}

// Exact solid: paraboloid R = 100 m, h = 9 m: pi R^2 h / 2 = 141371.669 m3; volume development 1.5.
TEST(VolumeReference, ParaboloidOf100MetresBy9) {
    const surface::Hypsography form = measured(support::madeUpWater(
        {{support::circle({0.0, 0.0}, 100.0), {}}},
        [](geo::WaterPoint p) { return 9.0 * (1.0 - (p.x_m * p.x_m + p.y_m * p.y_m) / 1e4); },
        2.5));
    EXPECT_NEAR(form.volume.inCubicMetres(), 141371.669, 0.005 * 141371.669);
    EXPECT_NEAR(form.volumeDevelopment, 1.5, 0.01);
}

// Shore development L / (2 sqrt(pi A)) (Hutchinson 1957): circle 1, square 1.128379, rectangle of
// 1 by 4 1.410474, computed from the formula.
TEST(VolumeReference, ShoreDevelopmentOfPlainFigures) {
    const auto developmentOf = [](const geo::Ring& ring) {
        return measured(support::madeUpWater(
                            {{ring, {}}}, [](geo::WaterPoint) { return 3.0; }, 5.0))
            .shoreDevelopment;
    };
    EXPECT_NEAR(developmentOf(support::circle({0.0, 0.0}, 200.0, 720)), 1.0, 1e-4);
    EXPECT_NEAR(developmentOf(support::rectangle(0.0, 0.0, 200.0, 200.0)), 1.128379, 1e-6);
    EXPECT_NEAR(developmentOf(support::rectangle(0.0, 0.0, 400.0, 100.0)), 1.410474, 1e-6);
}

// Ice Lake, Minnesota (Water on the Web, University of Minnesota Duluth, NRRI): hectares at the
// tops of layers of 1 m, volume in all 11.6e5 m3. A round water with the published areas, straight
// between them, must come to the same volume.
TEST(VolumeReference, IceLakeMinnesota) {
    constexpr std::array<double, 17> areas_ha{16.6, 15.4, 14.2,  13.0,  11.8, 10.7,
                                              9.49, 8.30, 7.11,  5.93,  4.75, 3.57,
                                              2.38, 1.20, 0.060, 0.029, 0.0};
    const auto radiusAt_m = [&](std::size_t k) {
        return std::sqrt(areas_ha[k] * 1e4 / std::numbers::pi);
    };
    const support::MadeUpWater water = support::madeUpWater(
        {{support::circle({0.0, 0.0}, radiusAt_m(0), 720), {}}},
        [&](geo::WaterPoint p) {
            const double radius_m = std::hypot(p.x_m, p.y_m);
            for (std::size_t k = 0; k + 1 < areas_ha.size(); ++k) {
                if (radius_m > radiusAt_m(k + 1)) {
                    return static_cast<double>(k) +
                           (radiusAt_m(k) - radius_m) / (radiusAt_m(k) - radiusAt_m(k + 1));
                }
            }
            return 16.0;
        },
        2.0);
    const surface::Hypsography form = measured(water);
    EXPECT_NEAR(form.volume.inCubicMetres(), 11.6e5, 0.05e5);
    for (std::size_t k = 0; k < 13; ++k) {
        EXPECT_NEAR(form.steps[k].area.inHectares(), areas_ha[k], 0.01 * areas_ha[k] + 0.02) << k;
    }
}

} // namespace
