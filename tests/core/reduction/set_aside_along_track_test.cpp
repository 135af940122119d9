// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reduction/set_aside_along_track.h"

#include "tests/core/reduction/survey_builder.h"

#include <algorithm>
#include <cmath>
#include <memory>
#include <random>

#include <gtest/gtest.h>

namespace reduction {

namespace {

using soundings::Verdict;

/// A bottom with a shelf at 3 m, a drop-off of 45 % down to 12 m, and noise of 5 cm, shown in
/// tenths.
soundings::SurveyDay bankDay(std::uint32_t seed = 1) {
    auto random = std::make_shared<std::mt19937>(seed);
    return MadeUpDay::along({0, 0}, {598, 0}, 300, [random](geo::WaterPoint p) {
        std::normal_distribution<double> noise(0.0, 0.05);
        const double bottom_m = 3.0 + std::clamp((p.x_m - 200.0) * 0.45, 0.0, 9.0);
        return std::round((bottom_m + noise(*random)) * 10.0) / 10.0;
    });
}

ReducedDay cleaned(const soundings::SurveyDay& day, const AlongTrackSettings& settings = {}) {
    base::Progress progress;
    auto survey = setAsideAlongTrack({day}, MadeUpDay::reduced({day}), settings, progress);
    EXPECT_TRUE(survey);
    return survey->days[0];
}

std::size_t setAside(const ReducedDay& day) {
    return day.verdicts.size() -
           static_cast<std::size_t>(std::ranges::count(day.verdicts, Verdict::kept));
}

void show(soundings::SurveyDay& day, std::size_t i, double depth_m) {
    day.soundings.edit()[i].shown = units::Depth::metres(depth_m);
}

TEST(SetAsideAlongTrack, LeavesADropOffOf45PercentAlone) {
    for (std::uint32_t seed = 1; seed <= 20; ++seed) {
        EXPECT_EQ(setAside(cleaned(bankDay(seed))), 0U) << "seed " << seed;
    }
}

TEST(SetAsideAlongTrack, FindsSpikesUpAndDownOnTheFlatAndOnTheBank) {
    soundings::SurveyDay day = bankDay();
    show(day, 40, 9.0);
    show(day, 60, 0.7);
    show(day, 107, 1.5); // on the bank
    show(day, 250, 19.0);
    const ReducedDay result = cleaned(day);
    for (const std::size_t i : {40U, 60U, 107U, 250U}) {
        EXPECT_EQ(result.verdicts[i], Verdict::spike) << i;
    }
    EXPECT_EQ(setAside(result), 4U);
}

TEST(SetAsideAlongTrack, FindsEchoesThatWentTwice) {
    soundings::SurveyDay day = bankDay();
    for (std::size_t i = 50; i < 59; ++i) {
        day.soundings.edit()[i].shown = day.soundings[i].shown * 2.0;
    }
    const ReducedDay result = cleaned(day);
    for (std::size_t i = 50; i < 59; ++i) {
        EXPECT_EQ(result.verdicts[i], Verdict::doubleEcho) << i;
    }
    EXPECT_EQ(setAside(result), 9U);
}

TEST(SetAsideAlongTrack, FindsDropOuts) {
    soundings::SurveyDay day = bankDay();
    show(day, 70, 0.0);
    show(day, 71, 0.0);
    show(day, 72, 999.0);
    const ReducedDay result = cleaned(day);
    EXPECT_EQ(result.verdicts[70], Verdict::dropOut);
    EXPECT_EQ(result.verdicts[72], Verdict::dropOut);
    EXPECT_EQ(setAside(result), 3U);
}

TEST(SetAsideAlongTrack, FindsAFigureThatStuckOnTheWayDown) {
    soundings::SurveyDay day = bankDay();
    for (std::size_t i = 105; i < 130; ++i) {
        show(day, i, day.soundings[104].shown.inMetres());
    }
    const ReducedDay result = cleaned(day);
    EXPECT_EQ(result.verdicts[104], Verdict::kept); // the first is true
    EXPECT_EQ(result.verdicts[105], Verdict::stuckDepth);
    EXPECT_EQ(result.verdicts[129], Verdict::stuckDepth);
    EXPECT_EQ(setAside(result), 25U);
}

TEST(SetAsideAlongTrack, LeavesALevelBottomThatShowsOneFigure) {
    const soundings::SurveyDay day =
        MadeUpDay::along({0, 0}, {400, 0}, 200, [](geo::WaterPoint) { return 3.0; });
    EXPECT_EQ(setAside(cleaned(day)), 0U);
}

TEST(SetAsideAlongTrack, FindsPositionsThatJumpAndComeBack) {
    soundings::SurveyDay day = bankDay();
    const geo::WaterFrame frame = MadeUpDay::frame();
    for (std::size_t i = 150; i < 158; ++i) {
        geo::WaterPoint p = frame.toWater(day.soundings[i].place);
        p.y_m += 120.0;
        day.soundings.edit()[i].place = frame.toEarth(p);
    }
    const ReducedDay result = cleaned(day);
    for (std::size_t i = 150; i < 158; ++i) {
        EXPECT_EQ(result.verdicts[i], Verdict::positionJump) << i;
    }
    EXPECT_EQ(setAside(result), 8U);
}

TEST(SetAsideAlongTrack, FindsThemWithoutTimesToo) {
    soundings::SurveyDay day = bankDay();
    const geo::WaterFrame frame = MadeUpDay::frame();
    for (std::size_t i = 0; i < day.soundings.size(); ++i) {
        day.soundings.edit()[i].time.reset();
        if (i < 6) { // started up at another water
            geo::WaterPoint p = frame.toWater(day.soundings[i].place);
            p.x_m += 4400.0;
            day.soundings.edit()[i].place = frame.toEarth(p);
        }
    }
    const ReducedDay result = cleaned(day);
    EXPECT_EQ(result.verdicts[5], Verdict::positionJump);
    EXPECT_EQ(setAside(result), 6U);
}

/// A lead line from a drifting boat: some leads here, some there, in no order that a boat sails.
TEST(SetAsideAlongTrack, ScatteredPointsWithoutTimesAreNoTrack) {
    for (unsigned seed = 1; seed <= 20; ++seed) {
        std::mt19937 random(seed);
        std::uniform_real_distribution<double> wide_m(0.0, 400.0);
        std::uniform_real_distribution<double> close_m(-9.0, 9.0);
        soundings::SurveyDay day;
        day.passStarts = {0};
        while (day.soundings.size() < 445) {
            const geo::WaterPoint spot{wide_m(random), wide_m(random)};
            for (auto k = 1 + random() % 6; k > 0; --k) {
                const geo::WaterPoint p{spot.x_m + close_m(random), spot.y_m + close_m(random)};
                day.soundings.edit().push_back({MadeUpDay::frame().toEarth(p),
                                                units::Depth::metres(2.0 + 0.01 * p.x_m),
                                                std::nullopt});
            }
        }
        const ReducedDay result = cleaned(day);
        EXPECT_EQ(std::ranges::count(result.verdicts, Verdict::positionJump), 0) << seed;
    }
}

TEST(SetAsideAlongTrack, FindsAPositionThatStoodStillWhileTheDepthWentOn) {
    soundings::SurveyDay day = bankDay();
    for (std::size_t i = 101; i < 112; ++i) {
        day.soundings.edit()[i].place = day.soundings[100].place;
    }
    const ReducedDay result = cleaned(day);
    EXPECT_EQ(result.verdicts[105], Verdict::stuckPosition);
    EXPECT_EQ(result.verdicts[100], Verdict::kept);
}

TEST(SetAsideAlongTrack, LeavesWhatTheUserTookBack) {
    soundings::SurveyDay day = bankDay();
    show(day, 40, 9.0);
    show(day, 70, 0.0);
    day.keptByHand = {40, 70};
    EXPECT_EQ(setAside(cleaned(day)), 0U);
}

TEST(SetAsideAlongTrack, NamesASettingThatIsOutOfItsRange) {
    const soundings::SurveyDay day = bankDay();
    AlongTrackSettings settings;
    settings.threshold = 1.0;
    base::Progress progress;
    const auto result = setAsideAlongTrack({day}, MadeUpDay::reduced({day}), settings, progress);
    ASSERT_FALSE(result);
    EXPECT_EQ(result.error().where, "threshold");
}

} // namespace

} // namespace reduction
