// SPDX-License-Identifier: GPL-3.0-or-later
// The season as it is counted for its page, and the words about light and hours.
#include "app/days/looking_back/hours_view.h"
#include "app/days/looking_back/log_view.h"
#include "app/days/looking_back/produced_view.h"
#include "app/days/looking_back/season_view.h"
#include "app/edits/add_stays.h"
#include "core/water/questions/review_log.h"
#include "tests/app/days/autumn_log.h"
#include "tests/support/desk_bowl.h"

#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace {

using namespace days::looking_back;

chart::ChartContent autumnContent() {
    auto water = std::make_shared<water::Water>(*autumn::waterWith(autumn::log()));
    water->name = "Skarrow Water";
    water->frame = geo::WaterFrame::around(std::vector<geo::LonLat>{{3.1, 55.2}}).value();
    chart::ChartContent content;
    content.water = water;
    return content;
}

TEST(SeasonCounted, SaysItsSpanAndWhatItCameTo) {
    EXPECT_EQ(spanLine(logbook::LogSum::of(autumn::log(), {})),
              "Wed 30 Sep 2026 to Sat 3 Oct 2026: 2 trips, 3 stays, 3 fish");
    EXPECT_EQ(spanLine({}), "nothing logged yet");
}

TEST(SeasonCounted, IsOfTheWholeLogWhateverIsAskedOnTheScreen) {
    chart::ChartContent content = autumnContent();
    water::ReviewQuestion question;
    question.species = "pike";
    content.logAsked = question;
    base::Progress silent;
    const auto page = seasonPage(content, logbook::LogSum::of(autumn::log(), {}), silent);
    ASSERT_TRUE(page);
    EXPECT_FALSE(page->content.logAsked);
    EXPECT_EQ(page->hours->hours.trips, 2);
    EXPECT_TRUE(page->hours->light.has_value());
    EXPECT_EQ(page->months, seasonRows(logbook::LogSum::of(autumn::log(), {})));
    EXPECT_TRUE(page->places.empty()) << "the water is not drawn: nothing is known of its sections";
    EXPECT_FALSE(page->content.rates);
}

TEST(SeasonCounted, ListsSectionsThatWereFishedAndSaysWhatIsLeftAndNoted) {
    const QTemporaryDir folder;
    open_water::OpenWater open;
    ASSERT_TRUE(open.create(folder.filePath("bowl.gpkg"), "Skarrow Water"));
    ASSERT_TRUE(support::layBowl(open));
    const auto& sections = open.derived().sections->sections;
    ASSERT_GE(sections.size(), 2U);
    logbook::Log log = autumn::log();
    for (logbook::Stay& stay : log) {
        stay.place = open.water()->frame->toEarth(sections[1].middle);
    }
    log[0].rods.reset();
    edits::addStays(open, "Add", log);
    ASSERT_TRUE(support::derive(open));
    chart::ChartContent content;
    content.water = open.water();
    content.derived = open.derived();
    base::Progress silent;
    const auto page = seasonPage(content, logbook::LogSum::of(log, {}), silent);
    ASSERT_TRUE(page) << page.error().sentence();
    const auto table = water::reviewLog(*open.water(), open.derived(), {}, silent).value();
    ASSERT_EQ(page->places.size(), 1U);
    EXPECT_TRUE(page->places[0].contains(QString::fromStdString(sections[1].name)));
    EXPECT_EQ(page->untried, untriedWords(sections.size() - 1, table));
    EXPECT_FALSE(page->untried.isEmpty());
    QStringList notes;
    for (const std::string& note : table.notes) {
        notes += QString::fromStdString(note);
    }
    EXPECT_FALSE(notes.isEmpty()) << "a stay without its rods counts nowhere";
    EXPECT_EQ(page->notes, notes);
    ASSERT_TRUE(page->content.rates);
    EXPECT_TRUE(page->content.rates->isTried(sections[1].name));
}

TEST(SeasonCounted, NeedsALog) {
    chart::ChartContent content = autumnContent();
    content.water = autumn::waterWith({});
    base::Progress silent;
    EXPECT_FALSE(seasonPage(content, {}, silent));
    EXPECT_FALSE(seasonPage({}, {}, silent));
}

TEST(LightSaid, AsARangeOrAsOneTime) {
    EXPECT_EQ(lightWords({{7.0 + 10.0 / 60.0, 8.0 + 2.0 / 60.0}, {16.5, 16.5}}),
              "Sunrise 07:10 to 08:02, sunset 16:30 on the days fished.");
}

TEST(HoursGiven, AreEmptyWhereNothingWasFished) {
    rates::HourRates hours;
    hours.points = {{8.0, 0.0, std::nullopt}, {8.5, 4.25, rates::Rate{1.25, 0.5, 2.0}}};
    EXPECT_EQ(hoursTable(hours), "hour,rod_hours,rate_per_10_rod_hours,rate_low,rate_high\r\n"
                                 "8.00,0.000,,,\r\n"
                                 "8.50,4.250,1.2500,0.5000,2.0000\r\n");
}

} // namespace
