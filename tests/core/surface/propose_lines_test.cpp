// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/propose_lines.h"

#include "core/surface/draw_water.h"
#include "tests/core/surface/tracks.h"

#include <gtest/gtest.h>

namespace {

using surface::LineSettings;
using surface::SurveyTrip;

/// A long water sounded in its western half alone.
class ProposeLines : public testing::Test {
protected:
    ProposeLines()
        : water_(support::madeUpWater(
              {{support::rectangle(-600.0, -150.0, 600.0, 150.0),
                {support::rectangle(280.0, -40.0, 320.0, 40.0)}}},
              [](geo::WaterPoint p) {
                  return 5.0 + 2.0 * std::sin(p.x_m / 40.0) + 2.0 * std::cos(p.y_m / 35.0);
              },
              5.0)) {
        std::vector<soundings::KeptSounding> soundings;
        for (const soundings::KeptSounding& s : tracks::lines(water_, 30.0, 3.0, 0.05)) {
            if (s.x_m < 0.0) {
                soundings.push_back(s);
            }
        }
        surface::DrawSettings draw;
        draw.cell = units::Length::metres(5.0);
        draw.stiffness = 300.0;
        draw.contourStiffness = 10.0;
        auto result = surface::drawWater(water_.outline, soundings, draw, progress_);
        drawn_ = std::move(*result);
        settings_.launch = {-590.0, 0.0};
    }

    base::Result<SurveyTrip> proposed() {
        return surface::proposeLines(drawn_, water_.outline, {}, settings_, progress_);
    }

    support::MadeUpWater water_;
    surface::DrawnWater drawn_;
    LineSettings settings_;
    base::Progress progress_;
};

TEST_F(ProposeLines, SendsTheBoatWhereNothingIsKnown) {
    settings_.launch = {590.0, 0.0};
    settings_.time = std::chrono::minutes(25);
    const auto trip = proposed();
    ASSERT_TRUE(trip.has_value()) << trip.error().sentence();
    double east_m3 = 0.0;
    double all_m3 = 0.0;
    for (const surface::SurveyLine& line : trip->lines) {
        EXPECT_FALSE(water_.outline.isCrossedBy(line.start, line.end));
        EXPECT_GE(line.length.inMetres(), 59.0);
        EXPECT_GT(line.gain_m3, 0.0);
        all_m3 += line.gain_m3;
        east_m3 += 0.5 * (line.start.x_m + line.end.x_m) > 0.0 ? line.gain_m3 : 0.0;
    }
    EXPECT_GT(east_m3, 0.9 * all_m3);
    EXPECT_LT(trip->meanHalfWidthAfter, trip->meanHalfWidthBefore * 0.8);
}

TEST_F(ProposeLines, KeepsToTheCellsThatHoldADepth) {
    settings_.launch = {590.0, 0.0};
    const auto isCleared = [](geo::WaterPoint p) { return p.x_m > 380.0 && p.x_m < 480.0; };
    const grid::GridFrame& frame = drawn_.depth.frame();
    for (std::size_t i = 0; i < frame.size(); ++i) {
        if (isCleared(frame.centre(frame.cellAt(i))) && frame.centre(frame.cellAt(i)).y_m < 100.0) {
            drawn_.depth.clear(i);
        }
    }
    const auto trip = proposed();
    ASSERT_TRUE(trip.has_value()) << trip.error().sentence();
    for (const surface::SurveyLine& line : trip->lines) {
        for (int k = 0; k <= 50; ++k) {
            const geo::WaterPoint p{line.start.x_m + 0.02 * k * (line.end.x_m - line.start.x_m),
                                    line.start.y_m + 0.02 * k * (line.end.y_m - line.start.y_m)};
            EXPECT_FALSE(isCleared(p) && p.y_m < 90.0) << p.x_m << " " << p.y_m;
        }
    }
}

TEST_F(ProposeLines, KeepsToTheTime) {
    for (const int minutes : {30, 60, 180}) {
        settings_.time = std::chrono::minutes(minutes);
        const auto trip = proposed();
        ASSERT_TRUE(trip.has_value()) << trip.error().sentence();
        EXPECT_LE(trip->duration, settings_.time);
        EXPECT_NEAR(trip->distance.inMetres(), 1.5 * static_cast<double>(trip->duration.count()),
                    1.0);
    }
}

TEST_F(ProposeLines, ProposesNoMoreLinesThanAsked) {
    settings_.time = std::chrono::hours(3);
    settings_.mostLines = 4;
    const auto trip = proposed();
    ASSERT_TRUE(trip.has_value());
    EXPECT_EQ(trip->lines.size(), 4U);
    for (const surface::SurveyLine& line : trip->lines) {
        EXPECT_NEAR(static_cast<double>(line.duration.count()),
                    line.length.inMetres() / settings_.speed.inMetresPerSecond(), 0.5);
    }
    settings_.mostLines = 0;
    EXPECT_FALSE(proposed().has_value());
}

TEST_F(ProposeLines, GainsMoreWithMoreTime) {
    settings_.time = std::chrono::minutes(40);
    const auto little = proposed();
    settings_.time = std::chrono::minutes(160);
    const auto much = proposed();
    ASSERT_TRUE(little.has_value() && much.has_value());
    EXPECT_LT(much->meanHalfWidthAfter, little->meanHalfWidthAfter);
}

TEST_F(ProposeLines, SaysWhyNothingCanBeProposed) {
    settings_.launch = {5000.0, 0.0};
    const auto far = proposed();
    ASSERT_FALSE(far.has_value());
    EXPECT_EQ(far.error().kind, base::ErrorKind::unusableInput);
    settings_.launch = {-590.0, 0.0};
    settings_.shortest = units::Length::metres(4000.0);
    const auto tooLong = proposed();
    ASSERT_FALSE(tooLong.has_value());
    EXPECT_EQ(tooLong.error().kind, base::ErrorKind::unusableInput);
    settings_.shortest = units::Length::metres(1.0);
    const auto outOfRange = proposed();
    ASSERT_FALSE(outOfRange.has_value());
    EXPECT_EQ(outOfRange.error().kind, base::ErrorKind::wrongUse);
}

} // namespace
