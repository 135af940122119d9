// SPDX-License-Identifier: GPL-3.0-or-later
// One bottom drawn twice, on other cells, in another frame and at another level.
#include "core/surface/compare_drawings.h"
#include "tests/support/made_up_water.h"

#include <gtest/gtest.h>

#include <cmath>

namespace {

using geo::WaterPoint;
using units::Length;

constexpr double halfWidth_m = 0.3;

double slope_m(WaterPoint p) {
    return 5.0 + 0.01 * p.x_m - 0.004 * p.y_m;
}

/// Drawn of `depth_m`, a function of places in the frame round `centre`.
struct Survey {
    Survey(geo::LonLat centre, double cell_m, const std::function<double(WaterPoint)>& depth_m,
           double west_m = -200.0)
        : frame(geo::WaterFrame::centredOn(centre).value()),
          water(support::madeUpWater({{support::rectangle(west_m, -150.0, 200.0, 150.0), {}}},
                                     depth_m, cell_m)) {
        drawn.mask = water.mask;
        drawn.depth = water.depth;
        grid::Grid<float> widths_m(water.depth.frame(), NAN);
        for (std::size_t i = 0; i < widths_m.size(); ++i) {
            widths_m[i] = water.depth.has(i) ? static_cast<float>(halfWidth_m) : NAN;
        }
        drawn.trust = surface::TrustGrid(
            std::move(widths_m),
            grid::Grid<surface::TrustName>(water.depth.frame(), surface::TrustName::inferred));
    }
    [[nodiscard]] surface::PlacedDrawing placed() const { return {drawn, frame}; }

    geo::WaterFrame frame;
    support::MadeUpWater water;
    surface::DrawnWater drawn;
};

constexpr geo::LonLat here{3.1, 55.2};

base::Result<surface::BottomChange> compared(const Survey& later, const Survey& earlier,
                                             double levelRise_m = 0.0) {
    base::Progress quiet;
    return surface::compareDrawings(later.placed(), earlier.placed(), Length::metres(levelRise_m),
                                    quiet);
}

/// Half a metre of silt within 40 m of the middle, and a hole of a metre dug in the east.
double afterYears_m(WaterPoint p) {
    const bool isSilted = std::hypot(p.x_m, p.y_m) < 40.0;
    const bool isDug = std::fabs(p.x_m - 150.0) < 20.0 && std::fabs(p.y_m) < 20.0;
    return slope_m(p) - (isSilted ? 0.5 : 0.0) + (isDug ? 1.0 : 0.0);
}

TEST(CompareDrawings, FindsWhatHasSiltedUpAndWhatWasDugOut) {
    const Survey earlier(here, 4.0, slope_m);
    const Survey later(here, 5.0, afterYears_m);
    const auto change = compared(later, earlier).value();
    const grid::GridFrame& frame = change.rise_m.frame();
    EXPECT_NEAR(change.rise_m[frame.cellOf({0, 0})], 0.5, 0.02);
    EXPECT_NEAR(change.rise_m[frame.cellOf({150, 0})], -1.0, 0.02);
    EXPECT_NEAR(change.rise_m[frame.cellOf({-120, 80})], 0.0, 0.02);
    EXPECT_NEAR(change.halfWidth_m[frame.cellOf({0, 0})], halfWidth_m * std::sqrt(2.0), 1e-6);
    EXPECT_TRUE(change.isSure(frame.index(frame.cellOf({0, 0}))));
    EXPECT_FALSE(change.isSure(frame.index(frame.cellOf({-120, 80}))));
    const surface::ChangeSums sums = surface::sumUp(change, later.drawn.mask);
    EXPECT_NEAR(sums.compared.inSquareMetres(), 400.0 * 300.0, 0.01 * 400.0 * 300.0);
    EXPECT_NEAR(sums.middle.inMetres(), 0.0, 0.01);
    EXPECT_NEAR(sums.risen.inSquareMetres(), M_PI * 1600.0, 250.0);
    EXPECT_NEAR(sums.filled.inCubicMetres(), 0.5 * M_PI * 1600.0, 125.0);
    EXPECT_NEAR(sums.fallen.inSquareMetres(), 1600.0, 50.0);
    EXPECT_NEAR(sums.lost.inCubicMetres(), 1600.0, 50.0);
}

TEST(CompareDrawings, ComparesBedsAndNotDepthsWhereTheChartLevelsDiffer) {
    const Survey earlier(here, 5.0, slope_m);
    const Survey later(here, 5.0, [](WaterPoint p) { return slope_m(p) + 0.4; });
    // The later chart level stands 0.4 m higher: the bed is where it was.
    const auto same = compared(later, earlier, 0.4).value();
    EXPECT_NEAR(surface::sumUp(same, later.drawn.mask).middle.inMetres(), 0.0, 1e-4);
    const auto sunk = compared(later, earlier, 0.0).value();
    EXPECT_NEAR(surface::sumUp(sunk, later.drawn.mask).middle.inMetres(), -0.4, 1e-4);
}

TEST(CompareDrawings, FindsTheSamePlaceInAnotherFrame) {
    const geo::LonLat beside{3.1012, 55.2004}; // 76 m east, 45 m north
    const auto other = geo::WaterFrame::centredOn(beside).value();
    const auto first = geo::WaterFrame::centredOn(here).value();
    const Survey earlier(beside, 4.0,
                         [&](WaterPoint p) { return slope_m(first.toWater(other.toEarth(p))); });
    const Survey later(here, 5.0, slope_m);
    const auto change = compared(later, earlier).value();
    std::size_t compared = 0;
    for (std::size_t i = 0; i < change.rise_m.size(); ++i) {
        const bool is = !std::isnan(change.rise_m[i]);
        compared += is ? 1 : 0;
        ASSERT_TRUE(!is || std::fabs(change.rise_m[i]) < 0.03F) << i;
    }
    EXPECT_GT(compared, 3000U);
    EXPECT_LT(compared, later.drawn.depth.size()) << "where the earlier one ended there is nothing";
}

TEST(CompareDrawings, RefusesWatersThatHardlyShareAnything) {
    const Survey later(here, 5.0, slope_m);
    const auto refused = compared(later, Survey({3.105, 55.2}, 5.0, slope_m)); // 320 m east
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().kind, base::ErrorKind::unusableInput);
    EXPECT_TRUE(compared(later, Survey({3.1025, 55.2}, 5.0, slope_m))) << "160 m: three fifths";
    EXPECT_TRUE(compared(later, Survey(here, 5.0, slope_m, 150.0))) << "a small part of it";
}

TEST(CompareDrawings, CanBeStopped) {
    const Survey one(here, 5.0, slope_m);
    class : public base::Progress {
    public:
        [[nodiscard]] bool stopAsked() const override { return true; }
    } stopped;
    const auto change = surface::compareDrawings(one.placed(), one.placed(), Length(), stopped);
    ASSERT_FALSE(change);
    EXPECT_EQ(change.error().kind, base::ErrorKind::cancelled);
}

} // namespace
