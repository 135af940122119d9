// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rates/hour_rates.h"

#include <gtest/gtest.h>

namespace {

using rates::HourRates;
using rates::HourSpan;
using rates::Rate;

/// Points every six hours; a rate below 0: too little fished.
HourRates every6(const std::vector<double>& per10RodHours, double below) {
    HourRates rates;
    for (std::size_t i = 0; i < per10RodHours.size(); ++i) {
        rates.points.push_back({6.0 * static_cast<double>(i), 1.0, std::nullopt});
        if (per10RodHours[i] >= 0.0) {
            rates.points.back().rate =
                Rate{per10RodHours[i], per10RodHours[i] - below, per10RodHours[i] + below};
        }
    }
    return rates;
}

TEST(BestHours, AreThoseRoundTheBestThatReachIntoItsInterval) {
    EXPECT_EQ(rates::bestHours(every6({1.0, 4.0, 4.4, 1.0}, 0.5)), (HourSpan{6.0, 18.0}));
    EXPECT_EQ(rates::bestHours(every6({1.0, 3.8, 4.4, 1.0}, 0.5)), (HourSpan{12.0, 18.0}));
    EXPECT_EQ(rates::bestHours(every6({1.0, 3.95, 4.4, 1.0}, 0.5)), (HourSpan{6.0, 18.0}))
        << "just reaching";
}

TEST(BestHours, CrossMidnightAndHangTogether) {
    EXPECT_EQ(rates::bestHours(every6({4.2, 1.0, 1.0, 4.4}, 0.5)), (HourSpan{18.0, 6.0}));
    EXPECT_EQ(rates::bestHours(every6({4.4, 1.0, 4.2, 1.0}, 0.5)), (HourSpan{0.0, 6.0}))
        << "what is as good but lies apart is not between";
}

TEST(BestHours, AreAllWhereNoneStandsOutAndNoneWhereNothingWasFished) {
    EXPECT_EQ(rates::bestHours(every6({2.0, 2.0, 2.0, 2.0}, 0.5)), (HourSpan{0.0, 0.0}));
    EXPECT_EQ(rates::bestHours(every6({-1.0, -1.0, -1.0, -1.0}, 0.5)), std::nullopt);
    EXPECT_EQ(rates::bestHours(every6({-1.0, 2.0, -1.0, 2.0}, 0.5)), (HourSpan{6.0, 12.0}));
    EXPECT_EQ(rates::bestHours({}), std::nullopt);
}

TEST(PeakHour, IsTheMiddleOfTheBestStretch) {
    EXPECT_EQ(every6({1.0, 4.0, 4.0, 1.0}, 0.5).peakHour(), 9.0);
    EXPECT_EQ(every6({1.0, 1.0, 4.0, 1.0}, 0.5).peakHour(), 12.0);
    // A third of the way up is 2: weights of 0.5 and 2 at 6 and 12 o'clock.
    EXPECT_DOUBLE_EQ(every6({1.0, 2.5, 4.0, 1.0}, 0.5).peakHour().value(), 10.8);
    EXPECT_EQ(every6({4.0, 1.0, 1.0, 4.0}, 0.5).peakHour(), 21.0) << "the day is round";
    EXPECT_EQ(every6({-1.0, 4.0, -1.0, 1.0}, 0.5).peakHour(), 6.0);
    EXPECT_EQ(every6({2.0, 2.0, 2.0, 2.0}, 0.5).peakHour(), std::nullopt);
    EXPECT_EQ(HourRates().peakHour(), std::nullopt);
}

} // namespace
