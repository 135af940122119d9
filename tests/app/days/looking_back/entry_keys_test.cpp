// SPDX-License-Identifier: GPL-3.0-or-later
// A stay, a fish and a day written down by keyboard alone, key by key: how many it takes, where the
// next key goes, and that nothing is in the log that nobody said.
#include "app/edits/change_stay.h"
#include "app/edits/take_sheet.h"
#include "app/open_water/now.h"
#include "app/wording/sheet_stops.h"
#include "tests/app/days/looking_back/back_desk.h"

#include <QComboBox>

#include <algorithm>

namespace {

using units::Weight;

class EntryByKeys : public support::BackDesk {
protected:
    void layDay(const char* day) { named<widgets::EntryLine>("Day").setText(day); }
    /// Said above or below the stops of the day, and not somewhere on the page.
    bool saidOfTheStops(const QString& words) {
        const QWidget* part = named<widgets::PlainTable>("Stops of the day").parentWidget();
        return std::ranges::any_of(part->findChildren<QLabel*>(), [&](const QLabel* label) {
            return label->isVisible() && label->text().contains(words);
        });
    }
};

TEST_F(EntryByKeys, AStayTakesFewerThanTwentyKeysFromAnyStep) {
    for (const int step : {0, 4, -1}) {
        day_->steps().openStep(step);
        turn();
        keys();
        press(Qt::Key_B, Qt::ControlModifier);
        EXPECT_EQ(focused(), "Place");
        enter("2");
        EXPECT_EQ(focused(), "From") << "the day is today's already";
        press(Qt::Key_Escape);
        EXPECT_TRUE(log().empty()) << "left: nothing is written";
    }
    keys();
    press(Qt::Key_B, Qt::ControlModifier);
    enter("2");
    const int before = std::exchange(keys_, 0);
    QWidget* from = QApplication::focusWidget(); // a day that does not change with the test's
    layDay("3/10/26");
    from->setFocus();
    keys_ = before;
    enter("0910");
    EXPECT_EQ(focused(), "To");
    enter("1105");
    enter("3");
    EXPECT_TRUE(log().empty()) << "the last line is not left yet";
    press(Qt::Key_Return);
    ASSERT_EQ(log().size(), 1U);
    EXPECT_LT(keys() + 1, 20) << "with Ctrl+3 from another day";
    const logbook::Stay stay = log()[0];
    EXPECT_EQ(stay.start, at("2026-10-03 09:10"));
    EXPECT_EQ(stay.end, at("2026-10-03 11:05"));
    EXPECT_EQ(stay.rods, 3);
    EXPECT_EQ(stay.place, placeOf(2));
    EXPECT_EQ(stay.bait, "");
    EXPECT_EQ(stay.conditions, logbook::Conditions());
    EXPECT_TRUE(stay.isBlank());
    EXPECT_EQ(focused(), "Stays and fish") << "the next key is for the list";
    EXPECT_EQ(chart_.selection().stay, stay.id);
    open_.undoStack().undo();
    EXPECT_TRUE(log().empty());
}

TEST_F(EntryByKeys, AFishTakesFewerThanTwelveKeys) {
    logbook::Stay stay;
    stay.start = at("2026-10-03 09:10");
    stay.end = at("2026-10-03 11:05");
    stay.place = placeOf(1);
    logbook::Fish known;
    known.time = at("2026-10-03 09:20");
    known.species = "pike";
    stay.runs = {known};
    day_->steps().openStep(2);
    edits::change(open_, "Add", {water::Part::log}, [&](water::Water& water) {
        stay.id = logbook::StayId(water::freshId(water));
        stay.runs[0].id = logbook::FishId(stay.id.number() + 1);
        water.log = logbook::KeptLog{stay};
    });
    chart_.selectStay(stay.id);
    turn();
    keys();
    press(Qt::Key_F, Qt::ControlModifier);
    EXPECT_EQ(focused(), "Time");
    enter("930");
    enter("p");
    enter("5.7");
    EXPECT_LT(keys(), 12);
    ASSERT_EQ(log()[0].runs.size(), 2U);
    const logbook::Fish fish = log()[0].runs[1];
    EXPECT_EQ(fish.time, at("2026-10-03 09:30"));
    EXPECT_EQ(fish.species, "pike") << "the likeliest word of the log that begins so";
    EXPECT_NEAR(fish.weight.value_or(Weight()).inKilograms(), 5.7, 1e-9);
    EXPECT_TRUE(fish.landed);
    EXPECT_EQ(focused(), "Stays and fish");
    open_.undoStack().undo();
    turn();
    EXPECT_EQ(log()[0].runs.size(), 1U);
    EXPECT_EQ(chart_.selection().stay, stay.id) << "undo keeps the selection";
    EXPECT_TRUE(named<QPushButton>("Fish").isEnabled());
}

TEST_F(EntryByKeys, ADayOfFourStaysThreeFishAndABlankFromTheSheet) {
    press(Qt::Key_D, Qt::ControlModifier);
    EXPECT_EQ(focused(), "Rods out");
    EXPECT_TRUE(log().empty()) << "the plan is no record";
    press(Qt::Key_Equal); // as many as were planned, which stand there pale
    press(Qt::Key_Return);
    enter("smelt");
    EXPECT_EQ(focused(), "Stops of the day");
    for (int stop = 0; stop < 4; ++stop) {
        if (stop == 2) { // at other times than planned
            press(Qt::Key_Return);
            EXPECT_EQ(focused(), "From");
            press(Qt::Key_Equal);
            press(Qt::Key_Return);
            press(Qt::Key_Equal);
            press(Qt::Key_Backspace);
            type("5");
            press(Qt::Key_Return);
            press(Qt::Key_Equal);
            press(Qt::Key_Return);
            press(Qt::Key_Return);
        } else {
            press(Qt::Key_Space);
        }
        ASSERT_EQ(log().size(), static_cast<std::size_t>(stop) + 1);
        EXPECT_EQ(focused(), "Stops of the day");
        if (stop != 1) { // the second is the blank
            const logbook::Stay stay = log()[static_cast<std::size_t>(stop)];
            const QString time = QString::fromStdString(
                units::timeOfDayText(stay.start + std::chrono::minutes(10), open_.water()->clock));
            press(Qt::Key_F, Qt::ControlModifier);
            enter(QString(time).remove(':'));
            enter(stop == 0 ? "pike" : "p");
            enter("4.2");
            EXPECT_EQ(focused(), "Stops of the day");
        }
        press(Qt::Key_Down);
    }
    // Three minutes are 180 seconds; half of a second for a key leaves as long again to think.
    EXPECT_LE(keys(), 90);
    const logbook::Log written = log();
    ASSERT_EQ(written.size(), 4U);
    const auto minute = [](units::Moment moment) {
        return units::Moment(std::chrono::round<std::chrono::minutes>(moment));
    };
    int fish = 0;
    for (std::size_t i = 0; i < 4; ++i) {
        const auto& stop = open_.planned()->day.stops[i];
        EXPECT_EQ(written[i].rods, 3) << i;
        EXPECT_EQ(written[i].conditions, logbook::Conditions()) << "no wind that nobody noted";
        EXPECT_EQ(written[i].isBlank(), i == 1) << i;
        EXPECT_EQ(written[i].bait, i == 2 ? "" : "smelt") << "said of what is ticked";
        EXPECT_EQ(written[i].start, minute(stop.leave - stop.stay)) << i;
        if (i != 2) {
            EXPECT_EQ(written[i].end, minute(stop.leave)) << i;
        }
        fish += written[i].fishCount();
    }
    EXPECT_EQ(fish, 3);
    EXPECT_TRUE(says("4 of 4 stops written down"));
}

TEST_F(EntryByKeys, WhatIsPlannedStaysPaleUntilItIsTickedAndTurnsPaleAgainOnUndo) {
    press(Qt::Key_D, Qt::ControlModifier);
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    auto& stops = named<widgets::PlainTable>("Stops of the day");
    for (int row = 0; row < 4; ++row) {
        EXPECT_EQ(stops.lookOf(row), widgets::RowLook::faint) << row;
        EXPECT_EQ(stops.words(row, 2), "planned") << row;
    }
    press(Qt::Key_F, Qt::ControlModifier);
    EXPECT_TRUE(log().empty());
    EXPECT_EQ(focused(), "Stops of the day") << "no fish of a stay that nobody has said";
    press(Qt::Key_Delete);
    EXPECT_EQ(stops.lookOf(0), widgets::RowLook::struck);
    EXPECT_TRUE(log().empty());
    press(Qt::Key_Space); // he lay there after all
    EXPECT_EQ(stops.lookOf(0), widgets::RowLook::plain);
    EXPECT_EQ(stops.words(0, 2), "blank");
    ASSERT_EQ(log().size(), 1U);
    EXPECT_FALSE(log()[0].rods) << "nobody said how many";
    press(Qt::Key_Space);
    EXPECT_EQ(log().size(), 1U) << "one stay is one stay";
    open_.undoStack().undo();
    turn();
    EXPECT_EQ(stops.lookOf(0), widgets::RowLook::faint);
    open_.undoStack().redo();
    turn();
    EXPECT_EQ(stops.lookOf(0), widgets::RowLook::plain);
    // Begun again, it is known what is in the log.
    press(Qt::Key_Escape);
    press(Qt::Key_D, Qt::ControlModifier);
    EXPECT_EQ(named<widgets::PlainTable>("Stops of the day").lookOf(0), widgets::RowLook::plain);
    EXPECT_EQ(named<widgets::PlainTable>("Stops of the day").lookOf(1), widgets::RowLook::faint);
}

TEST_F(EntryByKeys, AStayElsewhereAtThatTimeIsNotTheStops) {
    const auto stops = open_.planned()->day.stops;
    ASSERT_EQ(stops.size(), 4U);
    logbook::Stay elsewhere;
    elsewhere.start = stops[0].leave - stops[0].stay;
    elsewhere.end = stops[0].leave;
    elsewhere.place = placeOf(stops[3].rank);
    edits::change(open_, "Add", {water::Part::log}, [&](water::Water& water) {
        elsewhere.id = logbook::StayId(water::freshId(water));
        water.log = logbook::KeptLog{elsewhere};
    });
    press(Qt::Key_D, Qt::ControlModifier);
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    auto& rows = named<widgets::PlainTable>("Stops of the day");
    EXPECT_EQ(rows.words(0, 2), "planned");
    EXPECT_EQ(rows.lookOf(0), widgets::RowLook::faint);
    press(Qt::Key_Space);
    EXPECT_EQ(log().size(), 1U) << "one of the two is wrong: it is said and not written";
    EXPECT_EQ(rows.words(0, 2), "planned");
    EXPECT_TRUE(says("Which one is right?"));
}

TEST_F(EntryByKeys, ATickSaysWhatCanHardlyBeAndWritesNoRodsThatAreNone) {
    edits::change(open_, "Set rules", {water::Part::houseRules},
                  [](water::Water& w) { w.houseRules.rodLimit = 2; });
    press(Qt::Key_D, Qt::ControlModifier);
    press(Qt::Key_Equal);
    EXPECT_EQ(named<widgets::EntryLine>("Rods out").text(), "2") << "never more than are allowed";
    named<widgets::EntryLine>("Rods out").setText("3");
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    press(Qt::Key_Space);
    ASSERT_EQ(log().size(), 1U);
    EXPECT_EQ(log()[0].rods, 3) << "it is his log";
    EXPECT_TRUE(saidOfTheStops("3 rods, where the house allows 2."));
    EXPECT_TRUE(saidOfTheStops("1 of 4 stops written down"));
    named<widgets::EntryLine>("Rods out").setText("99");
    press(Qt::Key_Down);
    press(Qt::Key_Space);
    ASSERT_EQ(log().size(), 2U);
    EXPECT_EQ(log()[1].rods, std::nullopt) << "a slip is no count";
}

TEST_F(EntryByKeys, AWrittenStopShowsWhatItsStayHoldsAndIsNotStruck) {
    press(Qt::Key_D, Qt::ControlModifier);
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    press(Qt::Key_Space);
    auto& stops = named<widgets::PlainTable>("Stops of the day");
    press(Qt::Key_Delete);
    EXPECT_TRUE(says("This stop is in the log")) << "it says why nothing happens";
    EXPECT_EQ(stops.lookOf(0), widgets::RowLook::plain);
    edits::changeStay(open_, "x", log()[0].id, [this](logbook::Stay& stay) {
        stay.start = at("2026-10-03 06:17");
        stay.end = at("2026-10-03 07:31");
        stay.runs.resize(3);
        stay.runs[1].landed = false;
        stay.runs[2].landed = false;
    });
    turn();
    EXPECT_EQ(stops.words(0, 1), "06:17–07:31") << "and not as it was planned";
    EXPECT_EQ(stops.words(0, 2), "1 fish, 2 lost");
    open_.undoStack().undo();
    open_.undoStack().undo();
    turn();
    EXPECT_EQ(stops.lookOf(0), widgets::RowLook::faint) << "struck by nobody";
}

TEST_F(EntryByKeys, ADayToComeAndAPlanThatCannotBeMadeAreSaid) {
    edits::setPlan(open_, "Set",
                   [](marks::Plan& plan) { plan.day.day = std::chrono::year(2199) / 10 / 3; });
    press(Qt::Key_D, Qt::ControlModifier);
    EXPECT_TRUE(says("This day is still to come: nothing of it has been fished."));
    press(Qt::Key_Escape);
    edits::setPlan(open_, "Set", [](marks::Plan& plan) { plan.tackle.scope = 100.0; });
    press(Qt::Key_D, Qt::ControlModifier);
    EXPECT_TRUE(says("There is no plan to write up"));
    ASSERT_TRUE(open_.whyNoPlan());
    EXPECT_TRUE(says(QString::fromStdString(open_.whyNoPlan()->what))) << "and why";
}

TEST_F(EntryByKeys, TheMarkOfAStopDoesNotChangeWithThePlanMadeAnewMeanwhile) {
    press(Qt::Key_D, Qt::ControlModifier);
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    auto& stops = named<widgets::PlainTable>("Stops of the day");
    std::vector<QString> before;
    for (int row = 0; row < 4; ++row) {
        before.push_back(stops.words(row, 0));
    }
    press(Qt::Key_Space);
    edits::setPlan(open_, "Set", [](marks::Plan& plan) { plan.count = 2; });
    open_.planTomorrow();
    turn();
    ASSERT_EQ(stops.rowCount(), 4);
    for (int row = 0; row < 4; ++row) {
        EXPECT_EQ(stops.words(row, 0), before[static_cast<std::size_t>(row)]);
    }
}

TEST_F(EntryByKeys, TheSheetThatWasInTheBoatIsWrittenUpOnceThePlanHasGoneOn) {
    const units::Day today = open_.water()->clock.dayOf(open_water::now());
    const auto daysFromToday = [&](int days) {
        return units::Day(std::chrono::sys_days(today) + std::chrono::days(days));
    };
    const auto planFor = [&](int days, int count) {
        edits::setPlan(open_, "Set", [&](marks::Plan& plan) {
            plan.day.day = daysFromToday(days);
            plan.count = count;
        });
        open_.planTomorrow();
        turn();
    };
    planFor(-1, 3);
    const water::BoatSheet taken = wording::boatSheetOf(*open_.planned(), wording::Words());
    ASSERT_EQ(taken.stops.size(), 3U);
    edits::takeSheet(open_, taken);
    planFor(1, 2);
    const water::BoatSheet next = wording::boatSheetOf(*open_.planned(), wording::Words());
    edits::takeSheet(open_, next);
    press(Qt::Key_D, Qt::ControlModifier);
    EXPECT_EQ(focused(), "Rods out");
    auto& which = named<QComboBox>("Day");
    ASSERT_EQ(which.count(), 3);
    EXPECT_EQ(which.currentIndex(), 2) << "the last day that is not to come";
    const auto areMarksShown = [&] {
        return chart_.content().shown.contains(chart::LayerKind::marks);
    };
    EXPECT_FALSE(areMarksShown()) << "tomorrow's have the same numbers";
    EXPECT_FALSE(says("still to come"));
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    auto& stops = named<widgets::PlainTable>("Stops of the day");
    ASSERT_EQ(stops.rowCount(), 3);
    press(Qt::Key_Space);
    ASSERT_EQ(log().size(), 1U);
    EXPECT_EQ(log()[0].start, taken.stops[0].from);
    EXPECT_EQ(log()[0].end, taken.stops[0].to);
    EXPECT_EQ(log()[0].place, taken.stops[0].place);
    EXPECT_TRUE(says("1 of 3 stops written down"));
    which.setCurrentIndex(0);
    emit which.activated(0);
    turn();
    EXPECT_EQ(stops.rowCount(), 2) << "the plan as it is now";
    EXPECT_TRUE(areMarksShown());
    EXPECT_TRUE(says("still to come"));
    which.setCurrentIndex(2);
    emit which.activated(2);
    turn();
    EXPECT_TRUE(says("1 of 3 stops written down"));
    open_.undoStack().undo(); // the stay
    open_.undoStack().undo(); // and the plan for tomorrow
    EXPECT_EQ(open_.water()->sheets.size(), 2U) << "what is on paper is not taken back";
}

TEST_F(EntryByKeys, ADayPlannedLaterThanTheLastSheetIsWrittenUpFromThePlan) {
    const units::Day today = open_.water()->clock.dayOf(open_water::now());
    water::BoatSheet old = wording::boatSheetOf(*open_.planned(), wording::Words());
    old.day = std::chrono::sys_days(today) - std::chrono::days(9);
    edits::takeSheet(open_, old);
    edits::setPlan(open_, "Set", [&](marks::Plan& plan) { plan.day.day = today; });
    press(Qt::Key_D, Qt::ControlModifier);
    EXPECT_EQ(named<QComboBox>("Day").currentIndex(), 0);
    EXPECT_TRUE(says("0 of 4 stops written down"));
}

TEST_F(EntryByKeys, APlaceIsPointedAtWithoutTheKeysGoingAstray) {
    press(Qt::Key_B, Qt::ControlModifier);
    EXPECT_EQ(chart_.tool(), chart::ToolKind::note) << "a click on the chart is the place";
    chart_.give(chart::PointMade{{40.0, -30.0}});
    EXPECT_EQ(focused(), "From");
    EXPECT_FALSE(chart_.isAsking());
    enter("0910");
    enter("1105");
    enter("");
    press(Qt::Key_Return);
    ASSERT_EQ(log().size(), 1U);
    const geo::WaterPoint found = open_.water()->frame->toWater(log()[0].place);
    EXPECT_NEAR(found.x_m, 40.0, 1e-6);
    EXPECT_NEAR(found.y_m, -30.0, 1e-6);
    EXPECT_FALSE(log()[0].rods);
}

TEST_F(EntryByKeys, WhatIsWrongHoldsTheHandAndIsExplained) {
    press(Qt::Key_B, Qt::ControlModifier);
    enter("nowhere");
    EXPECT_EQ(focused(), "Place");
    EXPECT_TRUE(says("a mark of the day such as 3"));
    named<widgets::EntryLine>("Place").clear();
    enter("1");
    enter("25:00");
    EXPECT_EQ(focused(), "From");
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(log().empty());
    press(Qt::Key_Escape);
    EXPECT_FALSE(chart_.isAsking());
    EXPECT_TRUE(log().empty());
}

TEST_F(EntryByKeys, DoubtsAreSaidBeforeItIsWrittenAndASecondStayAtTheTimeIsNotWritten) {
    edits::change(open_, "Set rules", {water::Part::houseRules},
                  [](water::Water& w) { w.houseRules.rodLimit = 2; });
    const auto fill = [this](const char* place, const char* from, const char* to) {
        press(Qt::Key_B, Qt::ControlModifier);
        enter(place);
        layDay("3/10/26");
        enter(from);
        enter(to);
        type("3");
    };
    fill("1", "0910", "1105");
    EXPECT_TRUE(says("3 rods, where the house allows 2."));
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    ASSERT_EQ(log().size(), 1U);
    fill("2", "1000", "1200");
    EXPECT_TRUE(says("Another stay lasted from 09:10 to 11:05"));
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    EXPECT_EQ(log().size(), 1U) << "one boat cannot be in both";
    EXPECT_TRUE(says("Which one is right?"));
    EXPECT_EQ(focused(), "From");
}

} // namespace
