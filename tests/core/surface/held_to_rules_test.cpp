// SPDX-License-Identifier: GPL-3.0-or-later
// The rules that a drawing keeps to, at their thresholds: what is a spike, what is held out, how
// deep it may go, which soundings lie in the water, which settings are taken.
#include "core/surface/draw_water.h"
#include "core/surface/solver/cell_choice.h"
#include "core/surface/solver/deepest_nearby.h"
#include "core/surface/solver/held_out.h"
#include "core/surface/solver/spikes.h"
#include "tests/core/surface/tracks.h"

#include <cmath>
#include <numeric>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using soundings::KeptSounding;
using surface::DrawSettings;
using testing::ElementsAre;
using testing::IsEmpty;
using units::Length;

/// A level track of `count` soundings 3 m apart.
std::vector<KeptSounding> track(std::size_t count, double depth_m, double step_m = 3.0) {
    std::vector<KeptSounding> made;
    for (std::size_t i = 0; i < count; ++i) {
        made.push_back(tracks::at({step_m * static_cast<double>(i), 0.0}, depth_m));
    }
    return made;
}

TEST(SpikeRule, IsThirtyFiveCentimetresAndAHundredthOfTheDepthEitherWay) {
    for (const auto& [depth_m, threshold_m] : {std::pair(1.0, 0.36), {10.0, 0.45}, {25.0, 0.60}}) {
        for (const double sign : {-1.0, 1.0}) {
            auto soundings = track(13, depth_m);
            soundings[6].depth_m = depth_m + sign * (threshold_m - 0.005);
            EXPECT_THAT(surface::solver::spikesIn(soundings), IsEmpty()) << depth_m;
            soundings[6].depth_m = depth_m + sign * (threshold_m + 0.005);
            EXPECT_THAT(surface::solver::spikesIn(soundings), ElementsAre(6U)) << depth_m;
        }
    }
}

TEST(SpikeRule, GoesByFiveSpreadsWhereTheTrackIsRough) {
    auto soundings = track(13, 10.0);
    for (std::size_t i = 0; i < 13; ++i) {
        soundings[i].depth_m += i % 2 == 0 ? 0.2 : -0.2;
    }
    // Of six at 10.2 m and six at 9.8 m the upper median is 10.2 m, and 0.4 m that of the distances
    // from it: five spreads of 1.4826 x 0.4 m are 2.965 m.
    soundings[6].depth_m = 10.2 + 2.95;
    EXPECT_THAT(surface::solver::spikesIn(soundings), IsEmpty());
    soundings[6].depth_m = 10.2 + 2.98;
    EXPECT_THAT(surface::solver::spikesIn(soundings), ElementsAre(6U));
}

TEST(SpikeRule, AsksFiveNeighboursOfItsOwnPassWithinTwentyMetresOfEachOther) {
    auto four = track(5, 5.0);
    four[2].depth_m = 9.0;
    EXPECT_THAT(surface::solver::spikesIn(four), IsEmpty());
    auto five = track(6, 5.0);
    five[2].depth_m = 9.0;
    EXPECT_THAT(surface::solver::spikesIn(five), ElementsAre(2U));
    auto otherPass = track(9, 5.0);
    otherPass[4].depth_m = 9.0;
    for (std::size_t i = 5; i < 9; ++i) {
        otherPass[i].pass = 1;
    }
    EXPECT_THAT(surface::solver::spikesIn(otherPass), IsEmpty());
    auto apart = track(9, 5.0, 20.5);
    apart[4].depth_m = 9.0;
    EXPECT_THAT(surface::solver::spikesIn(apart), IsEmpty());
    auto near = track(9, 5.0, 8.0); // five on each side within 40 m
    near[4].depth_m = 9.0;
    EXPECT_THAT(surface::solver::spikesIn(near), ElementsAre(4U));
}

TEST(HeldOutRule, DealsStretchesToTheFoldsInTurnAndEverySoundingToOne) {
    const auto soundings = track(480, 5.0);
    std::vector<std::size_t> positions(soundings.size());
    std::iota(positions.begin(), positions.end(), std::size_t{0});
    std::vector<int> seen(soundings.size(), 0);
    for (int which = 0; which < 6; ++which) {
        const auto fold = surface::solver::foldOf(soundings, positions, 5, 6, which);
        EXPECT_EQ(fold.heldOut.size(), 80U);
        EXPECT_EQ(fold.kept.size(), 400U);
        for (const std::size_t i : fold.heldOut) {
            EXPECT_EQ(i / 5 % 6, static_cast<std::size_t>(which)) << i;
            ++seen[i];
        }
    }
    EXPECT_THAT(seen, testing::Each(1));
    // About eight stretches a fold: 480 / (8 x 6) = 10 soundings at most.
    const auto longer = surface::solver::foldOf(soundings, positions, 60, 6, 1);
    EXPECT_EQ(longer.heldOut.front(), 10U);
    EXPECT_EQ(longer.heldOut[9], 19U);
    EXPECT_EQ(longer.heldOut[10], 70U);
}

