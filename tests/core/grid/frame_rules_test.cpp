// SPDX-License-Identifier: GPL-3.0-or-later
// Where cells lie, what is water and how deep it is, by hand and by looking at all cells.
#include "core/grid/depth_grid.h"
#include "core/grid/mask.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <random>

namespace {

using namespace grid;
using units::Depth;
using units::Length;

geo::Box boxOf(double west_m, double south_m, double east_m, double north_m) {
    return {west_m, south_m, east_m, north_m};
}

TEST(FrameRules, CellsLieOnWholeMultiplesWithTheMarginToSpare) {
    const GridFrame f =
        GridFrame::covering(boxOf(-12.3, 4.0, 27.5, 18.1), Length::metres(5.0), 1).value();
    EXPECT_EQ(f, GridFrame(-20.0, 25.0, 5.0, 11, 6)); // -15 to 30 and 0 to 20, and one cell round
    EXPECT_EQ(f.box().west_m, -20.0);
    EXPECT_EQ(f.box().east_m, 35.0);
    EXPECT_EQ(f.box().south_m, -5.0);
    EXPECT_EQ(f.box().north_m, 25.0);
    EXPECT_EQ(f.size(), 66U);
    EXPECT_EQ(f.cellArea_m2(), 25.0);
    EXPECT_EQ(GridFrame::covering(boxOf(0, 0, 10, 10), Length::metres(5.0)).value(),
              GridFrame(-10.0, 20.0, 5.0, 6, 6))
        << "two cells of margin unless told otherwise";
    EXPECT_EQ(GridFrame::covering(boxOf(0, 0, 10, 10), Length::metres(5.0), 0).value(),
              GridFrame(0.0, 10.0, 5.0, 2, 2));
}

TEST(FrameRules, RefusesNoCellNoBoxAndTooManyCells) {
    const geo::Box box = boxOf(0, 0, 50, 40);
    EXPECT_TRUE(GridFrame::covering(box, Length::metres(1.0), 0, 2000));
    const auto many = GridFrame::covering(box, Length::metres(1.0), 0, 1999);
    ASSERT_FALSE(many);
    EXPECT_EQ(many.error().kind, base::ErrorKind::wrongUse);
    EXPECT_EQ(many.error().whatToDo, "choose a larger cell");
    for (const double cell_m : {0.0, -1.0, std::nan(""), std::numeric_limits<double>::infinity()}) {
        EXPECT_FALSE(GridFrame::covering(box, Length::metres(cell_m)));
    }
    EXPECT_FALSE(GridFrame::covering({}, Length::metres(1.0)));
    EXPECT_TRUE(GridFrame::covering(boxOf(0, 0, 6000, 6000), Length::metres(1.0)));
    EXPECT_FALSE(GridFrame::covering(boxOf(0, 0, 6400, 6400), Length::metres(1.0)))
        << "more than 40 million";
}

TEST(FrameRules, ACellReachesFromItsNorthWestEdgeToTheNext) {
    const GridFrame f(100.0, 200.0, 10.0, 4, 3);
    EXPECT_EQ(f.cellOf({100.0, 200.0}), (Cell{0, 0}));
    EXPECT_EQ(f.cellOf({109.999, 190.001}), (Cell{0, 0}));
    EXPECT_EQ(f.cellOf({110.0, 190.0}), (Cell{1, 1}));
    EXPECT_EQ(f.cellOf({139.9, 170.1}), (Cell{3, 2}));
    EXPECT_EQ(f.cellOf({99.9, 200.1}), (Cell{-1, -1}));
    EXPECT_EQ(f.centre({0, 0}), (geo::WaterPoint{105.0, 195.0}));
    EXPECT_EQ(f.centre({3, 2}), (geo::WaterPoint{135.0, 175.0}));
    EXPECT_EQ(f.index({3, 2}), 11U);
    EXPECT_EQ(f.cellAt(6), (Cell{2, 1}));
    for (const Cell c : {Cell{0, 0}, {3, 0}, {0, 2}, {3, 2}}) {
        EXPECT_TRUE(f.holds(c));
    }
    for (const Cell c : {Cell{-1, 0}, {4, 0}, {0, -1}, {0, 3}}) {
        EXPECT_FALSE(f.holds(c));
    }
    EXPECT_FALSE(f.holds(f.cellOf({std::nan(""), 190.0})));
    EXPECT_FALSE(f.holds(f.cellOf({1e300, -1e300})));
    EXPECT_FALSE(f.holds(f.cellOf({-1e300, 190.0})));
}

DepthGrid ramp(const GridFrame& f) {
    DepthGrid depth(f);
    for (std::size_t i = 0; i < f.size(); ++i) {
        const geo::WaterPoint p = f.centre(f.cellAt(i));
        depth.set(i, Depth::metres(5.0 + 0.25 * p.x_m - 0.5 * p.y_m));
    }
    return depth;
}

TEST(DepthRules, APlaneIsGivenBackBetweenTheCentres) {
    const GridFrame f(-20.0, 20.0, 4.0, 10, 10);
    const DepthGrid depth = ramp(f);
    for (double x = -17.9; x < 18.0; x += 1.3) {
        for (double y = -17.9; y < 18.0; y += 1.7) {
            EXPECT_NEAR(depth.at(geo::WaterPoint{x, y})->inMetres(), 5.0 + 0.25 * x - 0.5 * y,
                        1e-4);
        }
    }
    EXPECT_FALSE(depth.at(geo::WaterPoint{-20.1, 0.0}));
    EXPECT_FALSE(depth.at(Cell{10, 0}));
}

TEST(DepthRules, CellsWithoutADepthDoNotCount) {
    const GridFrame f(0.0, 20.0, 10.0, 2, 2);
    DepthGrid depth(f);
    EXPECT_FALSE(depth.deepest());
    depth.set(0, Depth::metres(2.0));
    depth.set(3, Depth::metres(8.0));
    // A quarter of the way from centre to centre: weights 9/16 and 1/16.
    EXPECT_NEAR(depth.at(geo::WaterPoint{7.5, 12.5})->inMetres(), (9 * 2.0 + 8.0) / 10.0, 1e-6);
    EXPECT_FALSE(depth.at(geo::WaterPoint{12.5, 12.5})) << "its own cell has none";
    depth.clear(3);
    EXPECT_NEAR(depth.at(geo::WaterPoint{9.9, 10.1})->inMetres(), 2.0, 1e-6);
    EXPECT_EQ(depth.deepest(), Depth::metres(2.0));
    EXPECT_TRUE(depth.has(0) && depth.has(Cell{0, 0}));
    EXPECT_FALSE(depth.has(1) || depth.has(Cell{1, 0}) || depth.has(Cell{-1, 0}));
    EXPECT_EQ(depth.at(Cell{0, 0}), Depth::metres(2.0));
}

TEST(DepthRules, AHigherLevelDeepensAndALowerOneDriesWhatItUncovers) {
    const GridFrame f(0.0, 10.0, 10.0, 4, 1);
    DepthGrid depth(f);
    depth.set(0, Depth::metres(0.5));
    depth.set(1, Depth::metres(2.0));
    depth.set(2, Depth::metres(0.25));
    for (const bool isKept : {false, true}) {
        const auto at = [&](double rise_m) {
            const Length rise = Length::metres(rise_m);
            return isKept ? depth.shiftedBy(rise) : depth.raisedBy(rise);
        };
        EXPECT_EQ(at(0.75).at(Cell{0, 0}), Depth::metres(1.25));
        EXPECT_EQ(at(0.75).at(Cell{1, 0}), Depth::metres(2.75));
        EXPECT_FALSE(at(0.75).has(3)) << "land stays land";
        EXPECT_EQ(at(-0.25).at(Cell{0, 0}), Depth::metres(0.25));
        EXPECT_EQ(at(-0.25).has(2), isKept) << "dry at depth 0";
        EXPECT_EQ(at(-0.5).at(Cell{1, 0}), Depth::metres(1.5));
        EXPECT_EQ(at(-0.5).at(Cell{2, 0}).has_value(), isKept);
    }
    EXPECT_EQ(depth.shiftedBy(Length::metres(-0.5)).at(Cell{2, 0}), Depth::metres(-0.25));
    EXPECT_EQ(depth.at(Cell{0, 0}), Depth::metres(0.5)) << "itself it stays as it is";
}

geo::Outline outlineOf(std::vector<geo::Piece> pieces) {
    return geo::Outline::make(std::move(pieces), geo::WaterFrame::centredOn({3.1, 55.2}).value())
        .value();
}

geo::Ring rectangle(double west, double south, double east, double north) {
    return {{west, south}, {east, south}, {east, north}, {west, north}};
}

/// How much of the interval from a to b lies between low and high.
double overlap(double a, double b, double low, double high) {
    return std::max(0.0, std::min(b, high) - std::max(a, low));
}

// Shores along the axes, each cell's share known exactly; heights in sixty-fourths of a cell.
TEST(MaskRules, SharesOfAPondWithAnIslandAreThoseOfItsRectangles) {
    const geo::Outline outline =
        outlineOf({{rectangle(3.0, 2.5, 47.0, 37.5), {rectangle(14.0, 12.5, 29.0, 26.25)}},
                   {rectangle(52.0, 5.0, 58.0, 15.0), {}}});
    const GridFrame f(0.0, 40.0, 10.0, 6, 4);
    const Mask mask = Mask::of(outline, f);
    for (std::size_t i = 0; i < f.size(); ++i) {
        const geo::WaterPoint c = f.centre(f.cellAt(i));
        const auto part = [&](double west, double south, double east, double north) {
            return overlap(c.x_m - 5.0, c.x_m + 5.0, west, east) *
                   overlap(c.y_m - 5.0, c.y_m + 5.0, south, north) / 100.0;
        };
        EXPECT_NEAR(mask.share(i),
                    part(3.0, 2.5, 47.0, 37.5) - part(14.0, 12.5, 29.0, 26.25) +
                        part(52.0, 5.0, 58.0, 15.0),
                    1e-5)
            << i;
    }
}

TEST(MaskRules, ACellIsActiveIfItsCentreIsWetOrAShorePassesThroughIt) {
    const geo::Outline outline = outlineOf({{{{3, 2}, {97, 6}, {90, 71}, {41, 93}, {7, 60}},
                                             {{{31, 32}, {68, 35}, {60, 66}, {33, 60}}}}});
    const GridFrame f(-10.0, 110.0, 5.0, 24, 24);
    const Mask mask = Mask::of(outline, f);
    std::size_t active = 0;
    for (std::size_t i = 0; i < f.size(); ++i) {
        const geo::WaterPoint c = f.centre(f.cellAt(i));
        double crossed_m = 0.0;
        for (const geo::ShoreSegment& s : outline.segments()) {
            for (const geo::WaterPoint p : geo::densified({s.a, s.b}, 0.05)) {
                crossed_m += f.cellOf(p) == f.cellAt(i) ? 0.05 : 0.0;
            }
        }
        if (outline.contains(c) || crossed_m > 1.0) { // cut corners may be missed
            EXPECT_TRUE(mask.isActive(i)) << i;
        } else if (crossed_m == 0.0) {
            EXPECT_FALSE(mask.isActive(i)) << i;
        }
        active += mask.isActive(i) ? 1 : 0;
    }
    EXPECT_EQ(mask.activeCount(), active);
    EXPECT_FALSE(mask.isActive(Cell{-1, 5}));
    EXPECT_FALSE(mask.isActive(f.cellOf({48.0, 48.0}))) << "in the middle of the island";
}

TEST(MaskRules, AMaskFromYesAndNoHoldsWholeCells) {
    Grid<std::uint8_t> yes(GridFrame(0.0, 20.0, 10.0, 2, 2), 0);
    yes[1] = 1;
    yes[2] = 7;
    const Mask mask = Mask::from(yes);
    EXPECT_EQ(mask.activeCount(), 2U);
    EXPECT_EQ(mask.shares().values(), (std::vector<float>{0.0F, 1.0F, 1.0F, 0.0F}));
    EXPECT_FALSE(mask.isActive(Cell{0, 0}));
    EXPECT_TRUE(mask.isActive(Cell{1, 0}));
}

TEST(MaskRules, TheNearestWaterOfAPlaceOnLandIsTheCellWhoseCentreIsNearest) {
    std::mt19937 random(41);
    std::bernoulli_distribution isWater(0.05);
    Grid<std::uint8_t> active(GridFrame(-50.0, 50.0, 5.0, 20, 20), 0);
    for (std::uint8_t& v : active.values()) {
        v = isWater(random) ? 1 : 0;
    }
    const Mask mask = Mask::from(active);
    std::uniform_real_distribution<double> anywhere(-70.0, 70.0);
    for (int i = 0; i < 200; ++i) {
        const geo::WaterPoint p{anywhere(random), anywhere(random)};
        const Cell found = mask.nearestActive(p).value();
        EXPECT_TRUE(mask.isActive(found));
        const Cell own = mask.frame().cellOf(p);
        if (mask.isActive(own)) {
            EXPECT_EQ(found, own);
            continue;
        }
        for (std::size_t k = 0; k < active.size(); ++k) {
            if (active[k] != 0) {
                EXPECT_LE(geo::distance_m(p, mask.frame().centre(found)),
                          geo::distance_m(p, mask.frame().centre(mask.frame().cellAt(k))));
            }
        }
    }
    EXPECT_FALSE(Mask::from(Grid<std::uint8_t>(active.frame(), 0)).nearestActive({0.0, 0.0}));
}

} // namespace
