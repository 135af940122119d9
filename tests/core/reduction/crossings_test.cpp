// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reduction/find_crossings.h"

#include "core/reduction/tie_days.h"
#include "tests/core/reduction/survey_builder.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <random>

#include <gtest/gtest.h>

namespace reduction {

namespace {

using Kept = soundings::KeptSounding;

std::vector<Kept> randomTrack(std::uint32_t seed, std::size_t count) {
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> turn(-0.5, 0.5);
    std::vector<Kept> track;
    double x_m = 0.0;
    double y_m = 0.0;
    double heading = 0.0;
    for (std::size_t i = 0; i < count; ++i) {
        track.push_back({{}, x_m, y_m, 3.0 + 0.01 * x_m, 0, static_cast<int>(i / 200)});
        heading += turn(random);
        if (std::hypot(x_m, y_m) > 80.0) {
            heading = std::atan2(-y_m, -x_m); // back towards the middle
        }
        x_m += 4.0 * std::cos(heading);
        y_m += 4.0 * std::sin(heading);
    }
    return track;
}

/// Every pair of segments by the sign of areas: slow and plain.
std::size_t bruteCount(const std::vector<Kept>& k, const CrossingSettings& settings) {
    const auto side = [](const Kept& a, const Kept& b, const Kept& p) {
        return (b.x_m - a.x_m) * (p.y_m - a.y_m) - (b.y_m - a.y_m) * (p.x_m - a.x_m);
    };
    const auto isSegment = [&](std::size_t i) {
        return k[i].pass == k[i + 1].pass &&
               std::hypot(k[i + 1].x_m - k[i].x_m, k[i + 1].y_m - k[i].y_m) > 0.0;
    };
    std::size_t count = 0;
    for (std::size_t i = 0; i + 1 < k.size(); ++i) {
        for (std::size_t j = i + settings.leastApart; j + 1 < k.size(); ++j) {
            if (isSegment(i) && isSegment(j) &&
                side(k[i], k[i + 1], k[j]) * side(k[i], k[i + 1], k[j + 1]) < 0.0 &&
                side(k[j], k[j + 1], k[i]) * side(k[j], k[j + 1], k[i + 1]) < 0.0) {
                ++count;
            }
        }
    }
    return count;
}

TEST(FindCrossings, FindsAsManyAsAllPairsGive) {
    for (const std::uint32_t seed : {1U, 2U, 3U, 4U, 5U}) {
        const auto track = randomTrack(seed, 1500);
        base::Progress progress;
        const auto crossings = findCrossings(track, {}, progress);
        ASSERT_TRUE(crossings);
        EXPECT_GT(crossings->size(), 100U) << "seed " << seed;
        EXPECT_EQ(crossings->size(), bruteCount(track, {})) << "seed " << seed;
    }
}

TEST(FindCrossings, ReadsBothDepthsAtTheSamePlace) {
    std::vector<Kept> kept;
    for (int i = 0; i < 30; ++i) { // west to east, depth rising by 0.1 m a step
        kept.push_back({{}, 2.0 * i, 0.0, 5.0 + 0.1 * i, 0, 0});
    }
    for (int i = 0; i < 30; ++i) { // south to north, half a metre deeper, past x = 25
        kept.push_back({{}, 25.0, -29.0 + 2.0 * i, 6.75, 1, 1});
    }
    base::Progress progress;
    const auto crossings = findCrossings(kept, {}, progress);
    ASSERT_TRUE(crossings);
    ASSERT_EQ(crossings->size(), 1U);
    const Crossing& crossing = crossings->front();
    EXPECT_DOUBLE_EQ(crossing.at.x_m, 25.0);
    EXPECT_DOUBLE_EQ(crossing.at.y_m, 0.0);
    EXPECT_NEAR(crossing.depthA_m, 6.25, 1e-12);
    EXPECT_NEAR(crossing.difference_m(), 0.5, 1e-12);
    EXPECT_EQ(crossing.dayB, 1);
    EXPECT_EQ(crossing.soundingA, 12U);
}

TEST(FindCrossings, DrawsNoLineOverABreak) {
    const std::vector<Kept> kept{
        {{}, -50, 0, 5, 0, 0}, {{}, 50, 0, 5, 0, 0}, {{}, 0, -5, 5, 0, 1}, {{}, 0, 5, 5, 0, 1}};
    CrossingSettings settings;
    settings.leastApart = 2;
    base::Progress progress;
    EXPECT_TRUE(findCrossings(kept, settings, progress)->empty()); // 100 m are no straight line
    settings.longestStep_m = 200.0;
    EXPECT_EQ(findCrossings(kept, settings, progress)->size(), 1U);
}

TEST(CrossingCheck, CountsMeanSpreadAndShares) {
    std::vector<Crossing> crossings(20);
    for (std::size_t i = 0; i < crossings.size(); ++i) {
        crossings[i].depthA_m = 5.0;
        crossings[i].depthB_m = 5.0 + (i == 0 ? 1.2 : i % 2 == 0 ? 0.1 : -0.1);
    }
    const CrossingCheck check = checkOf(crossings);
    EXPECT_EQ(check.count, 20U);
    EXPECT_NEAR(check.mean_m, (1.2 + 0.9 - 1.0) / 20.0, 1e-12);
    EXPECT_NEAR(check.rms_m, std::sqrt((1.44 + 19 * 0.01) / 20.0), 1e-12);
    EXPECT_NEAR(check.p95_m, 0.1, 1e-12);
    EXPECT_DOUBLE_EQ(check.withinOrder1b, 0.95); // 1.2 m > sqrt(2) x 0.505 m
    EXPECT_DOUBLE_EQ(check.withinOrder2, 1.0);   // 1.2 m < sqrt(2) x 1.008 m
    EXPECT_EQ(checkOf({}).count, 0U);
}

struct Tied {
    std::vector<soundings::SurveyDay> days{3};
    std::vector<Crossing> crossings;
};

/// Three days: 1 reads 0.30 m too deep, 2 reads 0.15 m too shallow; a tenth of the crossings is
/// wild.
Tied threeDays(std::uint32_t seed) {
    Tied tied;
    std::mt19937 random(seed);
    std::normal_distribution<double> noise(0.0, 0.08);
    const std::array<double, 3> wrong_m{0.0, 0.30, -0.15};
    for (int i = 0; i < 60; ++i) {
        Crossing crossing;
        crossing.dayA = i % 2;
        crossing.dayB = i % 3 == 0 ? 2 : 1 - i % 2 + (i % 2 == 0 ? 0 : 2);
        crossing.depthA_m = 6.0 + wrong_m[static_cast<std::size_t>(crossing.dayA)];
        crossing.depthB_m = 6.0 + wrong_m[static_cast<std::size_t>(crossing.dayB)] + noise(random) +
                            (i % 10 == 9 ? 2.5 : 0.0);
        tied.crossings.push_back(crossing);
    }
    return tied;
}

TEST(TieDays, FindsTheOffsetsDespiteWildCrossings) {
    for (std::uint32_t seed = 1; seed <= 10; ++seed) {
        Tied tied = threeDays(seed);
        tied.days[0].gauge = soundings::Gauge::constant(units::WaterLevel::metresOnGauge(0.0));
        base::Progress progress;
        const auto tie = tieDays(tied.crossings, tied.days, {}, progress);
        ASSERT_TRUE(tie);
        EXPECT_DOUBLE_EQ(tie->offsets[0].inMetres(), 0.0);
        EXPECT_NEAR(tie->offsets[1].inMetres(), -0.30, 0.06) << "seed " << seed;
        EXPECT_NEAR(tie->offsets[2].inMetres(), 0.15, 0.06) << "seed " << seed;
        EXPECT_GT(tie->offsetErrors[1].inMetres(), 0.0);
    }
}

TEST(TieDays, LeavesADayAloneThatHardlyCrossesTheOthers) {
    Tied tied = threeDays(1);
    tied.days[0].gauge = soundings::Gauge::constant(units::WaterLevel::metresOnGauge(0.0));
    std::erase_if(tied.crossings, [n = 0](const Crossing& c) mutable {
        return (c.dayA == 2 || c.dayB == 2) && ++n > 4;
    });
    base::Progress progress;
    const auto tie = tieDays(tied.crossings, tied.days, {}, progress);
    ASSERT_TRUE(tie);
    EXPECT_FALSE(tie->isTied[2]);
    EXPECT_DOUBLE_EQ(tie->offsets[2].inMetres(), 0.0);
    EXPECT_TRUE(tie->isTied[1]);
}

TEST(TieDays, HoldsTheDayWithMostCrossingsWhereNoneHasAGauge) {
    const Tied tied = threeDays(1);
    base::Progress progress;
    const auto tie = tieDays(tied.crossings, tied.days, {}, progress);
    ASSERT_TRUE(tie);
    EXPECT_EQ(std::ranges::count(tie->isHeld, true), 1);
    const auto held =
        static_cast<std::size_t>(std::ranges::find(tie->isHeld, true) - tie->isHeld.begin());
    EXPECT_EQ(tie->crossingsWithOthers[held], *std::ranges::max_element(tie->crossingsWithOthers));
}

} // namespace

} // namespace reduction
