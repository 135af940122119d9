// SPDX-License-Identifier: GPL-3.0-or-later
// Bands on cells that can be counted by hand, and contours whose place is known.
#include "core/contours/find_bands.h"
#include "core/contours/trace_contours.h"
#include "tests/support/made_up_water.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using contours::Bands;
using contours::BandsFound;
using contours::noBand;
using testing::ElementsAre;
using testing::HasSubstr;
using units::Depth;

TEST(UsualBands, AreThoseThatTheHeaderNames) {
    const Bands usual;
    EXPECT_THAT(usual.edges(), ElementsAre(Depth::metres(2), Depth::metres(4), Depth::metres(6),
                                           Depth::feet(30), Depth::metres(14), Depth::metres(20)));
    EXPECT_EQ(usual.limit(), Depth::feet(30));
    EXPECT_EQ(usual.count(), 7U);
}

TEST(BandsOfEdges, BeginAtTheSurfaceFollowOneAnotherAndEndOpen) {
    const Bands bands = Bands::make({Depth::metres(2), Depth::metres(5)}, Depth::metres(4)).value();
    EXPECT_EQ(bands.count(), 3U);
    EXPECT_EQ(bands.from(0), Depth());
    EXPECT_EQ(bands.to(0), Depth::metres(2));
    EXPECT_EQ(bands.from(1), Depth::metres(2));
    EXPECT_EQ(bands.to(1), Depth::metres(5));
    EXPECT_EQ(bands.from(2), Depth::metres(5));
    EXPECT_EQ(bands.to(2), std::nullopt);
    EXPECT_EQ(bands.bandOf(Depth()), 0U);
    EXPECT_EQ(bands.bandOf(Depth::metres(4.999)), 1U);
    EXPECT_EQ(bands.bandOf(Depth::metres(5.0)), 2U);
    EXPECT_EQ(bands.limit(), Depth::metres(4));
    EXPECT_TRUE(bands.isFishable(Depth::metres(4.0)));
    EXPECT_FALSE(bands.isFishable(Depth::metres(4.001)));
}

TEST(BandsOfEdges, RefuseWhatIsNoDepthBelowTheSurface) {
    const double inf = std::numeric_limits<double>::infinity();
    const auto kindOf = [](std::vector<Depth> edges, Depth limit) {
        const auto made = Bands::make(std::move(edges), limit);
        return made ? std::string("made") : made.error().what;
    };
    for (const double edge_m : {0.0, -1.0, inf, std::nan("")}) {
        EXPECT_THAT(kindOf({Depth::metres(edge_m)}, Depth::metres(9)), HasSubstr("band edges"));
        EXPECT_THAT(kindOf({Depth::metres(2), Depth::metres(edge_m)}, Depth::metres(9)),
                    HasSubstr("band edges"));
        EXPECT_THAT(kindOf({Depth::metres(2)}, Depth::metres(edge_m)), HasSubstr("limit"));
    }
    EXPECT_THAT(kindOf({Depth::metres(2), Depth::metres(2)}, Depth::metres(9)),
                HasSubstr("deeper than the one before"));
    EXPECT_EQ(kindOf({Depth::metres(0.01)}, Depth::metres(0.01)), "made");
}

/// Four cells by three of 10 m; not a number: land.
struct SmallWater {
    explicit SmallWater(const std::array<float, 12>& depths_m) : depth(frame) {
        grid::Grid<std::uint8_t> active(frame, 0);
        for (std::size_t i = 0; i < 12; ++i) {
            depth.raw_m()[i] = depths_m[i];
            active[i] = std::isnan(depths_m[i]) ? 0 : 1;
        }
        mask = grid::Mask::from(active);
    }
    grid::GridFrame frame{0.0, 30.0, 10.0, 4, 3};
    grid::DepthGrid depth;
    grid::Mask mask;
};

