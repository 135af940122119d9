// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/verdict_now.h"

#include <gtest/gtest.h>

namespace {

using soundings::Verdict;

/// Four soundings: kept, spike, set aside by hand, kept.
chart::ChartContent content(const std::vector<std::size_t>& aside,
                            const std::vector<std::size_t>& kept) {
    auto checked = std::make_shared<water::CheckedSurvey>();
    checked->survey.days.resize(1);
    checked->survey.days[0].points.resize(4);
    checked->survey.days[0].depth_m.resize(4);
    checked->survey.days[0].verdicts = {Verdict::kept, Verdict::spike, Verdict::byHand,
                                        Verdict::kept};
    auto water = std::make_shared<water::Water>();
    water->days.resize(1);
    water->days[0].soundings.edit().resize(4);
    water->days[0].setAsideByHand = aside;
    water->days[0].keptByHand = kept;
    chart::ChartContent content;
    content.water = std::move(water);
    content.derived.checked = std::move(checked);
    return content;
}

TEST(VerdictNow, FollowsTheHandBeforeTheSoundingsAreLookedOverAgain) {
    EXPECT_EQ(chart::verdictsNow(content({0}, {1}), 0),
              (std::vector{Verdict::byHand, Verdict::kept, Verdict::kept, Verdict::kept}));
}

TEST(VerdictNow, IsWhatTheRulesFoundWhereTheWaterHasOtherDays) {
    auto other = content({0}, {1});
    auto water = std::make_shared<water::Water>(*other.water);
    water->days[0].soundings.edit().resize(3);
    other.water = std::move(water);
    EXPECT_FALSE(chart::isLookedOver(other));
    EXPECT_EQ(chart::verdictsNow(other, 0), other.derived.checked->survey.days[0].verdicts);
}

} // namespace
