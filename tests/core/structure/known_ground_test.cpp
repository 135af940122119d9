// SPDX-License-Identifier: GPL-3.0-or-later
// Surfaces whose features are known by formula, at several cell sizes, turned against the grid, and
// under a tenth of a metre of noise: each kind where it is, within a cell, its area within a tenth.
#include "core/structure/find_structure.h"
#include "tests/support/made_up_water.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>

#include <gtest/gtest.h>

namespace {

using structure::Zone;
using structure::ZoneKind;
using structure::ZoneMap;
using support::MadeUpWater;

struct Ground {
    double cell_m = 5.0;
    double angle_deg = 0.0;
    double noise_m = 0.0;
};

void PrintTo(const Ground& g, std::ostream* out) {
    *out << "cell " << g.cell_m << " m, turned by " << g.angle_deg << ", noise " << g.noise_m;
}

class KnownGround : public testing::TestWithParam<Ground> {
protected:
    static constexpr double half_m = 300.0;

    [[nodiscard]] static geo::WaterPoint turned(geo::WaterPoint p) {
        const double a = GetParam().angle_deg * std::numbers::pi / 180.0;
        return {p.x_m * std::cos(a) - p.y_m * std::sin(a),
                p.x_m * std::sin(a) + p.y_m * std::cos(a)};
    }

    [[nodiscard]] static ZoneMap found(const support::Bottom& bottom) {
        const Ground g = GetParam();
        MadeUpWater water = support::madeUpWater(
            {{support::turned(support::rectangle(-half_m, -half_m, half_m, half_m), g.angle_deg),
              {}}},
            support::turned(bottom, g.angle_deg), g.cell_m);
        std::mt19937 random(31);
        std::normal_distribution<double> noise(0.0, 1.0);
        for (float& depth_m : water.depth.raw_m()) {
            depth_m = std::max(depth_m + static_cast<float>(g.noise_m * noise(random)), 0.0F);
        }
        base::Progress silent;
        return structure::findStructure(water.depth, water.mask, {}, contours::Bands(), {}, silent)
            .value();
    }

    [[nodiscard]] static std::vector<Zone> of(const ZoneMap& map, ZoneKind kind) {
        std::vector<Zone> out;
        std::copy_if(map.zones.begin(), map.zones.end(), std::back_inserter(out),
                     [kind](const Zone& z) { return z.kind == kind; });
        return out;
    }

    static void expectNear(geo::WaterPoint found, geo::WaterPoint known) {
        EXPECT_LT(geo::distance_m(found, turned(known)), std::sqrt(2.0) * GetParam().cell_m);
    }
};

double bell(geo::WaterPoint p, geo::WaterPoint middle, double sigma_m) {
    const double r = geo::distance_m(p, middle) / sigma_m;
    return std::exp(-0.5 * r * r);
}

TEST_P(KnownGround, PlaneHasNoFeature) {
    const ZoneMap map = found([](geo::WaterPoint p) { return 5.0 + 0.008 * p.x_m; });
    for (const Zone& zone : map.zones) {
        EXPECT_EQ(zone.kind, ZoneKind::flat) << zone.name;
    }
}

TEST_P(KnownGround, HumpIsOneHumpAndPitIsOneHole) {
    const geo::WaterPoint hump{-120.0, 60.0};
    const geo::WaterPoint pit{110.0, -70.0};
    const ZoneMap map = found([&](geo::WaterPoint p) {
        return 6.0 - 2.0 * bell(p, hump, 25.0) + 2.0 * bell(p, pit, 25.0);
    });
    ASSERT_EQ(of(map, ZoneKind::hump).size(), 1U);
    ASSERT_EQ(of(map, ZoneKind::hole).size(), 1U);
    expectNear(of(map, ZoneKind::hump)[0].middle, hump);
    expectNear(of(map, ZoneKind::hole)[0].middle, pit);
    // The two are each other's mirror image.
    const double hump_m2 = of(map, ZoneKind::hump)[0].area.inSquareMetres();
    EXPECT_NEAR(of(map, ZoneKind::hole)[0].area.inSquareMetres(), hump_m2, 0.1 * hump_m2);
}

TEST_P(KnownGround, ChannelIsATroughAlongItsLine) {
    const ZoneMap map =
        found([](geo::WaterPoint p) { return 4.0 + 2.0 * std::exp(-0.5 * p.x_m * p.x_m / 225.0); });
    const std::vector<Zone> troughs = of(map, ZoneKind::trough);
    ASSERT_EQ(troughs.size(), 1U);
    const double a = GetParam().angle_deg * std::numbers::pi / 180.0;
    const geo::WaterPoint m = troughs[0].middle;
    EXPECT_LT(std::fabs(m.x_m * std::cos(a) + m.y_m * std::sin(a)), 1.5 * GetParam().cell_m);
}

TEST_P(KnownGround, StepIsADropOffBetweenTwoLevelsOfKnownArea) {
    const ZoneMap map = found(
        [](geo::WaterPoint p) { return 3.0 + 5.0 * std::clamp(p.x_m / 40.0 + 0.5, 0.0, 1.0); });
    ASSERT_EQ(of(map, ZoneKind::dropOff).size(), 1U);
    ASSERT_EQ(of(map, ZoneKind::shelf).size(), 1U);
    const double known_m2 = (half_m - 20.0) * 2.0 * half_m;
    EXPECT_NEAR(of(map, ZoneKind::shelf)[0].area.inSquareMetres(), known_m2, 0.1 * known_m2);
    EXPECT_NEAR(of(map, ZoneKind::dropOff)[0].edgeLength.inMetres(), 2.0 * half_m, 0.1 * 600.0);
}

TEST_P(KnownGround, ConeWithATerraceHasItsTerraceBetweenTwoBanks) {
    // From the summit: a bank of 15 % from 30 to 60 m, a terrace at 5.5 m, a bank from 170 to 210
    // m.
    const ZoneMap map = found([](geo::WaterPoint p) {
        const double r_m = std::hypot(p.x_m, p.y_m);
        return 1.0 + 4.5 * std::clamp((r_m - 30.0) / 30.0, 0.0, 1.0) +
               6.0 * std::clamp((r_m - 170.0) / 40.0, 0.0, 1.0);
    });
    EXPECT_EQ(of(map, ZoneKind::dropOff).size(), 2U);
    const double known_m2 = std::numbers::pi * (170.0 * 170.0 - 60.0 * 60.0);
    double terrace_m2 = 0.0;
    for (const ZoneKind kind : {ZoneKind::shelf, ZoneKind::plateau}) {
        for (const Zone& zone : of(map, kind)) {
            terrace_m2 = std::max(terrace_m2, zone.area.inSquareMetres());
        }
    }
    EXPECT_NEAR(terrace_m2, known_m2, 0.1 * known_m2);
}

INSTANTIATE_TEST_SUITE_P(Grounds, KnownGround,
                         testing::Values(Ground{2.5, 0.0, 0.0}, Ground{5.0, 0.0, 0.0},
                                         Ground{8.0, 0.0, 0.0}, Ground{5.0, 20.0, 0.0},
                                         Ground{5.0, 45.0, 0.0}, Ground{2.5, 20.0, 0.1},
                                         Ground{5.0, 0.0, 0.1}, Ground{5.0, 20.0, 0.1}));

} // namespace