TEST(BandsCounted, AreasAndVolumesAreThoseOfTheirCellsAndAddUpToTheWaters) {
    const float land = NAN;
    const SmallWater water(
        {land, 0.0F, 1.9F, 2.0F, 3.0F, 4.0F, 4.5F, 8.0F, 1.0F, -0.5F, 2.5F, land});
    const Bands bands = Bands::make({Depth::metres(2), Depth::metres(4)}, Depth::metres(9)).value();
    base::Progress silent;
    const BandsFound found = contours::findBands(water.depth, water.mask, bands, silent).value();
    ASSERT_EQ(found.measures.size(), 3U);
    const std::array area_m2{300.0, 300.0, 300.0};
    const std::array volume_m3{290.0, 750.0, 1650.0};
    for (std::size_t band = 0; band < 3; ++band) {
        EXPECT_EQ(found.measures[band].from, bands.from(band));
        EXPECT_EQ(found.measures[band].to, bands.to(band));
        EXPECT_NEAR(found.measures[band].area.inSquareMetres(), area_m2[band], 1e-6) << band;
        EXPECT_NEAR(found.measures[band].volume.inCubicMetres(), volume_m3[band], 1e-3) << band;
    }
    EXPECT_THAT(found.bandOfCell.values(),
                ElementsAre(noBand, 0, 0, 1, 1, 2, 2, 2, 0, noBand, 1, noBand));
    ASSERT_EQ(found.polygons.size(), 3U);
    for (std::size_t band = 0; band < 3; ++band) {
        EXPECT_EQ(found.polygons[band].from, bands.from(band));
        EXPECT_EQ(found.polygons[band].to, bands.to(band));
    }
}

TEST(BandsCounted, ACellOnTheShoreCountsByItsShare) {
    const auto water = support::madeUpWater(
        {{support::rectangle(0.0, 0.0, 105.0, 52.5), {}}}, [](geo::WaterPoint) { return 3.0; },
        10.0);
    base::Progress silent;
    const BandsFound found = contours::findBands(water.depth, water.mask, Bands(), silent).value();
    EXPECT_NEAR(found.measures[1].area.inSquareMetres(), 105.0 * 52.5, 20.0);
    EXPECT_NEAR(found.measures[1].volume.inCubicMetres(), 3.0 * 105.0 * 52.5, 60.0);
    EXPECT_EQ(found.measures[0].area.inSquareMetres(), 0.0);
}

bool isIn(const std::vector<geo::Piece>& pieces, const geo::WaterFrame& frame, geo::WaterPoint p) {
    return std::ranges::any_of(pieces, [&](const geo::Piece& piece) {
        return geo::Outline::make({piece}, frame).value().contains(p);
    });
}

TEST(BandsCounted, OnASlopeEveryBandsPolygonLiesBetweenItsEdges) {
    // 0 to 10 m deep over 200 m, from west to east.
    const support::MadeUpWater water = support::plane(100.0, 0.0, 10.0, 4.0);
    const Bands bands = Bands::make({Depth::metres(2), Depth::metres(5)}, Depth::metres(9)).value();
    base::Progress silent;
    const BandsFound found = contours::findBands(water.depth, water.mask, bands, silent).value();
    const std::array area_m2{40.0 * 200.0, 60.0 * 200.0, 100.0 * 200.0};
    for (std::size_t band = 0; band < 3; ++band) {
        double sum_m2 = 0.0;
        for (const geo::Piece& piece : found.polygons[band].pieces) {
            sum_m2 += geo::areaOf(piece).inSquareMetres();
        }
        EXPECT_NEAR(sum_m2, area_m2[band], 1700.0) << band;
    }
    // Away from the banks, along which all bands run together: each edge where the slope has it.
    for (const double y_m : {-83.0, -21.0, 3.0, 64.0}) {
        for (const auto& [x_m, band] :
             {std::pair(-85.0, 0U), {-61.0, 0U}, {-59.0, 1U}, {-1.0, 1U}, {1.0, 2U}, {88.0, 2U}}) {
            for (std::size_t k = 0; k < 3; ++k) {
                EXPECT_EQ(isIn(found.polygons[k].pieces, water.frame, {x_m, y_m}), k == band)
                    << x_m;
            }
        }
    }
}

TEST(BandsCounted, TheLastBandReachesDownToWhateverDepthThereIs) {
    const support::MadeUpWater water = support::plane(100.0, 0.0, 200.0, 4.0);
    const Bands bands = Bands::make({Depth::metres(20)}, Depth::metres(9)).value();
    base::Progress silent;
    const BandsFound found = contours::findBands(water.depth, water.mask, bands, silent).value();
    EXPECT_TRUE(isIn(found.polygons[1].pieces, water.frame, {-60.0, 3.0})) << "40 m deep";
    EXPECT_TRUE(isIn(found.polygons[1].pieces, water.frame, {90.0, 3.0})) << "190 m deep";
}

