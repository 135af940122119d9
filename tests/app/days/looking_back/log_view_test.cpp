// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/looking_back/log_rows.h"
#include "app/days/looking_back/log_view.h"

#include "app/edits/add_stays.h"
#include "app/edits/change_stay.h"
#include "app/edits/remove_stay.h"
#include "app/open_water/open_water.h"
#include "tests/app/days/autumn_log.h"

#include <gtest/gtest.h>

#include <QTemporaryDir>

namespace looking_back = days::looking_back;
using logbook::LogSum;
using namespace std::chrono_literals;

namespace {

const units::Day october3{std::chrono::year(2026), std::chrono::month(10), std::chrono::day(3)};

logbook::Stay stayAt(std::chrono::seconds start, int rods) {
    logbook::Stay stay;
    stay.start = units::Clock().at(october3, start);
    stay.end = stay.start + 2h;
    stay.rods = rods;
    return stay;
}

logbook::Log smallLog() {
    logbook::Log log{stayAt(8h, 3), stayAt(11h, 4)};
    log[0].id = logbook::StayId(1);
    log[1].id = logbook::StayId(2);
    logbook::Fish fish;
    fish.id = logbook::FishId(3);
    fish.time = log[1].start + 30min;
    fish.species = "pike";
    fish.weight = units::Weight::pounds(12.5);
    log[1].runs = {fish};
    return log;
}

TEST(LogView, CountsTripsStaysAndFish) {
    EXPECT_EQ(looking_back::logLine(LogSum::of({}, {})), "0 trips, 0 stays, 0 fish");
    EXPECT_EQ(looking_back::logLine(LogSum::of(smallLog(), {})), "1 trip, 2 stays, 1 fish");
}

TEST(LogView, ListsTheLatestStayFirstWithItsRunsBelow) {
    const wording::Words imperial(preferences::UnitSystem::imperial);
    const auto rows = looking_back::LogRows(autumn::waterWith(smallLog()), imperial);
    ASSERT_EQ(rows.size(), 4U);
    EXPECT_TRUE(rows[0].isHeading());
    EXPECT_EQ(rows[1].stay.number(), 2);
    EXPECT_EQ(rows[2].run.number(), 3);
    EXPECT_EQ(rows[2].cells[2], "12 lb 8 oz");
    EXPECT_EQ(rows[3].cells[2], "blank");
}

TEST(LogView, AddsUpTheMonths) {
    const auto rows = looking_back::seasonRows(LogSum::of(smallLog(), {}));
    ASSERT_EQ(rows.size(), 1U);
    EXPECT_EQ(rows[0], (QStringList{"2026-10", "1", "2", "1", "1"}));
}

TEST(LogEdits, CanAllBeUndone) {
    const QTemporaryDir folder;
    open_water::OpenWater open;
    ASSERT_TRUE(open.create(folder.filePath("small.gpkg"), "Skarrow Water"));
    const logbook::StayId id = edits::addStays(open, "Add stay", {stayAt(8h, 3)});
    ASSERT_EQ(open.water()->log.size(), 1U);
    EXPECT_TRUE(id.isGiven());
    edits::changeStay(open, "Add fish", id, [](logbook::Stay& stay) {
        logbook::Fish run;
        run.time = stay.start + 1h;
        stay.runs.push_back(run);
    });
    ASSERT_EQ(open.water()->log.front().runs.size(), 1U);
    EXPECT_TRUE(open.water()->log.front().runs.front().id.isGiven());
    edits::removeStay(open, id);
    EXPECT_TRUE(open.water()->log.empty());
    open.undoStack().undo();
    open.undoStack().undo();
    ASSERT_EQ(open.water()->log.size(), 1U);
    EXPECT_TRUE(open.water()->log.front().isBlank());
    open.undoStack().undo();
    EXPECT_TRUE(open.water()->log.empty());
}

} // namespace
