// SPDX-License-Identifier: GPL-3.0-or-later
// Rows and labels of Looking back, to the figure.
#include "app/days/looking_back/log_rows.h"
#include "app/days/looking_back/log_view.h"
#include "app/days/looking_back/produced_view.h"
#include "app/wording/doubts.h"
#include "tests/app/days/autumn_log.h"

#include <gtest/gtest.h>

namespace looking_back = days::looking_back;
using autumn::at;
using logbook::LogSum;
using preferences::UnitSystem;

namespace {

TEST(LookingBackRows, SayEachStayAndRunToTheFigure) {
    const std::vector<QStringList> expected{{"Sat 3 Oct 2026", "", ""},
                                            {"11:00–13:00", "3", "1 fish"},
                                            {"      12:00  perch", "", "1 lb 2 oz"},
                                            {"08:10–10:00", "2, smelt", "2 fish"},
                                            {"      08:30  pike", "smelt", "12 lb 8 oz"},
                                            {"      09:00  lost run", "smelt", ""},
                                            {"      09:30  fish", "eel", ""},
                                            {"Wed 30 Sep 2026", "", ""},
                                            {"08:00–10:00", "1, roach", "blank"}};
    const logbook::Log log = autumn::log();
    const auto rows =
        looking_back::LogRows(autumn::waterWith(log), wording::Words(UnitSystem::imperial));
    ASSERT_EQ(rows.size(), expected.size());
    for (std::size_t i = 0; i < rows.size(); ++i) {
        EXPECT_EQ(rows[i].cells, expected[i]);
    }
    const std::vector<std::pair<logbook::StayId, logbook::FishId>> things{
        {{}, {}},
        {log[2].id, {}},
        {log[2].id, log[2].runs[0].id},
        {log[1].id, {}},
        {log[1].id, log[1].runs[0].id},
        {log[1].id, log[1].runs[1].id},
        {log[1].id, log[1].runs[2].id},
        {{}, {}},
        {log[0].id, {}}};
    for (std::size_t i = 0; i < rows.size(); ++i) {
        EXPECT_EQ(std::pair(rows[i].stay, rows[i].run), things[i]) << i;
    }
    EXPECT_EQ(looking_back::LogRows(autumn::waterWith(log), wording::Words())[2].cells[2],
              "0.50 kg");
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

TEST(LookingBackRows, SayWhereAStayLay) {
    auto water = std::make_shared<water::Water>(*autumn::waterWith(autumn::log()));
    water->frame = geo::WaterFrame::around(std::vector<geo::LonLat>{{3.1, 55.2}}).value();
    const auto away = [&](double east_m, double north_m) {
        return water->frame->toEarth({east_m, north_m});
    };
    const geo::WaterPoint stays = water->frame->toWater({3.1, 55.2});
    water->places = {{"Gannick Bar", away(stays.x_m - 120.0, stays.y_m)}};
    const auto rowOf = [&] {
        return looking_back::LogRows(std::make_shared<water::Water>(*water), wording::Words())[1];
    };
    EXPECT_EQ(rowOf().cells[0], "11:00–13:00  Gannick Bar, 120 m E");
    water->pinnedMarks = {{"Post", away(stays.x_m, stays.y_m + 24.0)}};
    EXPECT_EQ(rowOf().cells[0], "11:00–13:00  Post") << "an own mark goes before a place near it";
    water->pinnedMarks[0].place = away(stays.x_m, stays.y_m + 27.0);
    EXPECT_EQ(rowOf().cells[0], "11:00–13:00  Gannick Bar, 120 m E");
}

TEST(LookingBackRows, SayWhatProducedToTheFigure) {
    rates::RateRow row;
    row.rodHours = 12.6;
    row.stays = 4;
    row.blanks = 3;
    row.runs = 9;
    row.fish = 5;
    row.best = units::Weight::pounds(12.5);
    row.shrunk = rates::Rate{2.34, 1.0, 4.0};
    EXPECT_EQ(looking_back::producedCells(row, "Bar"),
              (QStringList{"Bar", "13", "3 of 4", "5", "2.3"}));
    EXPECT_EQ(looking_back::producedCells({}, "all"), (QStringList{"all", "0", "0 of 0", "0", ""}));
    EXPECT_EQ(looking_back::rateWords(rates::Rate{1.44, 0.66, 2.61}), "1.4 (0.7 to 2.6)");
    EXPECT_EQ(looking_back::rateWords({}), "");
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
