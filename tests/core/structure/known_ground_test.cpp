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

using geo::WaterPoint;
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

WaterPoint turnedBy(WaterPoint p, double angle_deg) {
    const double a = angle_deg * std::numbers::pi / 180.0;
    return {p.x_m * std::cos(a) - p.y_m * std::sin(a), p.x_m * std::sin(a) + p.y_m * std::cos(a)};
}

class KnownGround : public testing::TestWithParam<Ground> {
protected:
    static constexpr double half_m = 300.0;

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

    /// A place of the map on the ground as it was before it was turned.
    [[nodiscard]] static WaterPoint asKnown(WaterPoint p) {
        return turnedBy(p, -GetParam().angle_deg);
    }

    static void expectNear(WaterPoint found, WaterPoint known) {
        EXPECT_LT(geo::distance_m(asKnown(found), known), std::sqrt(2.0) * GetParam().cell_m);
    }

    /// Within a tenth; noise moves the border of a feature of fifty cells by some of them more.
    static void expectArea(const Zone& zone, double known_m2) {
        const double share = GetParam().noise_m > 0.0 ? 0.15 : 0.1;
        EXPECT_NEAR(zone.area.inSquareMetres(), known_m2, share * known_m2) << zone.name;
    }

    /// That lines run, on the mean over their points, within a cell of where `value` (metres) has
    /// to be `known_m`.
    template <class Value>
    static void expectAlong(const std::vector<geo::Path>& lines, Value value, double known_m) {
        double off_m = 0.0;
        double points = 0.0;
        for (const geo::Path& line : lines) {
            for (const WaterPoint p :
                 geo::densified(line, GetParam().cell_m)) { // long straight bits count for more
                off_m += std::fabs(value(asKnown(p)) - known_m);
                points += 1.0;
            }
        }
        ASSERT_GT(points, 0.0);
        EXPECT_LT(off_m / points, GetParam().cell_m) << "at " << known_m;
    }
};

double bell(WaterPoint p, WaterPoint middle, double sigma_m) {
    const double r = geo::distance_m(p, middle) / sigma_m;
    return std::exp(-0.5 * r * r);
}

/// The ground by its formula alone, without cells: where it stands out on both sides.
class Formula {
public:
    /// \param sign 1 for high ground, -1 for low. \param basin what low ground must have over the
    /// floor of a basin, as a slope.
    Formula(support::Bottom bottom, double sign, double basin = 0.0)
        : bottom_(std::move(bottom)), sign_(sign), basin_(basin) {}

    /// Square metres of known ground, up to 100 m to the west and the east of `middle_m`, that
    /// stand out by half of `high_m` along one of the eight axes of a grid turned against it.
    [[nodiscard]] double area_m2(double high_m, double middle_m) const {
        constexpr double step_m = 1.5;
        double sum_m2 = 0.0;
        // askew, so that no border runs along the places looked at
        for (double x_m = -430.0; x_m < 430.0; x_m += step_m) {
            for (double y_m = -430.0; y_m < 430.0; y_m += step_m) {
                const WaterPoint p = turnedBy({x_m, y_m}, 17.0);
                if (std::fabs(p.x_m - middle_m) < 100.0 && std::fabs(p.y_m) < 300.0 &&
                    standsOut_m(p) >= 0.5 * high_m) {
                    sum_m2 += step_m * step_m;
                }
            }
        }
        return sum_m2;
    }

private:
    [[nodiscard]] double slopeAt(WaterPoint p) const {
        constexpr double d_m = 1.0;
        return std::hypot(bottom_({p.x_m + d_m, p.y_m}) - bottom_({p.x_m - d_m, p.y_m}),
                          bottom_({p.x_m, p.y_m + d_m}) - bottom_({p.x_m, p.y_m - d_m})) /
               (2.0 * d_m);
    }

