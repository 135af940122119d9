// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/contours/find_bands.h"
#include "core/contours/trace_contours.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <numbers>

namespace {

using namespace contours;
using units::Depth;

/// A cone of 12 m in the middle of a round water of 300 m radius.
struct Cone {
    explicit Cone(double cell_m) {
        geo::Ring ring;
        for (int i = 0; i < 720; ++i) {
            const double a = 2.0 * std::numbers::pi * i / 720.0;
            ring.push_back({radius_m * std::cos(a), radius_m * std::sin(a)});
        }
        const auto outline = geo::Outline::make(std::vector{geo::Piece{ring, {}}},
                                                geo::WaterFrame::centredOn({3.1, 55.2}).value())
                                 .value();
        const auto frame =
            grid::GridFrame::covering(outline.box(), units::Length::metres(cell_m)).value();
        mask = grid::Mask::of(outline, frame);
        depth = grid::DepthGrid(frame);
        for (std::size_t i = 0; i < frame.size(); ++i) {
            if (mask.isActive(i)) {
                const geo::WaterPoint p = frame.centre(frame.cellAt(i));
                depth.set(i, Depth::metres(std::max(
                                 0.01, deepest_m * (1.0 - std::hypot(p.x_m, p.y_m) / radius_m))));
            }
        }
    }
    static constexpr double radius_m = 300.0;
    static constexpr double deepest_m = 12.0;
    grid::Mask mask;
    grid::DepthGrid depth;
};

TEST(Bands, LimitIsThirtyFeetUnlessSaidOtherwise) {
    EXPECT_DOUBLE_EQ(Bands().limit().inFeet(), 30.0);
    EXPECT_TRUE(Bands().isFishable(Depth::feet(30.0)));
    EXPECT_FALSE(Bands().isFishable(Depth::feet(30.1)));
}

TEST(Bands, RefusesEdgesThatDoNotDescend) {
    for (const std::vector<Depth>& edges : {std::vector<Depth>{},
                                            {Depth::metres(2), Depth::metres(2)},
                                            {Depth::metres(0)},
                                            {Depth::metres(3), Depth::metres(1)}}) {
        EXPECT_FALSE(Bands::make(edges, Depth::metres(9)));
    }
    EXPECT_FALSE(Bands::make({Depth::metres(2)}, Depth::metres(-1)));
}

TEST(Bands, AnEdgeBelongsToTheDeeperBand) {
    const Bands bands = Bands::make({Depth::metres(2), Depth::metres(4)}, Depth::metres(9)).value();
    EXPECT_EQ(bands.bandOf(Depth::metres(1.99)), 0U);
    EXPECT_EQ(bands.bandOf(Depth::metres(2.0)), 1U);
    EXPECT_EQ(bands.bandOf(Depth::metres(40.0)), 2U);
    EXPECT_FALSE(bands.to(2));
}

TEST(FindBands, CoversTheWaterOnceWithTheAreasOfACone) {
    const Cone cone(4.0);
    const Bands bands = Bands::make({Depth::metres(3), Depth::metres(6)}, Depth::metres(9)).value();
    base::Progress silent;
    const auto found = findBands(cone.depth, cone.mask, bands, silent).value();
    const double whole_m2 = std::numbers::pi * Cone::radius_m * Cone::radius_m;
    const std::array share{1.0 - 0.5625, 0.5625 - 0.25, 0.25};
    for (std::size_t band = 0; band < 3; ++band) {
        EXPECT_NEAR(found.measures[band].area.inSquareMetres() / whole_m2, share[band], 0.01)
            << band;
        double traced_m2 = 0.0;
        for (const geo::Piece& piece : found.polygons[band].pieces) {
            traced_m2 += geo::areaOf(piece).inSquareMetres();
        }
        EXPECT_NEAR(traced_m2 / whole_m2, share[band], 0.025) << band;
    }
    for (std::size_t i = 0; i < cone.depth.size(); ++i) {
        EXPECT_EQ(found.bandOfCell[i] != noBand, cone.depth.has(i));
    }
}

TEST(FindBands, VolumesOfAllBandsAreTheVolumeOfTheCone) {
    const Cone cone(4.0);
    base::Progress silent;
    const auto found = findBands(cone.depth, cone.mask, Bands(), silent).value();
    double volume_m3 = 0.0;
    for (const BandMeasure& band : found.measures) {
        volume_m3 += band.volume.inCubicMetres();
    }
    EXPECT_NEAR(volume_m3 /
                    (std::numbers::pi * Cone::radius_m * Cone::radius_m * Cone::deepest_m / 3.0),
                1.0, 0.005);
}

TEST(FindWater, ReachesAsFarDownAShelvingBankAsTheLevelHasFallen) {
    const Cone cone(4.0);
    base::Progress silent;
    for (const double fall_m : {1.0, 3.0, 6.0}) {
        const auto left =
            findWater(cone.depth.shiftedBy(units::Length::metres(-fall_m)), silent).value();
        ASSERT_EQ(left.size(), 1U) << fall_m;
        EXPECT_TRUE(left.front().islands.empty());
        const double radius_m = Cone::radius_m * (1.0 - fall_m / Cone::deepest_m);
        for (const geo::WaterPoint p : left.front().outer) {
            EXPECT_NEAR(std::hypot(p.x_m, p.y_m), radius_m, 2.0) << fall_m;
        }
    }
}

TEST(FindWater, AHumpThatFallsDryBecomesAnIsland) {
    Cone cone(4.0);
    for (std::size_t i = 0; i < cone.depth.size(); ++i) {
        const geo::WaterPoint p = cone.depth.frame().centre(cone.depth.frame().cellAt(i));
        const double off_m = std::hypot(p.x_m - 100.0, p.y_m);
        if (cone.depth.has(i) && off_m < 40.0) {
            cone.depth.set(i, Depth::metres(0.5 + off_m / 20.0)); // 0.5 m on its top
        }
    }
    base::Progress silent;
    const auto left = findWater(cone.depth.shiftedBy(units::Length::metres(-1.0)), silent).value();
    ASSERT_EQ(left.size(), 1U);
    ASSERT_EQ(left.front().islands.size(), 1U);
    for (const geo::WaterPoint p : left.front().islands.front()) {
        EXPECT_NEAR(std::hypot(p.x_m - 100.0, p.y_m), 10.0, 2.0);
    }
}

TEST(FindBands, WhatHasFallenDryIsInNoBand) {
    const Cone cone(4.0);
    base::Progress silent;
    const auto found =
        findBands(cone.depth.shiftedBy(units::Length::metres(-3.0)), cone.mask, Bands(), silent)
            .value();
    double area_m2 = 0.0;
    for (const BandMeasure& band : found.measures) {
        area_m2 += band.area.inSquareMetres();
    }
    const double left_m2 = std::numbers::pi * std::pow(0.75 * Cone::radius_m, 2);
    EXPECT_NEAR(area_m2, left_m2, 0.01 * left_m2);
}

TEST(TraceContours, OfAConeAreCirclesWhereTheFormulaHasThem) {
    const Cone cone(4.0);
    base::Progress silent;
    const std::array levels{Depth::metres(8), Depth::metres(3)};
    const auto lines = traceContours(cone.depth, cone.mask, levels, silent).value();
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_LT(lines[0].depth, lines[1].depth);
    for (const Contour& line : lines) {
        EXPECT_TRUE(line.closed);
        const double radius_m = Cone::radius_m * (1.0 - line.depth.inMetres() / Cone::deepest_m);
        for (const geo::WaterPoint p : line.line) {
            EXPECT_NEAR(std::hypot(p.x_m, p.y_m), radius_m, 2.0);
        }
    }
}

TEST(TraceContours, NeverRunAlongTheShoreOfABasinWithUprightBanks) {
    Cone basin(4.0);
    for (std::size_t i = 0; i < basin.depth.size(); ++i) {
        if (basin.depth.has(i)) {
            basin.depth.set(i, Depth::metres(5.0));
        }
    }
    base::Progress silent;
    const std::array levels{Depth::metres(2), Depth::metres(4)};
    EXPECT_TRUE(traceContours(basin.depth, basin.mask, levels, silent).value().empty());
}

TEST(TraceContours, RefusesWhatIsNoDepth) {
    const Cone cone(10.0);
    base::Progress silent;
    const std::array levels{Depth::metres(NAN)};
    EXPECT_FALSE(traceContours(cone.depth, cone.mask, levels, silent));
}

} // namespace
