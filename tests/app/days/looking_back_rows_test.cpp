// SPDX-License-Identifier: GPL-3.0-or-later
// Rows and labels of Looking back, to the figure.
#include "app/days/looking_back/log_view.h"
#include "app/wording/doubts.h"
#include "tests/app/days/autumn_log.h"

#include <gtest/gtest.h>

namespace looking_back = days::looking_back;
using autumn::at;
using logbook::LogSum;
using preferences::UnitSystem;

namespace {

TEST(LookingBackRows, SayEachStayAndRunToTheFigure) {
    const std::vector<QStringList> expected{{"3 Oct 2026, 11:00–13:00", "3 rods", "1 fish"},
                                            {"      12:00  perch", "", "1 lb 2 oz"},
                                            {"3 Oct 2026, 08:10–10:00", "2 rods, smelt", "2 fish"},
                                            {"      08:30  pike", "smelt", "12 lb 8 oz"},
                                            {"      09:00  lost run", "smelt", ""},
                                            {"      09:30  fish", "eel", ""},
                                            {"30 Sep 2026, 08:00–10:00", "1 rod, roach", "blank"}};
    const logbook::Log log = autumn::log();
    const auto rows = looking_back::LogRows(log, {}, wording::Words(UnitSystem::imperial));
    ASSERT_EQ(rows.size(), expected.size());
    for (std::size_t i = 0; i < rows.size(); ++i) {
        EXPECT_EQ(rows[i].cells, expected[i]);
    }
    const std::vector<std::pair<logbook::StayId, logbook::FishId>> things{
        {log[2].id, {}},
        {log[2].id, log[2].runs[0].id},
        {log[1].id, {}},
        {log[1].id, log[1].runs[0].id},
        {log[1].id, log[1].runs[1].id},
        {log[1].id, log[1].runs[2].id},
        {log[0].id, {}}};
    for (std::size_t i = 0; i < rows.size(); ++i) {
        EXPECT_EQ(std::pair(rows[i].stay, rows[i].run), things[i]) << i;
    }
    EXPECT_EQ(looking_back::LogRows(log, {}, wording::Words())[1].cells[2], "0.50 kg");
    // By the water's clock.
    const auto london = units::Clock::inZone("Europe/London").value();
    EXPECT_EQ(wording::stayTitle(log[1], london), "Sat 3 Oct 2026, 09:10 to 11:00");
}

TEST(LookingBackRows, AddUpTripsStaysBlanksAndFish) {
    EXPECT_EQ(looking_back::logLine(LogSum::of(autumn::log(), {})), "2 trips, 3 stays, 3 fish");
    EXPECT_EQ(looking_back::logLine(LogSum::of(logbook::Log{autumn::log()[0]}, {})),
              "1 trip, 1 stay, 0 fish");
    EXPECT_EQ(looking_back::seasonRows(LogSum::of(autumn::log(), {})),
              (std::vector<QStringList>{{"2026-09", "1", "1", "1", "0"},
                                        {"2026-10", "1", "2", "0", "3"}}));
    EXPECT_EQ(looking_back::speciesIn(LogSum::of(autumn::log(), {})),
              (QStringList{"perch", "pike"}));
}

TEST(LookingBackRows, SayWhatProducedToTheFigure) {
    rates::RateTable table;
    rates::RateRow row;
    row.name = "Bar";
    row.rodHours = 12.6;
    row.stays = 4;
    row.blanks = 3;
    row.runs = 9;
    row.fish = 5;
    row.best = units::Weight::pounds(12.5);
    row.shrunk = rates::Rate{2.34, 1.0, 4.0};
    table.rows = {row};
    table.overall.rodHours = 100.4;
    table.overall.stays = 40;
    const auto rows = looking_back::producedRows(table, wording::Words(UnitSystem::imperial));
    EXPECT_EQ(rows,
              (std::vector<QStringList>{{"Bar", "13", "4", "3", "9", "5", "12 lb 8 oz", "2.3"},
                                        {"all", "100", "40", "0", "0", "0", "", ""}}));
    EXPECT_EQ(looking_back::rateWords(rates::Rate{1.44, 0.66, 2.61}), "1.4 (0.7 to 2.6)");
    EXPECT_EQ(looking_back::rateWords({}), "");
}

TEST(NewStay, IsOfTodayAndBeginsAfterTheLastStayOfTheDayWithItsRodsAndBait) {
    water::Water water;
    water.log = autumn::log();
    const auto onDay = [&](const std::string& now) {
        return looking_back::newStay(water, at(now));
    };
    const logbook::Stay after = onDay("2026-10-03 22:10");
    EXPECT_EQ(after.start, at("2026-10-03 13:00"));
    EXPECT_EQ(after.end, at("2026-10-03 15:00"));
    EXPECT_EQ(after.rods, 3);
    EXPECT_EQ(after.bait, "");
    EXPECT_EQ(onDay("2026-10-03 14:20").end, at("2026-10-03 14:20")) << "not in the future";
    EXPECT_EQ(onDay("2026-10-03 13:01").end, at("2026-10-03 13:05"));
    EXPECT_EQ(onDay("2026-09-30 18:00").bait, "roach");
    water.houseRules.rodLimit = 2;
    EXPECT_EQ(onDay("2026-10-03 22:10").rods, 2) << "never more than the house allows";
    EXPECT_EQ(onDay("2026-09-30 18:00").rods, 1);
}

TEST(NewStay, MakesUpNothingWhereNobodyHasSaidAnything) {
    water::Water water;
    water.plan.tackle.rods = 4;
    water.plan.day.day = units::dayFrom("2026-10-05").value();
    const logbook::Stay first = looking_back::newStay(water, at("2026-10-04 22:10"));
    EXPECT_EQ(first.start, at("2026-10-04 20:10"));
    EXPECT_EQ(first.end, at("2026-10-04 22:10"));
    EXPECT_FALSE(first.rods);
    EXPECT_EQ(first.bait, "");
    EXPECT_EQ(first.conditions, logbook::Conditions());
    EXPECT_EQ(looking_back::newStay(water, at("2026-10-04 00:30")).start, at("2026-10-04 00:00"))
        << "not of the day before";
}

TEST(BestHoursSaid, TheStretchAndHowManyTripsItComesFrom) {
    rates::HourRates hours;
    for (int hour = 0; hour < 24; ++hour) {
        const double rate = hour == 17 || hour == 18 ? 4.0 : 1.0;
        hours.points.push_back(
            {static_cast<double>(hour), 5.0, rates::Rate{rate, rate - 0.5, rate + 0.5}});
    }
    hours.trips = 7;
    EXPECT_EQ(days::looking_back::bestHoursWords(hours),
              "best between 17:00 and 19:00, by 7 trips");
    hours.points[17].rate = rates::Rate{4.0, 0.5, 9.0};
    hours.points[18].rate = rates::Rate{3.0, 0.5, 9.0};
    EXPECT_EQ(days::looking_back::bestHoursWords(hours), "no hour stands out, by 7 trips");
    EXPECT_EQ(days::looking_back::bestHoursWords({}), "too little fished to say");
}

} // namespace