TEST(BandsCounted, RefusesOtherCellsAndMoreBandsThanCanBeToldApart) {
    const SmallWater water({1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12});
    base::Progress silent;
    const grid::Mask other =
        grid::Mask::from(grid::Grid<std::uint8_t>(grid::GridFrame(0.0, 30.0, 10.0, 3, 3), 1));
    EXPECT_THAT(contours::findBands(water.depth, other, Bands(), silent).error().what,
                HasSubstr("different cells"));
    const std::array level{Depth::metres(2)};
    EXPECT_THAT(contours::traceContours(water.depth, other, level, silent).error().what,
                HasSubstr("different cells"));
    std::vector<Depth> edges;
    for (int i = 1; i <= 254; ++i) {
        edges.push_back(Depth::metres(0.1 * i));
    }
    const auto many = Bands::make(edges, Depth::metres(9)).value();
    EXPECT_THAT(contours::findBands(water.depth, water.mask, many, silent).error().what,
                HasSubstr("more bands"));
    edges.pop_back();
    EXPECT_TRUE(contours::findBands(water.depth, water.mask,
                                    Bands::make(edges, Depth::metres(9)).value(), silent));
}

TEST(ContoursTraced, LieWhereAPlaneHasTheirDepthAndEndAtTheShore) {
    const support::MadeUpWater water = support::plane(100.0, 1.0, 11.0, 4.0);
    base::Progress silent;
    const std::array levels{Depth::metres(9), Depth::metres(3.5)};
    const auto lines = contours::traceContours(water.depth, water.mask, levels, silent).value();
    ASSERT_EQ(lines.size(), 2U);
    for (const auto& [line, depth_m] : {std::pair(lines[0], 3.5), {lines[1], 9.0}}) {
        EXPECT_EQ(line.depth, Depth::metres(depth_m));
        EXPECT_FALSE(line.closed);
        for (const geo::WaterPoint p : line.line) {
            EXPECT_NEAR(p.x_m, -100.0 + (depth_m - 1.0) / 10.0 * 200.0, 0.5);
        }
        EXPECT_NEAR(std::abs(line.line.front().y_m - line.line.back().y_m), 200.0, 10.0);
    }
}

TEST(ContoursTraced, KeepToTheirDepthRoundABend) {
    const support::MadeUpWater water = support::cone(100.0, 10.0, 4.0);
    base::Progress silent;
    const std::array levels{Depth::metres(5)};
    const auto lines = contours::traceContours(water.depth, water.mask, levels, silent).value();
    ASSERT_EQ(lines.size(), 1U);
    EXPECT_TRUE(lines[0].closed);
    for (const geo::WaterPoint p : geo::densified(lines[0].line, 1.0)) {
        EXPECT_NEAR(std::hypot(p.x_m, p.y_m), 50.0, 1.0);
    }
    for (const double no : {std::nan(""), std::numeric_limits<double>::infinity()}) {
        const std::array wrong{Depth::metres(5), Depth::metres(no)};
        EXPECT_THAT(contours::traceContours(water.depth, water.mask, wrong, silent).error().what,
                    HasSubstr("no number"));
    }
}

TEST(ContoursTraced, LeaveOutDentsOfLessThanThreeCells) {
    // A dent of one cell: a ring of 4 m a side, some 2.8 cells round, at half its depth.
    const auto ringsAt = [](double depth_m) {
        const support::MadeUpWater flat = support::plane(60.0, 5.0, 5.0, 4.0);
        grid::DepthGrid depth = flat.depth;
        depth.set(depth.frame().index(depth.frame().cellOf({2.0, 2.0})), Depth::metres(7.0));
        base::Progress silent;
        const std::array levels{Depth::metres(depth_m)};
        return contours::traceContours(depth, flat.mask, levels, silent).value().size();
    };
    EXPECT_EQ(ringsAt(6.2), 0U); // 4 x sqrt(2) x 0.4 cells = 2.26
    EXPECT_EQ(ringsAt(5.5), 1U); // 4 x sqrt(2) x 0.75 cells = 4.24
}

} // namespace