TEST(HeldOutRule, BeginsANewStretchWithANewPassOnceTheOldIsHalfDone) {
    auto soundings = track(480, 5.0);
    std::vector<std::size_t> positions(soundings.size());
    std::iota(positions.begin(), positions.end(), std::size_t{0});
    for (std::size_t i = 6; i < soundings.size(); ++i) {
        soundings[i].pass = 1;
    }
    EXPECT_EQ(surface::solver::foldOf(soundings, positions, 10, 6, 1).heldOut.front(), 6U);
    soundings[5].pass = 1; // after five of ten: not yet
    EXPECT_EQ(surface::solver::foldOf(soundings, positions, 10, 6, 1).heldOut.front(), 10U);
}

TEST(DeepestRule, IsFifteenHundredthsMoreThanWasSoundedWithinFiveHundredMetres) {
    const auto water = support::madeUpWater(
        {{support::rectangle(-1500, -60, 1500, 60), {}}}, [](geo::WaterPoint) { return 2.0; },
        20.0);
    base::Progress silent;
    const auto ground =
        surface::solver::groundOf(water.outline, Length::metres(20.0), 1, silent).value();
    const auto limitAt = [&](const std::vector<KeptSounding>& soundings, double x_m) {
        std::vector<std::size_t> positions(soundings.size());
        std::iota(positions.begin(), positions.end(), std::size_t{0});
        const auto limit_m = surface::solver::deepestNearby_m(ground, soundings, positions, silent);
        const grid::Cell cell = ground.frame().cellOf({x_m, 0.0});
        const int pad = surface::solver::ActiveCells::padding;
        return limit_m[ground.cells.place(cell.col + pad, cell.row + pad)];
    };
    const std::vector ends{tracks::at({-1400.0, 0.0}, 10.0), tracks::at({1400.0, 0.0}, 2.0),
                           tracks::at({1390.0, 0.0}, 1.0)};
    EXPECT_NEAR(limitAt(ends, -1400.0), 11.5, 1e-9);
    EXPECT_NEAR(limitAt(ends, -1000.0), 11.5, 1e-9);
    EXPECT_NEAR(limitAt(ends, 1400.0), 2.3, 1e-9) << "the deepest there, not the last";
    EXPECT_NEAR(limitAt(ends, 1000.0), 2.3, 1e-9);
    EXPECT_NEAR(limitAt(ends, 0.0), 11.5, 1e-9) << "none that near: the deepest of all";
    EXPECT_NEAR(limitAt({tracks::at({0.0, 0.0}, 0.1)}, 0.0), 0.5, 1e-9);
}

