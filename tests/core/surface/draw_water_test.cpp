// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/draw_water.h"

#include "tests/core/surface/tracks.h"

#include <algorithm>
#include <atomic>
#include <cmath>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using surface::DrawnWater;
using surface::DrawSettings;
using testing::HasSubstr;

DrawSettings cellOf(double cell_m) {
    DrawSettings settings;
    settings.cell = units::Length::metres(cell_m);
    return settings;
}

base::Result<DrawnWater> drawn(const support::MadeUpWater& water,
                               const std::vector<soundings::KeptSounding>& soundings,
                               const DrawSettings& settings = cellOf(5.0)) {
    base::Progress progress;
    return surface::drawWater(water.outline, soundings, settings, progress);
}

/// Root mean square difference from the truth over cells whose centre is in the water.
double errorOf(const DrawnWater& drawn, const support::MadeUpWater& water) {
    double sum = 0.0;
    int count = 0;
    for (std::size_t i = 0; i < drawn.depth.size(); ++i) {
        const geo::WaterPoint p = drawn.depth.frame().centre(drawn.depth.frame().cellAt(i));
        if (drawn.depth.has(i) && water.outline.contains(p)) {
            sum += std::pow(static_cast<double>(drawn.depth.raw_m()[i]) - water.bottom(p), 2);
            ++count;
        }
    }
    return std::sqrt(sum / count);
}

/// Not a number where there is no depth.
double depthAt(const DrawnWater& drawn, geo::WaterPoint p) {
    return drawn.depth.at(p).value_or(units::Depth::metres(std::nan(""))).inMetres();
}

float shallowest(const DrawnWater& drawn) {
    float least = INFINITY;
    for (const float d : drawn.depth.raw_m()) {
        least = std::isnan(d) ? least : std::min(least, d);
    }
    return least;
}

TEST(DrawWater, FindsAConeAgainFromLines) {
    const support::MadeUpWater water = support::cone(300.0, 12.0, 5.0);
    const auto result = drawn(water, tracks::lines(water, 50.0, 3.0, 0.05));
    ASSERT_TRUE(result.has_value()) << result.error().sentence();
    EXPECT_LT(errorOf(*result, water), 0.12);
    EXPECT_GE(shallowest(*result), 0.0F);
    EXPECT_EQ(result->report.soundingsOutside, 0U);
    ASSERT_TRUE(result->report.heldOut.has_value());
    EXPECT_LT(result->report.heldOut.value_or(surface::HeldOutError{1e9, 1e9, 0}).median_m, 0.3);
}

TEST(DrawWater, GivesEveryActiveCellADepthAndATrust) {
    const support::MadeUpWater water = support::twoBasins(200.0, 30.0, 6.0, 5.0);
    const auto result = drawn(water, tracks::lines(water, 40.0, 3.0));
    ASSERT_TRUE(result.has_value()) << result.error().sentence();
    for (std::size_t i = 0; i < result->depth.size(); ++i) {
        const grid::Cell cell = result->depth.frame().cellAt(i);
        ASSERT_EQ(result->depth.has(i), result->mask.isActive(i));
        ASSERT_EQ(result->trust.at(cell).has_value(), result->mask.isActive(i));
    }
}

TEST(DrawWater, DoesNotLeakAcrossLand) {
    // two basins beside each other with 20 m of land between; only one is deep
    std::vector<geo::Piece> pieces{{support::rectangle(-300.0, -200.0, -10.0, 200.0), {}},
                                   {support::rectangle(10.0, -200.0, 300.0, 200.0), {}}};
    const support::MadeUpWater water = support::madeUpWater(
        pieces,
        [](geo::WaterPoint p) {
            const double shore_m = std::min(
                {std::abs(p.x_m) - 10.0, 300.0 - std::abs(p.x_m), 200.0 - std::abs(p.y_m)});
            return (p.x_m < 0.0 ? 15.0 : 3.0) * std::min(1.0, shore_m / 40.0);
        },
        5.0);
    const auto result = drawn(water, tracks::lines(water, 50.0, 3.0));
    ASSERT_TRUE(result.has_value()) << result.error().sentence();
    for (double y_m = -100.0; y_m <= 100.0; y_m += 10.0) {
        EXPECT_NEAR(depthAt(*result, geo::WaterPoint{60.0, y_m}), 3.0, 0.3);
        EXPECT_NEAR(depthAt(*result, geo::WaterPoint{-60.0, y_m}), 15.0, 0.7);
    }
}

