// SPDX-License-Identifier: GPL-3.0-or-later
// A water drawn on from an earlier drawing after a small change, against one drawn afresh.
#include "core/surface/draw_water.h"

#include "tests/core/surface/tracks.h"

#include <cmath>

#include <gtest/gtest.h>

namespace {

using soundings::KeptSounding;
using surface::DrawnWater;

/// A gravel bar on a shelving bottom, sounded along lines.
class Redraw : public testing::Test {
protected:
    void SetUp() override { before_ = drawn(sounded, nullptr); }

    DrawnWater drawn(const std::vector<KeptSounding>& soundings, const DrawnWater* earlier) {
        return drawn(water.outline, soundings, earlier);
    }
    static DrawnWater drawn(const geo::Outline& outline, const std::vector<KeptSounding>& soundings,
                            const DrawnWater* earlier) {
        surface::DrawSettings settings;
        settings.cell = units::Length::metres(5.0);
        base::Progress progress;
        auto result = surface::drawWater(outline, soundings, settings, progress, earlier);
        EXPECT_TRUE(result.has_value()) << result.error().sentence();
        return result.value_or(DrawnWater());
    }
    /// Afresh with the stiffness of the drawing before: what the change alone does.
    DrawnWater drawnStiff(const std::vector<KeptSounding>& soundings) {
        surface::DrawSettings settings;
        settings.cell = units::Length::metres(5.0);
        settings.stiffness = before_.report.stiffness;
        settings.contourStiffness = before_.report.contourStiffness;
        base::Progress progress;
        return surface::drawWater(water.outline, soundings, settings, progress)
            .value_or(DrawnWater());
    }
    /// The share of cells whose depths differ by less than this much.
    static double alikeShare(const DrawnWater& a, const DrawnWater& b, double within_m) {
        EXPECT_EQ(a.depth.frame(), b.depth.frame());
        double alike = 0.0;
        double count = 0.0;
        for (std::size_t i = 0; i < a.depth.size(); ++i) {
            EXPECT_EQ(a.depth.has(i), b.depth.has(i));
            if (a.depth.has(i) && b.depth.has(i)) {
                count += 1.0;
                const float off = std::abs(a.depth.raw_m()[i] - b.depth.raw_m()[i]);
                alike += static_cast<double>(off) < within_m ? 1.0 : 0.0;
            }
        }
        return alike / count;
    }

