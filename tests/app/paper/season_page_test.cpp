// SPDX-License-Identifier: GPL-3.0-or-later
// The season on a page, and the curve over the day, as they are read.
#include "app/paper/season_page.h"
#include "tests/app/support/day_to_read.h"
#include "tests/app/support/recorded_pages.h"
#include "tests/app/support/star_water.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace {

using support::Drawn;
using support::RecordedPages;

/// Half-hours of which only those from 8 to 10 and from 15 to 17 were fished.
rates::HourRates twoStretches() {
    rates::HourRates hours;
    hours.trips = 7;
    for (int k = 0; k < 48; ++k) {
        const double hour = 0.5 * k;
        const bool isFished = (hour >= 8.0 && hour < 10.0) || (hour >= 15.0 && hour < 17.0);
        const double rate = hour < 12.0 ? 1.0 : 3.0;
        hours.points.push_back(
            {hour, isFished ? 5.0 : 0.0,
             isFished ? std::optional(rates::Rate{rate, 0.5 * rate, 1.5 * rate}) : std::nullopt});
    }
    return hours;
}

class HoursOnPaper : public testing::Test {
protected:
    void paint(const paper::HoursShown& shown) {
        QPainter painter(&pages_);
        paper::paintHours(painter, QRectF(0, 0, 640, 300), shown);
    }
    [[nodiscard]] double x(double hour) const { return 64.0 + hour / 24.0 * (640.0 - 78.0); }
    RecordedPages pages_;
};

TEST(FishedRuns, ArePartedByHoursThatWereNotFished) {
    const auto runs = paper::fishedRuns(twoStretches());
    ASSERT_EQ(runs.size(), 2U);
    EXPECT_EQ(runs[0].front().hour, 8.0);
    EXPECT_EQ(runs[0].back().hour, 9.5);
    EXPECT_EQ(runs[1].front().hour, 15.0);
    EXPECT_EQ(runs[1].size(), 4U);
    EXPECT_TRUE(paper::fishedRuns({}).empty());
}

TEST_F(HoursOnPaper, HasATitleAxesAndUnits) {
    paint({twoStretches(), water::FishedLight{{7.0, 8.0}, {16.0, 18.0}}, "Skarrow Water"});
    const QStringList lines = pages_.lines();
    for (const char* words : {"Skarrow Water", "hour of the day", "fish per 10 rod-hours", "0",
                              "12", "24", "sunrise", "sunset"}) {
        EXPECT_TRUE(lines.contains(words)) << words;
    }
}

TEST_F(HoursOnPaper, DrawsNoCurveOverHoursThatNobodyFished) {
    paint({twoStretches(), std::nullopt, "x"});
    EXPECT_FALSE(pages_.lines().contains("sunrise"));
    std::size_t curves = 0;
    for (const Drawn& line : pages_.all(Drawn::Kind::polyline)) {
        if (line.points.size() < 3) {
            continue; // of the axes
        }
        ++curves;
        const auto [from, to] = std::ranges::minmax(line.points, {}, &QPointF::x);
        EXPECT_TRUE((from.x() > x(7.9) && to.x() < x(10.1)) ||
                    (from.x() > x(14.9) && to.x() < x(17.1)))
            << from.x() << " to " << to.x();
    }
    EXPECT_GE(curves, 2U);
}

paper::SeasonPage page() {
    paper::SeasonPage page;
    page.content = support::starContent();
    page.span = "3 Sep to 28 Nov 2026: 33 trips";
    page.said = {"Most is to be expected at Kiln Bay."};
    page.places = {{"Kiln Bay", "2.0 (0.9 to 3.9)", "8", "40", "9", "4"}};
    page.untried = "2 more were never tried.";
    page.hours = paper::HoursShown{twoStretches(), std::nullopt, "When"};
    page.months = {{"2026-10", "3", "9", "4", "8"}};
    page.notes = {"Few stays: read with care."};
    return page;
}

TEST(SeasonOnAPage, SaysFirstWhatItComesToAndThenWhereAndWhen) {
    RecordedPages pages;
    const auto count = paper::paintSeasonPage(pages, page());
    ASSERT_TRUE(count);
    const QStringList lines = pages.lines();
    qsizetype before = -1;
    for (const char* words :
         {"Skarrow Water", "3 Sep to 28 Nov 2026: 33 trips", "Most is to be expected at Kiln Bay.",
          "Where", "2.0 (0.9 to 3.9)", "2 more were never tried.", "When", "Month by month",
          "2026-10", "Few stays: read with care."}) {
        const qsizetype at = lines.indexOf(words, before + 1);
        EXPECT_GT(at, before) << words;
        before = std::max(at, before);
    }
    EXPECT_LE(*count, 2);
}

TEST(SeasonOnAPage, ShowsNothingOfTomorrow) {
    paper::SeasonPage one = page();
    one.content.planned = std::make_shared<const water::PlannedDay>(support::starDay());
    one.content.selection.mark = 1;
    RecordedPages pages;
    ASSERT_TRUE(paper::paintSeasonPage(pages, one));
    RecordedPages without;
    one.content.planned.reset();
    one.content.selection = {};
    ASSERT_TRUE(paper::paintSeasonPage(without, one));
    EXPECT_EQ(pages.lines(), without.lines());
}

TEST(SeasonOnAPage, NeedsAWater) {
    RecordedPages pages;
    EXPECT_FALSE(paper::paintSeasonPage(pages, {}));
}

} // namespace
