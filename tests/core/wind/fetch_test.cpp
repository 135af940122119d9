// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wind/fetch.h"

#include <algorithm>
#include <cmath>
#include <random>

#include <gtest/gtest.h>

namespace {

using units::Bearing;

geo::Outline outlineOf(std::vector<geo::Piece> pieces) {
    const auto frame = geo::WaterFrame::centredOn({3.1, 55.2}).value();
    return geo::Outline::make(std::move(pieces), frame).value();
}

/// 1000 by 600 m with a square island of 100 m round (500, 300).
geo::Outline lakeWithIsland() {
    return outlineOf({{{{0, 0}, {1000, 0}, {1000, 600}, {0, 600}},
                       {{{450, 250}, {550, 250}, {550, 350}, {450, 350}}}}});
}

TEST(Fetch, EndsAtAnIsland) {
    const geo::Outline lake = lakeWithIsland();
    EXPECT_NEAR(wind::fetchAt(lake, {100, 300}, Bearing::degrees(90)).straight.inMetres(), 350.0,
                1e-6);
    EXPECT_NEAR(wind::fetchAt(lake, {100, 200}, Bearing::degrees(90)).straight.inMetres(), 900.0,
                1e-6);
    EXPECT_NEAR(wind::fetchAt(lake, {700, 300}, Bearing::degrees(270)).straight.inMetres(), 150.0,
                1e-6);
}

TEST(Fetch, IsNothingOnLand) {
    const geo::Outline lake = lakeWithIsland();
    EXPECT_EQ(wind::fetchAt(lake, {500, 300}, Bearing()).straight, units::Length());
    EXPECT_EQ(wind::fetchAt(lake, {-50, 300}, Bearing()).effective, units::Length());
}

TEST(Fetch, LooksToWhereTheWindComesFrom) {
    const geo::Outline lake = lakeWithIsland();
    EXPECT_NEAR(wind::fetchAt(lake, {200, 500}, Bearing::degrees(0)).straight.inMetres(), 100.0,
                1e-6);
    EXPECT_NEAR(wind::fetchAt(lake, {200, 500}, Bearing::degrees(180)).straight.inMetres(), 500.0,
                1e-6);
}

TEST(FetchGrid, AgreesWithExactRadialsWithinAFewCells) {
    const geo::Outline lake = lakeWithIsland();
    const double cell_m = 5.0;
    const auto frame = grid::GridFrame::covering(lake.box(), units::Length::metres(cell_m)).value();
    const grid::Mask mask = grid::Mask::of(lake, frame);
    constexpr unsigned seed = 7;
    SCOPED_TRACE(seed);
    std::mt19937 chance(seed);
    for (int wind = 0; wind < 24; ++wind) {
        const Bearing from = Bearing::degrees(wind * 15.0 + 2.0);
        const grid::Grid<float> fetch_m = wind::fetchGrid_m(mask, from);
        // Half a cell sideways moves a shore met at a slant by half a cell over the slant's sine.
        const double slant = std::min(std::fabs(from.east()), std::fabs(from.north()));
        const double allowed_m = cell_m * (1.0 + 0.5 / slant);
        int near = 0;
        int all = 0;
        for (int k = 0; k < 400; ++k) {
            const geo::WaterPoint p{static_cast<double>(chance() % 1000),
                                    static_cast<double>(chance() % 600)};
            const grid::Cell cell = frame.cellOf(p);
            if (!lake.contains(frame.centre(cell))) {
                continue;
            }
            const double exact_m =
                wind::fetchAt(lake, frame.centre(cell), from).straight.inMetres();
            ++all;
            near += std::fabs(static_cast<double>(fetch_m[cell]) - exact_m) < allowed_m ? 1 : 0;
        }
        // Only where the radial grazes a corner may a cell's width decide which shore is met.
        EXPECT_GT(near, 0.97 * all) << "wind from " << from.inDegrees();
    }
}

TEST(FetchGrid, HoldsTheEffectiveFetchToo) {
    const geo::Outline lake = outlineOf({{{{0, 0}, {1000, 0}, {1000, 600}, {0, 600}}, {}}});
    const auto frame = grid::GridFrame::covering(lake.box(), units::Length::metres(5.0)).value();
    const grid::Mask mask = grid::Mask::of(lake, frame);
    const Bearing from = Bearing::degrees(230);
    const grid::Grid<float> fetch_m = wind::effectiveFetchGrid_m(mask, from);
    for (std::size_t i = 0; i < fetch_m.size(); i += 97) {
        const geo::WaterPoint centre = frame.centre(frame.cellAt(i));
        if (lake.contains(centre)) {
            EXPECT_NEAR(static_cast<double>(fetch_m[i]),
                        wind::fetchAt(lake, centre, from).effective.inMetres(), 10.0);
        } else if (!mask.isActive(i)) {
            EXPECT_EQ(fetch_m[i], 0.0F);
        }
    }
}

} // namespace
