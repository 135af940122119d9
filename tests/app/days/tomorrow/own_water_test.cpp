// SPDX-License-Identifier: GPL-3.0-or-later
// What the user puts into the list of marks himself, and what he wants never to see in it again.
#include "app/days/tomorrow/own_water_view.h"
#include "app/edits/change_facts.h"
#include "app/edits/pin_mark.h"
#include "core/water/questions/banned_extent.h"
#include "tests/app/days/tomorrow/tomorrow_desk.h"

#include <gmock/gmock.h>

namespace {

namespace tomorrow = days::tomorrow;
using testing::ElementsAre;

class OwnWater : public support::TomorrowDesk {
protected:
    static geo::LonLat onEarth(double x_m, double y_m) {
        return water().frame->toEarth(geo::WaterPoint{x_m, y_m});
    }
    static void type(const QString& name, const QString& text) {
        named<QLineEdit>(name).setText(text);
    }
    static const wording::Words words;
};

const wording::Words OwnWater::words;

TEST_F(OwnWater, AMarkIsTypedAsItIsReadOffAReceiver) {
    EXPECT_FALSE(button("Add").isEnabled());
    type("Place", "55.2003 N 3.1002 E");
    type("Name", " Church stone ");
    ASSERT_TRUE(button("Add").isEnabled());
    button("Add").click();
    ASSERT_EQ(water().pinnedMarks.size(), 1U);
    EXPECT_EQ(water().pinnedMarks[0].name, "Church stone");
    EXPECT_EQ(water().pinnedMarks[0].place, (geo::LonLat{3.1002, 55.2003}));
    EXPECT_EQ(named<QLineEdit>("Place").text(), "") << "ready for the next";
    EXPECT_EQ(named<QLineEdit>("Name").text(), "");
    replan();
    EXPECT_TRUE(std::ranges::any_of(planned().marks, [](const marks::Mark& mark) {
        return mark.isPinned && mark.name == "Church stone";
    }));
}

TEST_F(OwnWater, ATypedPlaceTellsWhereItLiesBeforeItIsAdded) {
    edits::changeFacts(open(), "x", [](water::Water& water) {
        water.places = {{"Mill", water.frame->toEarth(geo::WaterPoint{0.0, 0.0})}};
    });
    const geo::LonLat place = onEarth(60.0, 60.0);
    type("Place",
         QStringLiteral("%1 N %2 E").arg(place.lat_deg, 0, 'f', 7).arg(place.lon_deg, 0, 'f', 7));
    const auto known = tomorrow::lookedUp(water(), open().derived(), place, words);
    EXPECT_TRUE(known.isOnWater);
    EXPECT_TRUE(known.words.startsWith("Mill, ")) << known.words.toStdString();
    EXPECT_TRUE(known.words.endsWith(" m deep that day"));
    EXPECT_TRUE(says(known.words));
    type("Place", "");
    EXPECT_FALSE(says(known.words));
}

TEST_F(OwnWater, APlaceThatLiesOnNoWaterIsRefusedWithItsDistance) {
    type("Place", "55.2 N 3.3 E");
    EXPECT_FALSE(button("Add").isEnabled());
    EXPECT_TRUE(says("On no water of this chart: 12.7 km from its middle."));
    QTest::keyClick(&named<QLineEdit>("Place"), Qt::Key_Return);
    EXPECT_TRUE(water().pinnedMarks.empty());
    type("Place", "");
}

TEST_F(OwnWater, OwnMarksAreListedRenamedAndLetGoWhereverTheyLie) {
    edits::pinMark(open(), onEarth(20.0, 30.0), {"", onEarth(20.0, 30.0)});
    edits::pinMark(open(), onEarth(5000.0, 0.0), {"Far", onEarth(5000.0, 0.0)});
    widgets::PlainTable& own = table("Own marks");
    ASSERT_EQ(own.rowCount(), 2);
    EXPECT_EQ(own.words(0, 0), wording::Words::place(onEarth(20.0, 30.0)));
    EXPECT_TRUE(own.words(0, 1).endsWith(" m"));
    EXPECT_EQ(own.words(1, 0), "Far");
    EXPECT_EQ(own.words(1, 1), "no water that day");
    emit own.typedOver(0, " Stones ");
    EXPECT_EQ(water().pinnedMarks[0].name, "Stones");
    EXPECT_EQ(water().pinnedMarks[0].place, onEarth(20.0, 30.0));
    own.selectRow(1);
    button("Remove").click();
    ASSERT_EQ(water().pinnedMarks.size(), 1U);
    EXPECT_EQ(water().pinnedMarks[0].name, "Stones");
    emit own.removeAsked(0);
    EXPECT_TRUE(water().pinnedMarks.empty());
    turn();
    EXPECT_TRUE(own.isHidden());
}

TEST_F(OwnWater, DepthsAreThoseOfThePlannedDaysLevel) {
    edits::pinMark(open(), onEarth(0.0, 0.0), {"Middle", onEarth(0.0, 0.0)});
    const auto depthOf = [] {
        return tomorrow::ownMarkRows(water(), open().derived(), words)[0][1];
    };
    const auto drawn = open().derived().drawn->depth.at(geo::WaterPoint{0.0, 0.0}).value();
    EXPECT_EQ(depthOf(), words.depth(drawn));
    edits::setPlan(open(), "x",
                   [](marks::Plan& plan) { plan.day.levelChange = units::Length::metres(-1.0); });
    EXPECT_EQ(depthOf(), words.depth(units::Depth::metres(drawn.inMetres() - 1.0)));
    edits::setPlan(open(), "x",
                   [](marks::Plan& plan) { plan.day.levelChange = units::Length::metres(-30.0); });
    EXPECT_EQ(depthOf(), "no water that day");
}

TEST_F(OwnWater, TheChosenMarkIsBannedForTwoCastsRoundAndTheBanIsLifted) {
    const marks::Mark mark = planned().marks[1];
    desk_->chart.selectMark(mark.rank);
    EXPECT_TRUE(says("Nothing is banned: all of the water may be proposed."));
    EXPECT_TRUE(table("Banned water").isHidden());
    button("Ban mark").click();
    ASSERT_EQ(water().banned.size(), 1U);
    EXPECT_EQ(water().banned[0].ring,
              water::bannedRound(mark.lonLat, water().plan.tackle.cast * 2.0, {}).ring);
    replan();
    for (const marks::Mark& other : planned().marks) {
        EXPECT_GE(geo::distance_m(other.place, mark.place),
                  2.0 * water().plan.tackle.cast.inMetres());
    }
    widgets::PlainTable& bans = table("Banned water");
    ASSERT_EQ(bans.rowCount(), 1);
    EXPECT_EQ(bans.words(0, 1), words.area(water::extentOf(water(), water().banned[0]).area));
    emit bans.typedOver(0, "Snags ");
    EXPECT_EQ(water().banned[0].name, "Snags");
    bans.selectRow(0);
    button("Lift").click();
    EXPECT_TRUE(water().banned.empty());
}

TEST_F(OwnWater, BanningAnOwnMarkLetsItGo) {
    edits::pinMark(open(), onEarth(20.0, 30.0), {"Stones", onEarth(20.0, 30.0)});
    replan();
    const auto own = std::ranges::find(planned().marks, true, &marks::Mark::isPinned);
    ASSERT_NE(own, planned().marks.end());
    desk_->chart.selectMark(own->rank);
    button("Ban mark").click();
    EXPECT_TRUE(water().pinnedMarks.empty());
    ASSERT_EQ(water().banned.size(), 1U);
    EXPECT_EQ(water().banned[0].name, "Stones");
}

TEST_F(OwnWater, AnAreaIsBannedAsItIsDrawnOnTheChart) {
    button("Ban area…").click();
    EXPECT_EQ(desk_->chart.prompt(),
              "Click round the water to ban, corner by corner; double-click to close the line");
    desk_->chart.give(chart::RingMade{{{0.0, 0.0}, {100.0, 0.0}, {100.0, 50.0}, {0.0, 50.0}}});
    ASSERT_EQ(water().banned.size(), 1U);
    EXPECT_EQ(water().banned[0].name, "");
    EXPECT_NEAR(water::extentOf(water(), water().banned[0]).area.inSquareMetres(), 5000.0, 1.0);
    const geo::WaterPoint middle = water::extentOf(water(), water().banned[0]).middle;
    EXPECT_NEAR(middle.x_m, 50.0, 0.01);
    EXPECT_NEAR(middle.y_m, 25.0, 0.01);
    emit table("Banned water").removeAsked(0);
    EXPECT_TRUE(water().banned.empty());
}

TEST_F(OwnWater, ALineThatCrossesItselfBansNothingAndSaysWhy) {
    std::vector<base::Error> told;
    const auto heard =
        QObject::connect(&open(), &open_water::OpenWater::failed,
                         [&told](const base::Error& error) { told.push_back(error); });
    button("Ban area…").click();
    desk_->chart.give(chart::RingMade{{{0.0, 0.0}, {100.0, 50.0}, {100.0, 0.0}, {0.0, 50.0}}});
    QObject::disconnect(heard);
    EXPECT_TRUE(water().banned.empty());
    ASSERT_EQ(told.size(), 1U);
    EXPECT_FALSE(told[0].whatToDo.empty());
}

} // namespace
