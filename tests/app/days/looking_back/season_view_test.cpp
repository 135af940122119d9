// SPDX-License-Identifier: GPL-3.0-or-later
// The season as it is counted for its page, and the words about light and hours.
#include "app/days/looking_back/hours_view.h"
#include "app/days/looking_back/log_view.h"
#include "app/days/looking_back/season_view.h"
#include "tests/app/days/autumn_log.h"

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