TEST(DrawWater, LeavesSpikesOut) {
    const support::MadeUpWater water = support::cone(300.0, 12.0, 5.0);
    std::vector<soundings::KeptSounding> soundings = tracks::lines(water, 50.0, 3.0, 0.03);
    for (std::size_t i = 40; i < soundings.size(); i += 97) {
        soundings[i].depth_m = 25.0;
    }
    const auto result = drawn(water, soundings);
    ASSERT_TRUE(result.has_value()) << result.error().sentence();
    EXPECT_LT(errorOf(*result, water), 0.15);
    EXPECT_GE(result->report.spikes.size(), soundings.size() / 100);
    for (const std::size_t spike : result->report.spikes) {
        EXPECT_EQ(spike % 97, 40U);
    }
}

TEST(DrawWater, IsTheSameForAnyNumberOfThreads) {
    const support::MadeUpWater water = support::cone(400.0, 9.0, 5.0);
    const auto soundings = tracks::lines(water, 60.0, 4.0, 0.05);
    DrawSettings settings = cellOf(1.5);
    settings.stiffness = 300.0;
    settings.contourStiffness = 10.0;
    settings.threads = 1;
    const auto one = drawn(water, soundings, settings);
    settings.threads = 3;
    const auto three = drawn(water, soundings, settings);
    ASSERT_TRUE(one.has_value() && three.has_value());
    for (std::size_t i = 0; i < one->depth.size(); ++i) {
        ASSERT_EQ(one->depth.has(i), three->depth.has(i));
        if (one->depth.has(i)) {
            ASSERT_EQ(one->depth.raw_m()[i], three->depth.raw_m()[i]);
            ASSERT_EQ(one->trust.halfWidths_m()[i], three->trust.halfWidths_m()[i]);
        }
    }
}

TEST(DrawWater, ScalesTheTrendToOneSounding) {
    const support::MadeUpWater water = support::cone(300.0, 10.0, 5.0);
    const auto result = drawn(water, {tracks::at({0.0, 0.0}, 10.0)});
    ASSERT_TRUE(result.has_value()) << result.error().sentence();
    EXPECT_NEAR(depthAt(*result, geo::WaterPoint{0.0, 0.0}), 10.0, 0.5);
    const double halfWay_m = depthAt(*result, geo::WaterPoint{150.0, 0.0});
    EXPECT_GT(halfWay_m, 3.0);
    EXPECT_LT(halfWay_m, 10.5);
    EXPECT_LT(depthAt(*result, geo::WaterPoint{295.0, 0.0}), 2.0);
}

TEST(DrawWater, TakesFewSoundingsOnALineInOneCellOrAtOddsWithEachOther) {
    const support::MadeUpWater water = support::cone(200.0, 8.0, 5.0);
    const std::vector<std::vector<soundings::KeptSounding>> cases{
        {tracks::at({0.0, 0.0}, 8.0), tracks::at({50.0, 0.0}, 6.0), tracks::at({100.0, 0.0}, 4.0)},
        {tracks::at({1.0, 1.0}, 8.0), tracks::at({1.5, 1.0}, 8.1), tracks::at({1.0, 1.5}, 7.9)},
        {tracks::at({0.0, 0.0}, 8.0), tracks::at({0.0, 0.0}, 2.0)},
        {tracks::at({0.0, 0.0}, 0.0)},
    };
    for (const auto& soundings : cases) {
        const auto result = drawn(water, soundings);
        ASSERT_TRUE(result.has_value()) << result.error().sentence();
        for (const float d : result->depth.raw_m()) {
            EXPECT_TRUE(std::isnan(d) || (d >= 0.0F && d < 1.15F * 8.1F + 0.01F));
        }
    }
}

