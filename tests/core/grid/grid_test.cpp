// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/grid/depth_grid.h"
#include "core/grid/distance_field.h"
#include "core/grid/mask.h"

#include <gtest/gtest.h>

#include <array>
#include <numbers>

namespace {

using namespace grid;

geo::Outline disc(double radius_m) {
    geo::Ring ring;
    for (int i = 0; i < 720; ++i) {
        const double a = 2.0 * std::numbers::pi * i / 720.0;
        ring.push_back({radius_m * std::cos(a), radius_m * std::sin(a)});
    }
    return geo::Outline::make(std::vector{geo::Piece{ring, {}}},
                              geo::WaterFrame::centredOn({3.1, 55.2}).value())
        .value();
}

GridFrame frameRound(const geo::Outline& outline, double cell_m) {
    return GridFrame::covering(outline.box(), units::Length::metres(cell_m)).value();
}

TEST(GridFrame, CellOfItsOwnCentreIsItself) {
    const GridFrame frame(-50.0, 70.0, 5.0, 20, 30);
    for (std::size_t i = 0; i < frame.size(); ++i) {
        const Cell cell = frame.cellAt(i);
        EXPECT_EQ(frame.cellOf(frame.centre(cell)), cell);
        EXPECT_EQ(frame.index(cell), i);
    }
}

TEST(GridFrame, RefusesACellThatWouldNeedABillion) {
    geo::Box box;
    box.take({0, 0});
    box.take({5000, 5000});
    const auto frame = GridFrame::covering(box, units::Length::metres(0.1));
    ASSERT_FALSE(frame);
    EXPECT_NE(frame.error().what.find("million"), std::string::npos);
    EXPECT_FALSE(GridFrame::covering(box, units::Length::metres(0.0)));
}

TEST(Mask, SharesAddUpToTheAreaOfTheWater) {
    const geo::Outline outline = disc(200.0);
    for (const double cell_m : {3.0, 7.0, 20.0}) {
        const Mask mask = Mask::of(outline, frameRound(outline, cell_m));
        double area_m2 = 0.0;
        for (std::size_t i = 0; i < mask.frame().size(); ++i) {
            area_m2 += static_cast<double>(mask.share(i)) * mask.frame().cellArea_m2();
            if (mask.share(i) > 0.01F) {
                EXPECT_TRUE(mask.isActive(i));
            }
        }
        EXPECT_NEAR(area_m2 / outline.area().inSquareMetres(), 1.0, 0.001) << cell_m;
    }
}

TEST(DepthGrid, IsBilinearBetweenCentresAndHoldsNothingOutside) {
    DepthGrid depth(GridFrame(0.0, 20.0, 10.0, 2, 2));
    depth.set(0, units::Depth::metres(1.0));
    depth.set(1, units::Depth::metres(3.0));
    depth.set(2, units::Depth::metres(5.0));
    depth.set(3, units::Depth::metres(7.0));
    EXPECT_DOUBLE_EQ(depth.at(geo::WaterPoint{10.0, 10.0})->inMetres(), 4.0);
    EXPECT_DOUBLE_EQ(depth.at(geo::WaterPoint{5.0, 15.0})->inMetres(), 1.0);
    EXPECT_DOUBLE_EQ(depth.at(geo::WaterPoint{0.0, 20.0})->inMetres(), 1.0);
    EXPECT_FALSE(depth.at(geo::WaterPoint{25.0, 10.0}));
    depth.clear(0);
    EXPECT_FALSE(depth.at(Cell{0, 0}));
    EXPECT_DOUBLE_EQ(depth.deepest()->inMetres(), 7.0);
}

TEST(DepthGrid, FallsDryWhereTheLevelFallsBelowTheBottom) {
    DepthGrid depth(GridFrame(0.0, 10.0, 10.0, 2, 1));
    depth.set(0, units::Depth::metres(0.3));
    depth.set(1, units::Depth::metres(2.0));
    const DepthGrid low = depth.raisedBy(units::Length::metres(-0.5));
    EXPECT_FALSE(low.has(0));
    EXPECT_NEAR(low.at(Cell{1, 0})->inMetres(), 1.5, 1e-6);
}

TEST(DistanceField, OverOpenWaterIsStraightWithinTwoPercent) {
    const geo::Outline outline = disc(500.0);
    const Mask mask = Mask::of(outline, frameRound(outline, 5.0));
    const Cell source = mask.frame().cellOf({-300.0, 0.0});
    const Grid<float> distance = distanceOverWater_m(mask, std::array{source});
    for (const geo::WaterPoint p : {geo::WaterPoint{300, 0}, {0, 300}, {100, -350}, {-100, 200}}) {
        const double straight_m = geo::distance_m(mask.frame().centre(source),
                                                  mask.frame().centre(mask.frame().cellOf(p)));
        EXPECT_NEAR(static_cast<double>(distance[mask.frame().cellOf(p)]) / straight_m, 1.0, 0.02);
    }
}

TEST(DistanceField, OverWaterGoesRoundLand) {
    // A U: the only way from one arm to the other leads round the wall.
    Grid<std::uint8_t> active(GridFrame(0.0, 100.0, 1.0, 100, 100), 1);
    for (int row = 0; row < 80; ++row) {
        for (int col = 45; col < 55; ++col) {
            active[Cell{col, row}] = 0;
        }
    }
    const Grid<float> distance = distanceOverWater_m(Mask::from(active), std::array{Cell{40, 10}});
    const double shortest = std::hypot(5.0, 70.0) + 10.0 + std::hypot(5.0, 70.0);
    EXPECT_NEAR(static_cast<double>(distance[Cell{60, 10}]) / shortest, 1.0, 0.03);
    EXPECT_TRUE(std::isinf(distance[Cell{50, 10}]));
}

TEST(DistanceField, StraightDistanceAgreesWithLookingAtAll) {
    Grid<std::uint8_t> source(GridFrame(0.0, 40.0, 2.0, 25, 20), 0);
    for (const Cell c : {Cell{3, 4}, Cell{20, 15}, Cell{12, 1}}) {
        source[c] = 1;
    }
    const Grid<float> distance = straightDistance_m(source);
    for (std::size_t i = 0; i < source.size(); ++i) {
        double nearest_m = 1e9;
        for (std::size_t k = 0; k < source.size(); ++k) {
            if (source[k] != 0) {
                nearest_m = std::min(
                    nearest_m, geo::distance_m(source.frame().centre(source.frame().cellAt(i)),
                                               source.frame().centre(source.frame().cellAt(k))));
            }
        }
        EXPECT_NEAR(static_cast<double>(distance[i]), nearest_m, 1e-4);
    }
    EXPECT_TRUE(std::isinf(straightDistance_m(Grid<std::uint8_t>(source.frame(), 0))[0]));
}

} // namespace
