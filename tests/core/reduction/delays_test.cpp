// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reduction/correct_depths.h"
#include "core/reduction/correct_positions.h"
#include "core/reduction/find_crossings.h"
#include "core/reduction/find_delays.h"
#include "tests/core/reduction/survey_builder.h"

#include <cmath>
#include <random>

#include <gtest/gtest.h>

namespace reduction {

namespace {

double bottom_m(geo::WaterPoint p) {
    return 8.0 + 3.0 * std::sin(p.x_m / 40.0) * std::cos(p.y_m / 55.0) + 0.01 * p.x_m;
}

/// Lines there and back, 40 m apart, and as many across; positions are those of `delay_s` before,
/// depths are deeper by `offset_m`, with noise of 5 cm and shown in tenths.
soundings::SurveyDay latticeDay(double delay_s, double offset_m, std::uint32_t seed) {
    std::mt19937 random(seed);
    std::normal_distribution<double> noise(0.0, 0.05);
    constexpr double speed_m_s = 2.0;
    constexpr int lines = 7;
    constexpr double length_m = 280.0;
    const geo::WaterFrame frame = MadeUpDay::frame();
    soundings::SurveyDay day;
    auto now = *units::momentFrom("2026-09-05T08:00:00Z", units::Clock());
    for (int line = 0; line < 2 * lines; ++line) {
        day.passStarts.edit().push_back(day.soundings.size());
        const double off_m = 13.0 + 40.0 * (line % lines);
        const auto at = [&](double along_m) {
            const double turned_m = line % 2 == 0 ? along_m : length_m - along_m;
            return line < lines ? geo::WaterPoint{turned_m, off_m}
                                : geo::WaterPoint{off_m, turned_m};
        };
        for (double time_s = 0.0; time_s <= length_m / speed_m_s; time_s += 1.0) {
            const double depth_m = bottom_m(at(speed_m_s * time_s)) + offset_m + noise(random);
            day.soundings.edit().push_back({frame.toEarth(at(speed_m_s * (time_s - delay_s))),
                                            units::Depth::metres(std::round(depth_m * 10.0) / 10.0),
                                            now});
            now += std::chrono::seconds(1);
        }
        now += std::chrono::minutes(2);
    }
    return day;
}

struct Found {
    std::vector<PositionDelay> delays;
    std::vector<Crossing> crossings;
};

Found delaysOf(const std::vector<soundings::SurveyDay>& days) {
    base::Progress progress;
    const ReducedSurvey survey = correctPositions(days, MadeUpDay::reduced(days));
    const auto kept = keptSoundings(days, survey);
    Found found;
    found.crossings = findCrossings(kept, {}, progress).value();
    found.delays = findDelays(kept, found.crossings, days.size(), {}, progress).value();
    return found;
}

TEST(FindDelays, RecoversTheDelayOfOneDayWithinTwoTenthsOfASecond) {
    for (const double delay_s : {-2.0, -0.7, 0.0, 0.4, 1.0, 2.5, 3.8}) {
        for (std::uint32_t seed = 1; seed <= 5; ++seed) {
            const Found found = delaysOf({latticeDay(delay_s, 0.0, seed)});
            ASSERT_GE(found.crossings.size(), 30U);
            EXPECT_TRUE(found.delays[0].isKnown);
            EXPECT_NEAR(found.delays[0].delay_s, delay_s, 0.2) << "seed " << seed;
        }
    }
}

TEST(FindDelays, TellsTheDelaysOfTwoDaysApartWhateverTheirLevels) {
    for (std::uint32_t seed = 1; seed <= 5; ++seed) {
        const Found found =
            delaysOf({latticeDay(1.2, 0.0, seed), latticeDay(-0.5, 0.35, seed + 100)});
        EXPECT_NEAR(found.delays[0].delay_s, 1.2, 0.2) << "seed " << seed;
        EXPECT_NEAR(found.delays[1].delay_s, -0.5, 0.2) << "seed " << seed;
    }
}

TEST(FindDelays, SaysWhatItWouldBringAndHowSureItIs) {
    const Found found = delaysOf({latticeDay(1.5, 0.0, 3)});
    EXPECT_LT(found.delays[0].rmsAfter_m, 0.6 * found.delays[0].rmsBefore_m);
    EXPECT_LT(found.delays[0].error_s, 0.1);
    EXPECT_GT(found.delays[0].error_s, 0.0);
}

TEST(FindDelays, KnowsNothingWithoutTimesOrOnALevelBottom) {
    soundings::SurveyDay untimed = latticeDay(1.0, 0.0, 1);
    for (soundings::Sounding& sounding : untimed.soundings.edit()) {
        sounding.time.reset();
    }
    EXPECT_FALSE(delaysOf({untimed}).delays[0].isKnown);
    soundings::SurveyDay level = latticeDay(1.0, 0.0, 1);
    for (soundings::Sounding& sounding : level.soundings.edit()) {
        sounding.shown = units::Depth::metres(4.0);
    }
    EXPECT_FALSE(delaysOf({level}).delays[0].isKnown);
}

TEST(CorrectPositions, AnAgreedDelayPutsTheSoundingsWhereTheyWereTaken) {
    soundings::SurveyDay late = latticeDay(1.5, 0.0, 2);
    late.agreedDelay_s = 1.5;
    const soundings::SurveyDay prompt = latticeDay(0.0, 0.0, 2);
    const auto moved = correctPositions({late}, MadeUpDay::reduced({late}));
    const auto expected = MadeUpDay::reduced({prompt});
    for (std::size_t i = 0; i < late.soundings.size(); ++i) {
        EXPECT_NEAR(geo::distance_m(moved.days[0].points[i], expected.days[0].points[i]), 0.0, 1e-3)
            << i;
    }
    EXPECT_NEAR(delaysOf({late}).delays[0].delay_s, 0.0, 0.1);
}

TEST(CorrectPositions, WithoutAnAgreedDelayNothingMoves) {
    const soundings::SurveyDay day = latticeDay(1.5, 0.0, 2);
    const auto given = MadeUpDay::reduced({day});
    const auto same = correctPositions({day}, given);
    EXPECT_EQ(geo::distance_m(same.days[0].points[5], given.days[0].points[5]), 0.0);
}

} // namespace

} // namespace reduction
