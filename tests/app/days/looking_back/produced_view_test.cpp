// SPDX-License-Identifier: GPL-3.0-or-later
// What produced: in which order the rows come, what they are called, and what goes to a table.
#include "app/days/looking_back/produced_view.h"

#include "app/days/looking_back/log_view.h"
#include "tests/app/days/autumn_log.h"

#include <gtest/gtest.h>

namespace {

using namespace days::looking_back;
using preferences::UnitSystem;
using water::ReviewBy;

rates::RateRow rowOf(const char* name, std::optional<double> rate, double steadied) {
    rates::RateRow row;
    row.name = name;
    if (rate) {
        row.rate = rates::Rate{*rate, 0.1, 9.0};
    }
    row.shrunk = rates::Rate{steadied, 0.5 * steadied, 2.0 * steadied};
    return row;
}

std::vector<QString> namesOf(const rates::RateTable& table, ReviewBy by,
                             const water::Water& water = {},
                             UnitSystem units = UnitSystem::metric) {
    std::vector<QString> names;
    for (const ProducedRow& row :
         rowsThatMatter(table, by, water, water.settings.bands.value_or(contours::Bands()),
                        wording::Words(units))) {
        names.push_back(row.name);
    }
    return names;
}

TEST(Produced, PlacesComeByWhatIsToBeExpectedOfThemAndUntriedOnesLast) {
    rates::RateTable table;
    // A lucky hour is not the best place: by the steadied rate, and not by the counted one.
    table.rows = {rowOf("Bar", 1.0, 1.1), rowOf("Bay", 9.0, 1.5), rowOf("Point", 2.0, 2.0),
                  rowOf("Reeds", std::nullopt, 3.0)};
    for (const ReviewBy by : {ReviewBy::section, ReviewBy::zone, ReviewBy::bait}) {
        EXPECT_EQ(namesOf(table, by), (std::vector<QString>{"Point", "Bay", "Bar", "Reeds"}));
    }
    for (const ReviewBy by : {ReviewBy::hour, ReviewBy::wind, ReviewBy::month, ReviewBy::band}) {
        EXPECT_EQ(namesOf(table, by), (std::vector<QString>{"Bar", "Bay", "Point", "Reeds"}));
    }
}

TEST(Produced, MarksAreCalledByWhatLiesNearThem) {
    water::Water water;
    water.frame = geo::WaterFrame::around(std::vector<geo::LonLat>{{3.1, 55.2}}).value();
    const auto at = [&](double east_m) { return water.frame->toEarth({east_m, 0.0}); };
    water.places = {{"Gannick Bar", at(0.0)}};
    logbook::Log log(4);
    for (std::size_t i = 0; i < log.size(); ++i) {
        log[i].place = at(std::vector<double>{10.0, 36.0, 120.0, 900.0}[i]);
    }
    water.log = log;
    rates::RateTable table;
    for (const char* name : {"mark 1", "mark 2", "mark 3", "mark 4"}) {
        table.rows.push_back(rowOf(name, 1.0, 1.0));
    }
    EXPECT_EQ(
        namesOf(table, ReviewBy::mark, water),
        (std::vector<QString>{"Gannick Bar", "Gannick Bar (2)", "Gannick Bar, 120 m E", "mark 4"}));
}

TEST(Produced, DepthsAndTemperaturesAreInTheUsersUnits) {
    water::Water water;
    water.settings.bands =
        contours::Bands::make({units::Depth::metres(4.0)}, units::Depth::metres(6.0)).value();
    rates::RateTable table;
    table.rows = {rowOf("0 to 4 m", 1.0, 1.0), rowOf("over 4 m", 1.0, 1.0)};
    const wording::Words imperial(UnitSystem::imperial);
    EXPECT_EQ(namesOf(table, ReviewBy::band, water, UnitSystem::imperial)[0],
              imperial.depthRange(units::Depth(), units::Depth::metres(4.0)));
    table.rows = {rowOf("8 to 10 °C", 1.0, 1.0), rowOf("not noted", 1.0, 1.0)};
    EXPECT_EQ(namesOf(table, ReviewBy::wind, water, UnitSystem::imperial),
              (std::vector<QString>{"46 °F to 50 °F", "not noted"}));
    EXPECT_EQ(namesOf(table, ReviewBy::wind, water),
              (std::vector<QString>{"8 to 10 °C", "not noted"}));
}

TEST(Produced, SaysWhatIsToBeExpectedOfTheUntried) {
    rates::RateTable table;
    table.untried = rates::Rate{1.2, 0.3, 3.1};
    EXPECT_EQ(untriedWords(0, table), "");
    EXPECT_EQ(untriedWords(1, table),
              "1 more was never tried: 1.2 (0.3 to 3.1) is to be expected.");
    EXPECT_EQ(untriedWords(12, table),
              "12 more were never tried: 1.2 (0.3 to 3.1) is to be expected of each.");
    table.untried.reset();
    EXPECT_EQ(untriedWords(12, table), "12 more were never tried.");
}

TEST(Produced, TableHasEveryFigureAndNoFormula) {
    rates::RateRow row = rowOf("x", 1.25, 1.5);
    row.rodHours = 12.5;
    row.stays = 4;
    row.blanks = 3;
    row.runs = 2;
    row.fish = 1;
    row.best = units::Weight::kilograms(5.67);
    const QString text = producedTable(
        {{"=Bay, \"old\"", row}, {"Reeds", rowOf("y", std::nullopt, 1.0)}}, wording::Words());
    EXPECT_EQ(text, "name,rod_hours,stays,blanks,runs,fish,best,rate_per_10_rod_hours,rate_low,"
                    "rate_high,steadied_rate,steadied_low,steadied_high\r\n"
                    "\"'=Bay, \"\"old\"\"\",12.500,4,3,2,1,5.67 kg,1.2500,0.1000,9.0000,1.5000,"
                    "0.7500,3.0000\r\n"
                    "Reeds,0.000,0,0,0,0,,,,,1.0000,0.5000,2.0000\r\n");
    EXPECT_TRUE(producedTable({{"Bay, west", row}}, wording::Words())
                    .contains("\r\n\"Bay, west\",12.500,"));
}

} // namespace