    /// Over the nearer of both sides at 30 and at 60 m, less 0.45 of the fall of the slope.
    [[nodiscard]] double standsOut_m(WaterPoint p) const {
        double best_m = -INFINITY;
        const double slope = slopeAt(p);
        for (const double reach_m : {30.0, 60.0}) {
            for (double axis_deg = 0.0; axis_deg < 180.0; axis_deg += 22.5) {
                const WaterPoint step =
                    turnedBy({reach_m, 0.0}, axis_deg - KnownGround::GetParam().angle_deg);
                const WaterPoint a{p.x_m + step.x_m, p.y_m + step.y_m};
                const WaterPoint b{p.x_m - step.x_m, p.y_m - step.y_m};
                const double out_m =
                    std::min(sign_ * (bottom_(a) - bottom_(p)), sign_ * (bottom_(b) - bottom_(p)));
                best_m = std::max(best_m, out_m - (0.45 * slope + basin_) * reach_m);
            }
        }
        return best_m;
    }

    support::Bottom bottom_;
    double sign_;
    double basin_;
};

TEST_P(KnownGround, PlaneHasNoFeature) {
    const ZoneMap map = found([](WaterPoint p) { return 5.0 + 0.008 * p.x_m; });
    for (const Zone& zone : map.zones) {
        EXPECT_EQ(zone.kind, ZoneKind::flat) << zone.name;
    }
}

TEST_P(KnownGround, HumpIsOneHumpOfItsArea) {
    const WaterPoint middle{-120.0, 60.0};
    const auto bottom = [&](WaterPoint p) { return 6.0 - 3.0 * bell(p, middle, 30.0); };
    const ZoneMap map = found(bottom);
    const std::vector<Zone> humps = of(map, ZoneKind::hump);
    ASSERT_EQ(humps.size(), 1U);
    EXPECT_TRUE(of(map, ZoneKind::spur).empty());
    EXPECT_TRUE(of(map, ZoneKind::trough).empty());
    expectNear(humps[0].middle, middle);
    expectArea(humps[0],
               Formula(bottom, 1.0).area_m2(map.report->highGround.inMetres(), middle.x_m));
}

TEST_P(KnownGround, PitIsOneHoleOfItsArea) {
    const WaterPoint middle{110.0, -70.0};
    const auto bottom = [&](WaterPoint p) { return 5.0 + 3.0 * bell(p, middle, 30.0); };
    const ZoneMap map = found(bottom);
    const std::vector<Zone> holes = of(map, ZoneKind::hole);
    ASSERT_EQ(holes.size(), 1U);
    EXPECT_TRUE(of(map, ZoneKind::trough).empty());
    EXPECT_TRUE(of(map, ZoneKind::spur).empty());
    expectNear(holes[0].middle, middle);
    expectArea(holes[0],
               Formula(bottom, -1.0).area_m2(map.report->highGround.inMetres(), middle.x_m));
}

TEST_P(KnownGround, ChannelIsOneTroughAlongItsLineOfItsArea) {
    const auto bottom = [](WaterPoint p) {
        return 4.0 + 3.0 * std::exp(-0.5 * std::pow(p.x_m / 30.0, 2));
    };
    const ZoneMap map = found(bottom);
    const std::vector<Zone> troughs = of(map, ZoneKind::trough);
    ASSERT_EQ(troughs.size(), 1U);
    EXPECT_LT(std::fabs(asKnown(troughs[0].middle).x_m), std::sqrt(2.0) * GetParam().cell_m);
    const Formula formula(bottom, -1.0, 0.005);
    expectArea(troughs[0], formula.area_m2(map.report->highGround.inMetres(), 0.0));
}

TEST_P(KnownGround, RidgeThatRunsOutFromABankIsOneSpurAlongItsLine) {
    // A bank of 2 % from the south, and on it a ridge of 3 m along x = 0 as far as y = 0.
    const auto bottom = [](WaterPoint p) {
        const double ridge_m =
            3.0 * std::exp(-0.5 * std::pow(p.x_m / 25.0, 2)) / (1.0 + std::exp(p.y_m / 15.0));
        return 4.0 + 0.02 * (p.y_m + half_m) - ridge_m;
    };
    const ZoneMap map = found(bottom);
    const std::vector<Zone> spurs = of(map, ZoneKind::spur);
    ASSERT_EQ(spurs.size(), 1U);
    EXPECT_TRUE(of(map, ZoneKind::hump).empty());
    EXPECT_LT(std::fabs(asKnown(spurs[0].middle).x_m), std::sqrt(2.0) * GetParam().cell_m);
    expectArea(spurs[0], Formula(bottom, 1.0).area_m2(map.report->highGround.inMetres(), 0.0));
}

