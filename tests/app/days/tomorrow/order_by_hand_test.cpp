// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/tomorrow/order_view.h"
#include "app/days/tomorrow/tomorrow_view.h"
#include "tests/app/days/tomorrow/tomorrow_desk.h"

#include <gmock/gmock.h>

namespace {

using namespace std::chrono_literals;
namespace tomorrow = days::tomorrow;
using testing::ElementsAre;

class OrderByHand : public support::TomorrowDesk {
protected:
    static widgets::PlainTable& day() { return table("Order of the day"); }
    static std::vector<tomorrow::OrderRow> rows() {
        return tomorrow::orderRows(water(), planned(), wording::Words());
    }
    static std::vector<int> ranks() {
        std::vector<int> all;
        for (const tomorrow::OrderRow& row : rows()) {
            all.push_back(row.rank);
        }
        return all;
    }
    static std::vector<int> plannedRanks() {
        std::vector<int> all;
        for (const marks::DayStop& stop : planned().day.stops) {
            all.push_back(stop.rank);
        }
        return all;
    }
};

TEST_F(OrderByHand, ARowDraggedElsewhereGivesTheDayThatOrder) {
    const std::vector<int> before = plannedRanks();
    ASSERT_EQ(before.size(), 4U);
    emit day().rowMoved(0, 2);
    const std::vector<int> wanted{before[1], before[2], before[0], before[3]};
    EXPECT_EQ(ranks(), wanted);
    EXPECT_EQ(day().words(2, 0).section(' ', 0, 0), QString::number(before[0]));
    EXPECT_EQ(day().words(0, 1), "…") << "no time of the order of before";
    EXPECT_EQ(day().words(0, 2), "…");
    EXPECT_EQ(day().words(0, 4), "…");
    replan();
    EXPECT_EQ(plannedRanks(), wanted);
    EXPECT_TRUE(planned().day.isOrderByHand);
    EXPECT_NE(rows()[0].cells[1], "…");
    EXPECT_EQ(rows()[0].cells, tomorrow::dayRows(planned(), water().clock, wording::Words())[0]);
    EXPECT_TRUE(says("The order of the day is yours."));
    button("Order as found").click();
    EXPECT_EQ(rows()[0].cells[1], "…");
    replan();
    EXPECT_EQ(plannedRanks(), before);
    EXPECT_FALSE(button("Order as found").isEnabled());
}

TEST_F(OrderByHand, KeysMoveTheChosenMarkAndEachBeginsWhereTheLastOneEnded) {
    const std::vector<int> before = plannedRanks();
    day().selectRow(0);
    EXPECT_EQ(desk_->chart.selection().mark, before[0]);
    EXPECT_FALSE(button("Earlier").isEnabled());
    button("Later").click();
    button("Later").click(); // The plan has not followed yet.
    EXPECT_EQ(ranks(), (std::vector<int>{before[1], before[2], before[0], before[3]}));
    EXPECT_EQ(day().chosen(), 2) << "the mark stays chosen";
    button("Later").click();
    EXPECT_FALSE(button("Later").isEnabled());
    button("Earlier").click();
    EXPECT_EQ(ranks(), (std::vector<int>{before[1], before[2], before[0], before[3]}));
    EXPECT_EQ(button("Earlier").shortcut(), QKeySequence("Alt+Up"));
    EXPECT_EQ(button("Later").shortcut(), QKeySequence("Alt+Down"));
}

TEST_F(OrderByHand, EachMoveIsUndoneByItself) {
    const std::vector<int> before = plannedRanks();
    emit day().rowMoved(0, 1);
    emit day().rowMoved(1, 2);
    open().undoStack().undo();
    EXPECT_EQ(ranks(), (std::vector<int>{before[1], before[0], before[2], before[3]}));
    open().undoStack().undo();
    EXPECT_EQ(ranks(), before);
    EXPECT_TRUE(water().dayByHand.order.empty());
}

TEST_F(OrderByHand, MarksThatTheDayHasNoTimeForKeepTheirPlaceInTheOrder) {
    edits::setPlan(open(), "x", [](marks::Plan& plan) { plan.day.end = plan.day.start + 100min; });
    replan();
    ASSERT_FALSE(planned().day.leftOut.empty());
    ASSERT_GE(planned().day.stops.size(), 2U);
    const std::vector<int> before = plannedRanks();
    emit day().rowMoved(0, 1);
    EXPECT_EQ(water().dayByHand.order.size(), 4U);
    replan();
    EXPECT_TRUE(planned().day.isOrderByHand);
    EXPECT_EQ(plannedRanks()[0], before[1]);
    EXPECT_EQ(plannedRanks()[1], before[0]);
}

TEST_F(OrderByHand, OtherMarksGetTheProgramsOrderAndItIsSaid) {
    emit day().rowMoved(0, 1);
    edits::setPlan(open(), "x", [](marks::Plan& plan) { plan.count = 3; });
    replan();
    EXPECT_TRUE(planned().isOrderOfOtherMarks);
    EXPECT_TRUE(says("The order that you gave is for other marks: this is the program's."));
    edits::setPlan(open(), "x", [](marks::Plan& plan) { plan.count = 4; });
    replan();
    EXPECT_TRUE(planned().day.isOrderByHand) << "it holds again with its marks";
}

TEST_F(OrderByHand, AStayIsMadeLongerShorterTypedAndGivenBack) {
    day().selectRow(1);
    const int rank = plannedRanks()[1];
    const auto stayThere = [rank] {
        const auto all = rows();
        return std::ranges::find(all, rank, &tomorrow::OrderRow::rank)->stay;
    };
    const std::chrono::seconds before = stayThere();
    EXPECT_FALSE(button("Stay as the day gives").isEnabled());
    button("Longer").click();
    EXPECT_EQ(stayThere(), tomorrow::stayStepped(before, 1));
    EXPECT_EQ(day().words(1, 1), "…");
    button("Shorter").click();
    button("Shorter").click();
    EXPECT_EQ(stayThere(), tomorrow::stayStepped(before, 1) - 30min);
    emit day().typedOver(1, "1 h 05");
    EXPECT_EQ(stayThere(), 65min);
    replan();
    const auto stop = std::ranges::find(planned().day.stops, rank, &marks::DayStop::rank);
    EXPECT_EQ(stop->stay, 65min);
    EXPECT_TRUE(stop->isStayByHand);
    EXPECT_TRUE(says(QStringLiteral("Stays that you set: on mark %1.").arg(rank)));
    EXPECT_EQ(day().words(1, 3), "1 h 05");
    button("Stay as the day gives").click();
    EXPECT_TRUE(water().dayByHand.stays.empty());
    replan();
    EXPECT_EQ(stayThere(), before);
}

TEST_F(OrderByHand, WhatIsNoStayIsSaidAndChangesNothing) {
    std::vector<base::Error> told;
    const auto heard =
        QObject::connect(&open(), &open_water::OpenWater::failed,
                         [&told](const base::Error& error) { told.push_back(error); });
    emit day().typedOver(0, "long");
    emit day().typedOver(0, "13 h");
    QObject::disconnect(heard);
    EXPECT_TRUE(water().dayByHand.stays.empty());
    ASSERT_EQ(told.size(), 2U);
    EXPECT_EQ(told[0].what, "'long' is no stay");
    EXPECT_EQ(told[1].whatToDo, "choose 5 minutes to 12 hours");
    emit day().typedOver(0, "50 min");
    EXPECT_EQ(water().dayByHand.stays.size(), 1U);
    emit day().typedOver(0, "");
    EXPECT_TRUE(water().dayByHand.stays.empty()) << "an empty stay is given back";
}

TEST(StayStepped, GoesByQuartersWithinTheRange) {
    using tomorrow::stayStepped;
    EXPECT_EQ(stayStepped(60min, 1), 75min);
    EXPECT_EQ(stayStepped(60min, -1), 45min);
    EXPECT_EQ(stayStepped(68min, 1), 75min) << "to the next quarter first";
    EXPECT_EQ(stayStepped(68min, -1), 60min);
    EXPECT_EQ(stayStepped(10min, -1), 5min);
    EXPECT_EQ(stayStepped(5min, -1), 5min);
    EXPECT_EQ(stayStepped(12h, 1), 12h);
}

} // namespace