TEST(DrawWater, FindsAParaboloidAndAPlaneBankAgainFromLines) {
    const support::MadeUpWater bowl = support::madeUpWater(
        {{support::circle({0.0, 0.0}, 300.0), {}}},
        [](geo::WaterPoint p) {
            return 12.0 * (1.0 - (p.x_m * p.x_m + p.y_m * p.y_m) / (300.0 * 300.0));
        },
        5.0);
    const auto drawnBowl = drawn(bowl, tracks::lines(bowl, 50.0, 3.0));
    ASSERT_TRUE(drawnBowl.has_value()) << drawnBowl.error().sentence();
    EXPECT_LT(errorOf(*drawnBowl, bowl), 0.1);

    // a long water whose two banks are planes of 4 % that meet in the middle
    const support::MadeUpWater roof = support::madeUpWater(
        {{support::rectangle(-600.0, -200.0, 600.0, 200.0), {}}},
        [](geo::WaterPoint p) {
            return 0.04 * std::min(200.0 - std::abs(p.y_m), 600.0 - std::abs(p.x_m));
        },
        5.0);
    const auto drawnRoof = drawn(roof, tracks::lines(roof, 40.0, 3.0));
    ASSERT_TRUE(drawnRoof.has_value()) << drawnRoof.error().sentence();
    EXPECT_LT(errorOf(*drawnRoof, roof), 0.12);
    for (const double y_m : {-150.0, -90.0, 60.0, 130.0}) {
        EXPECT_NEAR(depthAt(*drawnRoof, {2.5, y_m}), 0.04 * (200.0 - std::abs(y_m)), 0.1);
    }
}

TEST(DrawWater, TakesSoundingsOnTheShoreAlone) {
    const support::MadeUpWater water = support::cone(200.0, 8.0, 5.0);
    std::vector<soundings::KeptSounding> soundings;
    for (double angle = 0.0; angle < 6.28; angle += 0.05) {
        soundings.push_back(tracks::at({199.0 * std::cos(angle), 199.0 * std::sin(angle)}, 0.1));
    }
    const auto result = drawn(water, soundings);
    ASSERT_TRUE(result.has_value()) << result.error().sentence();
    EXPECT_LE(result->depth.deepest().value_or(units::Depth{}).inMetres(), 0.7);
    const auto middle = result->trust.halfWidthAt(geo::WaterPoint{0.0, 0.0});
    ASSERT_TRUE(middle.has_value());
    EXPECT_GT(middle->inMetres(),
              2.0 * result->trust.halfWidthAt(geo::WaterPoint{195.0, 0.0})->inMetres());
}

TEST(DrawWater, KeepsTwoBasinsApartThatAreJoinedByAMetreOfWater) {
    // deep in the west, shallow in the east, a neck one metre wide and 30 m long between them
    const std::vector<geo::WaterPoint> shore{{-300.0, -100.0}, {-15.0, -100.0}, {-15.0, -0.5},
                                             {15.0, -0.5},     {15.0, -100.0},  {300.0, -100.0},
                                             {300.0, 100.0},   {15.0, 100.0},   {15.0, 0.5},
                                             {-15.0, 0.5},     {-15.0, 100.0},  {-300.0, 100.0}};
    const support::MadeUpWater water = support::madeUpWater(
        {{shore, {}}}, [](geo::WaterPoint p) { return p.x_m < 0.0 ? 12.0 : 1.5; }, 5.0);
    const auto result = drawn(water, tracks::lines(water, 25.0, 3.0));
    ASSERT_TRUE(result.has_value()) << result.error().sentence();
    EXPECT_NEAR(depthAt(*result, {-40.0, 20.0}), 12.0, 1.0);
    EXPECT_NEAR(depthAt(*result, {40.0, 20.0}), 1.5, 0.3);
}

TEST(DrawWater, DrawsRoundTwoHundredIslands) {
    std::vector<std::vector<geo::WaterPoint>> islands;
    for (int k = 0; k < 200; ++k) {
        const geo::WaterPoint middle{-475.0 + 50.0 * (k % 20), -225.0 + 50.0 * (k / 20)};
        islands.push_back(support::circle(middle, 12.0));
    }
    const support::MadeUpWater water = support::madeUpWater(
        {{support::rectangle(-510.0, -260.0, 510.0, 260.0), islands}},
        [](geo::WaterPoint) { return 4.0; }, 5.0);
    const auto result = drawn(water, tracks::lines(water, 25.0, 3.0));
    ASSERT_TRUE(result.has_value()) << result.error().sentence();
    EXPECT_FALSE(result->depth.has(result->depth.frame().cellOf({-475.0, -225.0})));
    EXPECT_NEAR(depthAt(*result, {-450.0, -200.0}), 4.0, 1.0);
}