TEST_P(KnownGround, SaddleLiesBetweenTwoHumps) {
    const WaterPoint west{-50.0, 0.0};
    const WaterPoint east{50.0, 0.0};
    const ZoneMap map = found(
        [&](WaterPoint p) { return 8.0 - 4.0 * (bell(p, west, 30.0) + bell(p, east, 30.0)); });
    ASSERT_EQ(of(map, ZoneKind::saddle).size(), 1U);
    expectNear(of(map, ZoneKind::saddle)[0].middle, {0.0, 0.0});
    std::vector<Zone> humps = of(map, ZoneKind::hump);
    ASSERT_EQ(humps.size(), 2U);
    std::sort(humps.begin(), humps.end(), [](const Zone& a, const Zone& b) {
        return asKnown(a.middle).x_m < asKnown(b.middle).x_m;
    });
    EXPECT_NEAR(humps[0].area.inSquareMetres(), humps[1].area.inSquareMetres(),
                0.1 * humps[1].area.inSquareMetres());
    EXPECT_TRUE(of(map, ZoneKind::trough).empty());
}

TEST_P(KnownGround, StepIsADropOffBetweenTwoLevelsOfKnownArea) {
    // 12.5 % over 80 m.
    const ZoneMap map =
        found([](WaterPoint p) { return 3.0 + 10.0 * std::clamp(p.x_m / 80.0 + 0.5, 0.0, 1.0); });
    const std::vector<Zone> drops = of(map, ZoneKind::dropOff);
    ASSERT_EQ(drops.size(), 1U);
    ASSERT_EQ(of(map, ZoneKind::shelf).size(), 1U);
    expectArea(of(map, ZoneKind::shelf)[0], (half_m - 40.0) * 2.0 * half_m);
    expectArea(drops[0], 80.0 * 2.0 * half_m);
    EXPECT_NEAR(drops[0].edgeLength.inMetres(), 2.0 * half_m, 0.1 * 2.0 * half_m);
    const auto across_m = [](WaterPoint p) { return p.x_m; };
    expectAlong(drops[0].topEdges, across_m, -40.0);
    expectAlong(drops[0].feet, across_m, 40.0);
}

TEST_P(KnownGround, ConeWithATerraceHasItsTerraceBetweenTwoBanks) {
    // From the summit: a bank of 15 % from 30 to 60 m, a terrace at 5.5 m, a bank from 170 to 210
    // m.
    const ZoneMap map = found([](WaterPoint p) {
        const double r_m = std::hypot(p.x_m, p.y_m);
        return 1.0 + 4.5 * std::clamp((r_m - 30.0) / 30.0, 0.0, 1.0) +
               6.0 * std::clamp((r_m - 170.0) / 40.0, 0.0, 1.0);
    });
    std::vector<Zone> banks = of(map, ZoneKind::dropOff);
    ASSERT_EQ(banks.size(), 2U);
    std::sort(banks.begin(), banks.end(),
              [](const Zone& a, const Zone& b) { return a.area < b.area; });
    const auto radius_m = [](WaterPoint p) { return std::hypot(p.x_m, p.y_m); };
    expectAlong(banks[0].feet, radius_m, 60.0);
    expectAlong(banks[1].topEdges, radius_m, 170.0);
    expectAlong(banks[1].feet, radius_m, 210.0);
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
                         testing::Values(Ground{2.5, 0.0, 0.0}, Ground{2.5, 20.0, 0.0},
                                         Ground{2.5, 45.0, 0.1}, Ground{5.0, 0.0, 0.0},
                                         Ground{5.0, 20.0, 0.0}, Ground{5.0, 45.0, 0.0},
                                         Ground{5.0, 65.0, 0.1}, Ground{5.0, 0.0, 0.1},
                                         Ground{8.0, 0.0, 0.0}, Ground{8.0, 20.0, 0.0},
                                         Ground{8.0, 45.0, 0.1}, Ground{2.5, 20.0, 0.1}));

} // namespace
