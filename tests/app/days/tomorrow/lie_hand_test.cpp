// SPDX-License-Identifier: GPL-3.0-or-later
// The hand on boat, anchors and baits of a mark.
#include "app/days/tomorrow/lie_hand.h"

#include "app/days/tomorrow/tomorrow_view.h"
#include "app/edits/pin_mark.h"
#include "app/wording/cautions.h"
#include "tests/app/days/tomorrow/tomorrow_desk.h"

#include <QSignalSpy>

#include <gmock/gmock.h>

namespace {

using Kind = chart::LiePart::Kind;
using geo::WaterPoint;

class LieHand : public support::TomorrowDesk {
protected:
    static void SetUpTestSuite() {
        sitDown();
        layPlanned([](marks::Plan& plan) {
            plan.count = 4;
            plan.day.wind = {units::Bearing::degrees(250.0), units::Speed::metresPerSecond(4.0)};
        });
    }
    static days::tomorrow::LieHand& hand() { return desk_->day->hand(); }
    static const marks::Mark& mark(int rank) {
        return planned().marks.at(static_cast<std::size_t>(rank - 1));
    }
    static const marks::Mark& ownMark() {
        return *std::ranges::find(planned().marks, true, &marks::Mark::isPinned);
    }
    static WaterPoint from(WaterPoint at, double east_m, double north_m) {
        return {at.x_m + east_m, at.y_m + north_m};
    }
    /// A little farther out along its rope, and a little aside.
    static WaterPoint bowElsewhere(const marks::Mark& of) {
        const auto ahead = of.anchors.lie.heading.turnedBy(8.0);
        return geo::moved(of.anchors.lie.centre, ahead,
                          geo::distance(of.anchors.lie.centre, of.anchors.bow.place) * 1.1);
    }
    static int edits() { return open().undoStack().index() - done_; }
};

TEST_F(LieHand, ShowsRopesAndKnotsWhileAnAnchorIsHeldAndMakesNoEdit) {
    const marks::Mark before = mark(1);
    const WaterPoint to = bowElsewhere(before);
    hand().hold({1, Kind::bow, 0}, to);
    ASSERT_TRUE(desk_->chart.tried());
    const marks::Mark tried = desk_->chart.tried()->mark;
    EXPECT_TRUE(tried.anchors.bow.isByHand);
    EXPECT_NE(tried.anchors.bow.rope, before.anchors.bow.rope);
    EXPECT_EQ(edits(), 0);
    openStep(4);
    const auto rows = days::tomorrow::anchorRows(tried, water().frame, wording::Words());
    bool isShown = false;
    for (const auto* table : desk_->day->findChildren<widgets::PlainTable*>()) {
        isShown = isShown || (table->rowCount() > 0 && table->words(0, 0) == rows[0][0] &&
                              table->words(0, 2) == rows[0][2]);
    }
    EXPECT_TRUE(isShown) << "the step follows the hand";
    hand().letGo();
    EXPECT_FALSE(desk_->chart.tried());
    EXPECT_EQ(edits(), 0);
    EXPECT_TRUE(water().pinnedMarks.empty());
}

TEST_F(LieHand, MakesOneEditOfADragAndThePlanIsWhatWasShown) {
    const WaterPoint to = bowElsewhere(mark(1));
    hand().hold({1, Kind::bow, 0}, from(to, 3.0, 1.0));
    hand().hold({1, Kind::bow, 0}, to);
    const marks::Mark shown = desk_->chart.tried()->mark;
    hand().drop({1, Kind::bow, 0}, to);
    EXPECT_EQ(edits(), 1);
    EXPECT_EQ(open().undoStack().undoText(), "Lay bow anchor");
    EXPECT_EQ(water().pinnedMarks.at(0).laid.windFrom, water().plan.day.wind.from);
    EXPECT_TRUE(water().plan.day.wind.from);
    EXPECT_TRUE(desk_->chart.tried()) << "until the plan knows it";
    replan();
    EXPECT_FALSE(desk_->chart.tried());
    const marks::Mark planned = ownMark();
    EXPECT_TRUE(planned.isLaidByHand());
    EXPECT_NEAR(planned.anchors.bow.rope.inMetres(), shown.anchors.bow.rope.inMetres(), 0.02);
    EXPECT_LT(geo::distance_m(planned.anchors.bow.place, to), 0.05);
    EXPECT_EQ(planned.spread.rods.size(), shown.spread.rods.size());
    open().undoStack().undo();
    EXPECT_TRUE(water().pinnedMarks.empty()) << "one step takes all of it back";
}

TEST_F(LieHand, LaysBaitsAllOfTheMarkAndTheOthersStay) {
    const marks::Mark before = mark(2);
    ASSERT_GE(before.spread.rods.size(), 2U);
    const WaterPoint to = from(before.spread.rods[1].place, 2.0, -1.5);
    hand().hold({2, Kind::bait, 1}, to);
    EXPECT_EQ(desk_->chart.selection().rod, std::optional<std::size_t>(1))
        << "the cut leads along its cast";
    hand().drop({2, Kind::bait, 1}, to);
    ASSERT_EQ(water().pinnedMarks.size(), 1U);
    const auto& baits = water().pinnedMarks[0].laid.baits;
    ASSERT_EQ(baits.size(), before.spread.rods.size());
    for (std::size_t k = 0; k < baits.size(); ++k) {
        const WaterPoint wanted = k == 1 ? to : before.spread.rods[k].place;
        EXPECT_LT(geo::distance_m(water().frame->toWater(baits[k]), wanted), 0.05);
    }
    EXPECT_FALSE(water().pinnedMarks[0].laid.bow);
    replan();
    EXPECT_TRUE(std::ranges::all_of(ownMark().spread.rods, &rods::RodPlace::isByHand));
}

TEST_F(LieHand, MovesTheBoatWithAllThatWasLaidOfIt) {
    hand().drop({1, Kind::bow, 0}, bowElsewhere(mark(1)));
    replan();
    const marks::Mark before = ownMark();
    const WaterPoint to = from(before.place, 4.0, 3.0);
    hand().drop({before.rank, Kind::boat, 0}, to);
    EXPECT_EQ(open().undoStack().undoText(), "Keep mark");
    ASSERT_EQ(water().pinnedMarks.size(), 1U);
    const WaterPoint bow = water().frame->toWater(*water().pinnedMarks[0].laid.bow);
    EXPECT_LT(geo::distance_m(bow, from(before.anchors.bow.place, 4.0, 3.0)), 0.1);
    replan();
    EXPECT_LT(geo::distance_m(ownMark().place, to), 0.1);
}

TEST_F(LieHand, SaysWhatIsBrokenAndRefusesWhatHoldsNoBoat) {
    const marks::Mark before = mark(1);
    const auto ahead = before.anchors.lie.heading;
    hand().hold({1, Kind::bow, 0}, geo::moved(before.place, ahead, units::Length::metres(5.0)));
    ASSERT_TRUE(desk_->chart.tried());
    EXPECT_FALSE(desk_->chart.tried()->breaks.isEmpty());
    EXPECT_TRUE(desk_->chart.tried()->breaks.first().contains("too near to hold"));
    const auto all = wording::cautionsOf(desk_->chart.tried()->mark, wording::Words());
    for (const QString& broken : desk_->chart.tried()->breaks) {
        EXPECT_TRUE(all.contains(broken)) << broken.toStdString();
    }
    QSignalSpy failures(&open(), &open_water::OpenWater::failed);
    hand().hold({1, Kind::bow, 0}, before.place);
    EXPECT_TRUE(desk_->chart.tried()->cannot.contains("under the boat"));
    hand().drop({1, Kind::bow, 0}, before.place);
    EXPECT_EQ(failures.size(), 1);
    EXPECT_EQ(edits(), 0);
    EXPECT_FALSE(desk_->chart.tried());
}

TEST_F(LieHand, GivesTheLieBackToTheProgramAndKeepsTheMark) {
    hand().drop({1, Kind::bow, 0}, bowElsewhere(mark(1)));
    replan();
    desk_->chart.selectMark(ownMark().rank);
    EXPECT_TRUE(button("Lay as found").isEnabled());
    button("Lay as found").click();
    ASSERT_EQ(water().pinnedMarks.size(), 1U);
    EXPECT_FALSE(water().pinnedMarks[0].laid.isAny());
    replan();
    EXPECT_FALSE(ownMark().isLaidByHand());
    EXPECT_FALSE(button("Lay as found").isEnabled());
}

TEST_F(LieHand, SaysByHandInStepAndLine) {
    hand().drop({1, Kind::bow, 0}, bowElsewhere(mark(1)));
    replan();
    const marks::Mark& own = ownMark();
    const auto rows = days::tomorrow::anchorRows(own, std::nullopt, wording::Words());
    EXPECT_EQ(rows[0][0], "bow, by hand");
    EXPECT_EQ(rows[1][0], "stern");
    EXPECT_TRUE(days::tomorrow::ropesLine(own, wording::Words()).endsWith(", laid by hand"));
}

} // namespace