TEST(DrawWater, NeverDrawsMuchDeeperThanWasSoundedNearby) {
    const support::MadeUpWater water = support::cone(300.0, 12.0, 5.0);
    std::vector<soundings::KeptSounding> soundings;
    for (double x_m = -290.0; x_m < -150.0; x_m += 2.0) { // only the slope, none of the middle
        soundings.push_back(tracks::at({x_m, 0.0}, water.bottom({x_m, 0.0})));
    }
    const auto result = drawn(water, soundings);
    ASSERT_TRUE(result.has_value()) << result.error().sentence();
    EXPECT_LE(result->depth.deepest().value_or(units::Depth{}).inMetres(),
              1.15 * soundings.back().depth_m + 1e-3);
}

TEST(DrawWater, ChoosesACellAndSaysSo) {
    const support::MadeUpWater water = support::cone(800.0, 12.0, 10.0);
    const auto result = drawn(water, tracks::lines(water, 100.0, 4.0), DrawSettings{});
    ASSERT_TRUE(result.has_value()) << result.error().sentence();
    EXPECT_GE(result->report.cell.inMetres(), 3.0);
    EXPECT_LE(result->report.cell.inMetres(), 6.0);
    EXPECT_EQ(result->report.cells, result->mask.activeCount());
}

TEST(DrawWater, RefusesWhatItCannotDraw) {
    const support::MadeUpWater water = support::cone(300.0, 12.0, 5.0);
    const auto none = drawn(water, {});
    ASSERT_FALSE(none.has_value());
    EXPECT_EQ(none.error().kind, base::ErrorKind::unusableInput);
    EXPECT_THAT(none.error().what, HasSubstr("no sounding"));

    const auto outside = drawn(water, {tracks::at({900.0, 0.0}, 5.0)});
    ASSERT_FALSE(outside.has_value());
    EXPECT_THAT(outside.error().what, HasSubstr("none of the 1 soundings lies in the water"));

    const auto noNumber = drawn(water, {tracks::at({0.0, 0.0}, 5.0), tracks::at({1.0, 0.0}, NAN)});
    ASSERT_FALSE(noNumber.has_value());
    EXPECT_EQ(noNumber.error().where, "sounding 2");

    DrawSettings settings = cellOf(-1.0);
    const auto badCell = drawn(water, {tracks::at({0.0, 0.0}, 5.0)}, settings);
    ASSERT_FALSE(badCell.has_value());
    EXPECT_EQ(badCell.error().kind, base::ErrorKind::wrongUse);
}

TEST(DrawWater, RefusesACellThatNeedsTooManyOfThem) {
    const support::MadeUpWater water = support::cone(10000.0, 12.0, 100.0);
    const auto result = drawn(water, {tracks::at({0.0, 0.0}, 5.0)}, cellOf(0.5));
    ASSERT_FALSE(result.has_value());
    EXPECT_EQ(result.error().kind, base::ErrorKind::wrongUse);
    EXPECT_THAT(result.error().what, HasSubstr("million"));
}

TEST(DrawWater, StopsWhenAsked) {
    struct StopAtOnce : base::Progress {
        bool stopAsked() const override { return true; }
    } progress;
    const support::MadeUpWater water = support::cone(300.0, 12.0, 5.0);
    const auto result =
        surface::drawWater(water.outline, tracks::lines(water, 50.0, 3.0), cellOf(5.0), progress);
    ASSERT_FALSE(result.has_value());
    EXPECT_EQ(result.error().kind, base::ErrorKind::cancelled);
}

TEST(DrawWater, StopsWhereverItIsAsked) {
    struct StopAt : base::Progress {
        explicit StopAt(int which) : left(which) {}
        bool stopAsked() const override { return --left <= 0; }
        mutable std::atomic<int> left; ///< Threads ask too.
    };
    const support::MadeUpWater water = support::cone(120.0, 8.0, 4.0);
    const auto soundings = tracks::lines(water, 30.0, 3.0);
    StopAt never(1 << 30);
    ASSERT_TRUE(surface::drawWater(water.outline, soundings, cellOf(4.0), never));
    const int asked = (1 << 30) - never.left;
    ASSERT_GT(asked, 100);
    for (int which = 1; which < asked / 2; which += std::max(1, asked / 80)) {
        StopAt progress(which);
        const auto result = surface::drawWater(water.outline, soundings, cellOf(4.0), progress);
        ASSERT_FALSE(result.has_value()) << which << " of " << asked;
        EXPECT_EQ(result.error().kind, base::ErrorKind::cancelled);
    }
}

} // namespace