    const support::MadeUpWater water = support::madeUpWater(
        {{support::circle({0, 0}, 300.0), {}}},
        [](geo::WaterPoint p) {
            const double bar = 3.0 * std::exp(-std::pow((p.y_m - 0.4 * p.x_m) / 30.0, 2));
            return std::max(0.0, (300.0 - std::hypot(p.x_m, p.y_m)) / 25.0 - bar);
        },
        5.0);
    const std::vector<KeptSounding> sounded = tracks::lines(water, 40.0, 3.0, 0.05);
    DrawnWater before_;
};

TEST_F(Redraw, AfterAFewSoundingsIsNearlyTheDrawingAfresh) {
    std::vector<KeptSounding> fewer = sounded;
    fewer.erase(fewer.begin() + 700, fewer.begin() + 712);
    const DrawnWater again = drawn(fewer, &before_);
    EXPECT_TRUE(again.report.isChoiceKept);
    EXPECT_EQ(again.report.stiffness, before_.report.stiffness);
    EXPECT_EQ(again.report.trustCurve, before_.report.trustCurve);
    EXPECT_GT(alikeShare(again, drawnStiff(fewer), 0.05), 0.99);
    EXPECT_LE(again.report.iterations, before_.report.iterations);
}

TEST_F(Redraw, BelievesSoundingsThatContradictWhatWasDrawn) {
    // a run of soundings over a pit that was not there before
    std::vector<KeptSounding> more = sounded;
    const geo::WaterPoint pit{100.0, -60.0};
    for (int k = -7; k <= 7; ++k) {
        KeptSounding s = tracks::at({pit.x_m + 3.0 * k, pit.y_m}, 12.5);
        s.pass = 1000;
        more.push_back(s);
    }
    const DrawnWater again = drawn(more, &before_);
    const DrawnWater afresh = drawnStiff(more);
    ASSERT_TRUE(again.report.isChoiceKept);
    const auto depthAt = [&](const DrawnWater& drawing) {
        return drawing.depth.at(pit)->inMetres();
    };
    EXPECT_GT(depthAt(again) - depthAt(before_), 2.0);
    EXPECT_NEAR(depthAt(again), depthAt(afresh), 0.15);
    EXPECT_GT(alikeShare(again, afresh, 0.1), 0.98);
}

TEST_F(Redraw, ThereAndBackManyTimesDriftsNowhere) {
    std::vector<KeptSounding> fewer = sounded;
    fewer.erase(fewer.begin() + 300, fewer.begin() + 310);
    DrawnWater last = before_;
    for (int turn = 0; turn < 6; ++turn) {
        last = drawn(fewer, &last);
        last = drawn(sounded, &last);
    }
    EXPECT_TRUE(last.report.isChoiceKept);
    EXPECT_GT(alikeShare(last, before_, 0.05), 0.99);
}

TEST_F(Redraw, ChoosesAnewAfterMoreThanOneInFiftySoundings) {
    std::vector<KeptSounding> fewer = sounded;
    fewer.resize(sounded.size() * 97 / 100);
    const DrawnWater again = drawn(fewer, &before_);
    EXPECT_FALSE(again.report.isChoiceKept);
    EXPECT_EQ(alikeShare(again, drawn(fewer, nullptr), 1e-9), 1.0);
    // small steps add up
    const std::size_t step = sounded.size() * 3 / 200;
    DrawnWater last = before_;
    std::vector<KeptSounding> left = sounded;
    left.resize(left.size() - step);
    last = drawn(left, &last);
    EXPECT_TRUE(last.report.isChoiceKept);
    left.resize(left.size() - step);
    EXPECT_FALSE(drawn(left, &last).report.isChoiceKept);
}

TEST_F(Redraw, FollowsACornerOfTheShore) {
    geo::Ring ring = support::circle({0, 0}, 300.0);
    ring.front() = {330.0, 0.0};
    const auto moved = geo::Outline::make(std::vector<geo::Piece>{{ring, {}}}, water.frame);
    ASSERT_TRUE(moved.has_value());
    const DrawnWater again = drawn(*moved, sounded, &before_);
    EXPECT_TRUE(again.report.isChoiceKept);
    EXPECT_GT(alikeShare(again, drawn(*moved, sounded, nullptr), 0.05), 0.99);
}

TEST_F(Redraw, ChoosesAnewOnceSmallStepsOfTheShoreHaveAddedUp) {
    DrawnWater last = before_;
    bool isKept = true;
    double radius_m = 300.0;
    int steps = 0;
    for (; isKept && steps < 5; ++steps) {
        radius_m += 2.0; // 1.3 % of the area
        const auto wider = geo::Outline::make(
            std::vector<geo::Piece>{{support::circle({0, 0}, radius_m), {}}}, water.frame);
        ASSERT_TRUE(wider.has_value());
        last = drawn(*wider, sounded, &last);
        isKept = last.report.isChoiceKept;
    }
    EXPECT_EQ(steps, 2);
}

TEST_F(Redraw, OfAnotherCellIsDrawnAfresh) {
    surface::DrawSettings settings;
    settings.cell = units::Length::metres(6.0);
    base::Progress progress;
    const auto again = surface::drawWater(water.outline, sounded, settings, progress, &before_);
    ASSERT_TRUE(again.has_value());
    EXPECT_FALSE(again->report.isChoiceKept);
}

} // namespace