TEST(CellRule, TakesTheRoundSizeThatSuitsTheWater) {
    const auto cellFor = [](double side_m, std::size_t soundings) {
        const auto water = support::madeUpWater(
            {{support::rectangle(0.0, 0.0, side_m, side_m), {}}},
            [](geo::WaterPoint) { return 2.0; }, side_m / 20.0);
        return surface::solver::cellFor(water.outline, soundings).inMetres();
    };
    EXPECT_EQ(cellFor(1800.0, 1000), 5.0); // a 360th
    EXPECT_EQ(cellFor(1440.0, 1000), 4.0);
    EXPECT_EQ(cellFor(900.0, 1000), 2.5);
    EXPECT_EQ(cellFor(200.0, 100), 1.0);        // never finer
    EXPECT_EQ(cellFor(1800.0, 1'000'000), 2.0); // a sounding each 1.8 m: 2 m
    EXPECT_EQ(cellFor(9000.0, 1000), 20.0);
    EXPECT_EQ(cellFor(40'000.0, 1000), 40.0); // a million cells at most
    const auto large = support::plane(1000.0, 2.0, 2.0, 100.0);
    const auto small = support::plane(200.0, 2.0, 2.0, 20.0);
    const auto trend = [](const support::MadeUpWater& water, double cell_m) {
        return surface::solver::trendCellFor(water.outline, Length::metres(cell_m)).inMetres();
    };
    EXPECT_EQ(trend(large, 5.0), 10.0);
    EXPECT_EQ(trend(large, 12.0), 12.0);
    EXPECT_EQ(trend(small, 2.0), 4.0);
    const auto trial = [](const support::MadeUpWater& water, double cell_m) {
        return surface::solver::trialCellFor(water.outline, Length::metres(cell_m)).inMetres();
    };
    EXPECT_EQ(trial(small, 5.0), 10.0);
    EXPECT_NEAR(trial(large, 3.0), 14.142, 0.001); // 20,000 of them on 2000 m x 2000 m
    const auto trust = [](const support::MadeUpWater& water, double cell_m) {
        return surface::solver::trustCellFor(water.outline, Length::metres(cell_m)).inMetres();
    };
    EXPECT_EQ(trust(small, 5.0), 10.0);
    EXPECT_EQ(trust(large, 3.0), 10.0); // 2000 m / 200
}

TEST(DrawRules, ASoundingBesideTheShoreByLessThanItsErrorIsStillInTheWater) {
    const support::MadeUpWater water = support::plane(100.0, 3.0, 3.0, 5.0);
    const auto outside = [&](double off_m, double shoreOffset_m) {
        DrawSettings settings;
        settings.cell = Length::metres(5.0);
        settings.withTrust = false;
        settings.shoreOffset = Length::metres(shoreOffset_m);
        base::Progress silent;
        return surface::drawWater(
                   water.outline,
                   std::vector{tracks::at({0.0, 0.0}, 3.0), tracks::at({100.0 + off_m, 0.0}, 1.0)},
                   settings, silent)
            .value()
            .report.soundingsOutside;
    };
    EXPECT_EQ(outside(4.9, 5.0), 0U);
    EXPECT_EQ(outside(5.1, 5.0), 1U);
    EXPECT_EQ(outside(5.1, 6.0), 0U);
}

TEST(DrawRules, EverySettingIsTakenWithinItsRangeAndNamedBeyondIt) {
    struct Case {
        const char* says;
        void (*set)(DrawSettings&, double);
        double low;
        double high;
        double step;
    };
    const std::vector<Case> cases{
        {"the cell must", [](auto& s, double v) { s.cell = Length::metres(v); }, 0.5, 100.0, 0.01},
        {"the stiffness must", [](auto& s, double v) { s.stiffness = v; }, 1.0, 1e6, 0.01},
        {"along contours", [](auto& s, double v) { s.contourStiffness = v; }, 0.0, 1000.0, 0.01},
        {"the shore may be off", [](auto& s, double v) { s.shoreOffset = Length::metres(v); }, 0.0,
         50.0, 0.01},
        {"0.01 to 2 m", [](auto& s, double v) { s.soundingError = Length::metres(v); }, 0.01, 2.0,
         0.001},
        {"of its depth", [](auto& s, double v) { s.soundingErrorShare = v; }, 0.0, 0.2, 0.001},
        {"the threads", [](auto& s, double v) { s.threads = static_cast<int>(v); }, 1.0, 64.0, 1.0},
    };
    EXPECT_THAT(surface::problemsIn(DrawSettings()), IsEmpty());
    for (const Case& c : cases) {
        for (const double inside : {c.low, c.high}) {
            DrawSettings settings;
            c.set(settings, inside);
            EXPECT_THAT(surface::problemsIn(settings), IsEmpty()) << c.says;
        }
        for (const double beyond : {c.low - c.step, c.high + c.step}) {
            DrawSettings settings;
            c.set(settings, beyond);
            EXPECT_THAT(surface::problemsIn(settings), ElementsAre(testing::HasSubstr(c.says)));
        }
    }
    const DrawSettings usual;
    EXPECT_EQ(usual.shoreOffset.inMetres(), 5.0);
    EXPECT_EQ(usual.soundingError.inMetres(), 0.08);
    EXPECT_EQ(usual.soundingErrorShare, 0.006);
    EXPECT_TRUE(usual.withTrust);
}

/// A small round water sounded densely enough to choose from.
class KeepingTheChoice : public testing::Test {
protected:
    surface::DrawnWater drawn(const DrawSettings& settings, const surface::DrawnWater* before) {
        base::Progress silent;
        return surface::drawWater(water.outline, sounded, settings, silent, before).value();
    }
    static DrawSettings cells() {
        DrawSettings settings;
        settings.cell = Length::metres(5.0);
        return settings;
    }
    const support::MadeUpWater water = support::cone(70.0, 6.0, 5.0);
    const std::vector<KeptSounding> sounded = tracks::lines(water, 15.0, 3.0, 0.05);
};

TEST_F(KeepingTheChoice, IsForTheSameWaterOnlyAndNeverAgainstWhatTheUserSets) {
    const surface::DrawnWater before = drawn(cells(), nullptr);
    const surface::DrawnWater again = drawn(cells(), &before);
    EXPECT_TRUE(again.report.isChoiceKept);
    EXPECT_EQ(again.report.stiffness, before.report.stiffness);
    EXPECT_EQ(again.report.contourStiffness, before.report.contourStiffness);
    EXPECT_EQ(again.report.trustCurve, before.report.trustCurve);
    EXPECT_EQ(again.report.chosenFrom, sounded.size());
    EXPECT_EQ(again.report.heldOut->median_m, before.report.heldOut->median_m);
    EXPECT_EQ(again.report.chosenOver, before.report.chosenOver);
    EXPECT_NEAR(before.report.chosenOver.inSquareMetres(), 15393.0, 10.0);

    DrawSettings stiff = cells();
    stiff.stiffness = 700.0;
    const auto byStiffness = drawn(stiff, &before);
    EXPECT_FALSE(byStiffness.report.isChoiceKept);
    EXPECT_EQ(byStiffness.report.stiffness, 700.0);
    DrawSettings along = cells();
    along.contourStiffness = 55.0;
    const auto byContours = drawn(along, &before);
    EXPECT_FALSE(byContours.report.isChoiceKept);
    EXPECT_EQ(byContours.report.contourStiffness, 55.0);
    DrawSettings quick = cells();
    quick.withTrust = false;
    const auto withoutTrust = drawn(quick, &before);
    EXPECT_FALSE(withoutTrust.report.isChoiceKept);
    EXPECT_EQ(withoutTrust.trust.shareOf(surface::TrustName::guess), 1.0);
    EXPECT_FALSE(drawn(cells(), &withoutTrust).report.isChoiceKept) << "there was no curve to keep";
}

TEST_F(KeepingTheChoice, ReportsWhatWasUsedHeldOutAndLeftOut) {
    std::vector<KeptSounding> soundings = sounded;
    soundings[60].depth_m += 4.0;
    soundings.push_back(tracks::at({300.0, 0.0}, 2.0));
    base::Progress silent;
    const auto result = surface::drawWater(water.outline, soundings, cells(), silent).value();
    EXPECT_THAT(result.report.spikes, ElementsAre(60U));
    EXPECT_EQ(result.report.soundingsOutside, 1U);
    EXPECT_EQ(result.report.soundingsUsed, sounded.size() - 1);
    EXPECT_EQ(result.report.chosenFrom, sounded.size() - 1);
    EXPECT_EQ(result.report.cell.inMetres(), 5.0);
    EXPECT_EQ(result.report.cells, result.mask.activeCount());
    std::vector<std::size_t> used;
    for (std::size_t i = 0; i < sounded.size(); ++i) {
        if (i != 60) {
            used.push_back(i);
        }
    }
    const auto held = surface::solver::foldOf(soundings, used, 60, 6, 1).heldOut.size() +
                      surface::solver::foldOf(soundings, used, 60, 6, 4).heldOut.size();
    EXPECT_EQ(result.report.heldOut->soundings, static_cast<int>(held));
    EXPECT_GT(result.report.heldOut->mean_m, 0.0);
    EXPECT_LT(result.report.heldOut->median_m, 0.3);
}

// Humps of a metre 40 m apart, sounded every 3 m on lines 8 m apart: what is smoothed there is
// missed. On an even bank nothing is gained by following each sounding.
TEST(ChoiceRule, TakesTheSoftestWhereTheBottomIsRoughAndNotWhereItIsEven) {
    const auto chosen = [](const support::Bottom& bottom, double noise_m) {
        const support::MadeUpWater water = support::madeUpWater(
            {{support::rectangle(-150.0, -150.0, 150.0, 150.0), {}}}, bottom, 4.0);
        DrawSettings settings;
        settings.cell = Length::metres(4.0);
        settings.withTrust = false;
        base::Progress silent;
        return surface::drawWater(water.outline, tracks::lines(water, 8.0, 3.0, noise_m), settings,
                                  silent)
            .value()
            .report;
    };
    const auto rough = chosen(
        [](geo::WaterPoint p) { return 6.0 + std::sin(p.x_m / 6.4) * std::sin(p.y_m / 6.4); }, 0.0);
    EXPECT_EQ(rough.stiffness, 30.0);
    const auto even = chosen([](geo::WaterPoint p) { return 6.0 + 0.01 * p.x_m; }, 0.3);
    EXPECT_GE(even.stiffness, 300.0);
}

TEST_F(KeepingTheChoice, NeedsSixtySoundingsToHoldOutFrom) {
    base::Progress silent;
    const std::vector<KeptSounding> few(sounded.begin(), sounded.begin() + 59);
    const auto common = surface::drawWater(water.outline, few, cells(), silent).value();
    EXPECT_FALSE(common.report.heldOut.has_value());
    EXPECT_EQ(common.report.stiffness, 300.0);
    EXPECT_EQ(common.report.contourStiffness, 30.0);
    const std::vector<KeptSounding> enough(sounded.begin(), sounded.begin() + 60);
    EXPECT_TRUE(surface::drawWater(water.outline, enough, cells(), silent)
                    .value()
                    .report.heldOut.has_value());
}

} // namespace
