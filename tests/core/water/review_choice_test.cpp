// SPDX-License-Identifier: GPL-3.0-or-later
// Which part of the log is asked about, and what of it is told beside the rates.
#include "core/water/questions/fished_light.h"
#include "core/water/questions/log_groups.h"
#include "core/water/questions/review_log.h"

#include <algorithm>

#include <gtest/gtest.h>

namespace {

using namespace std::chrono_literals;
using logbook::Stay;
using water::ReviewBy;
using water::ReviewQuestion;

class ReviewChoice : public testing::Test {
protected:
    ReviewChoice() {
        water_.clock = units::Clock::inZone("Europe/London").value();
        water_.frame = geo::WaterFrame::around(std::vector<geo::LonLat>{{3.1, 55.2}}).value();
    }
    /// A stay of two hours with one rod, so many metres east.
    Stay& add(const char* start, double east_m = 0.0) {
        Stay stay;
        stay.id = logbook::StayId(static_cast<std::int64_t>(water_.log.size()) + 1);
        stay.start = units::momentFrom(start, water_.clock).value();
        stay.end = stay.start + 2h;
        stay.rods = 1;
        stay.place = water_.frame->toEarth({east_m, 0.0});
        water_.log.push_back(stay);
        return water_.log.edit(water_.log.size() - 1);
    }
    std::vector<int> staysBy(const ReviewQuestion& question) {
        base::Progress silent;
        const auto table = water::reviewLog(water_, {}, question, silent).value();
        std::vector<int> counts;
        for (const rates::RateRow& row : table.rows) {
            counts.push_back(row.stays);
        }
        return counts;
    }
    water::Water water_;
};

TEST_F(ReviewChoice, TakesDaysSeasonAndBaitByTheStay) {
    const Stay stay = add("2026-10-03 09:00");
    const units::Day day = units::dayFrom("2026-10-03").value();
    const auto isAsked = [&](const ReviewQuestion& question) {
        return water::isAskedAbout(stay, question, water_.clock);
    };
    ReviewQuestion question;
    EXPECT_TRUE(isAsked(question));
    question.from = question.to = day;
    EXPECT_TRUE(isAsked(question)) << "both days are among them";
    question.from = units::dayFrom("2026-10-04").value();
    EXPECT_FALSE(isAsked(question));
    question.from.reset();
    question.to = units::dayFrom("2026-10-02").value();
    EXPECT_FALSE(isAsked(question));
    question = {};
    question.season = logbook::Season{std::chrono::October / 3, std::chrono::October / 3};
    EXPECT_TRUE(isAsked(question));
    question.season = logbook::Season{std::chrono::December / 1, std::chrono::February / 29};
    EXPECT_FALSE(isAsked(question));
    question.season = logbook::Season{std::chrono::December / 1, std::chrono::October / 3};
    EXPECT_TRUE(isAsked(question)) << "over the new year";
}

TEST_F(ReviewChoice, KnowsABaitAmongSeveralAndOfOneFishAlone) {
    Stay stay = add("2026-10-03 09:00");
    EXPECT_FALSE(water::fishedBait(stay, "smelt")) << "not known is not fished";
    stay.bait = "Roach, Smelt";
    EXPECT_TRUE(water::fishedBait(stay, "smelt"));
    EXPECT_TRUE(water::fishedBait(stay, "ROACH"));
    EXPECT_FALSE(water::fishedBait(stay, "smel"));
    EXPECT_FALSE(water::fishedBait(stay, "eel"));
    stay.runs.emplace_back();
    stay.runs[0].bait = "eel";
    EXPECT_TRUE(water::fishedBait(stay, "eel"));
}

TEST_F(ReviewChoice, CountsFishOfTheKindAsked) {
    logbook::Fish fish;
    fish.species = "Pike";
    ReviewQuestion question;
    EXPECT_TRUE(water::counts(fish, question));
    question.species = "pike";
    EXPECT_TRUE(water::counts(fish, question));
    question.leastWeight = units::Weight::kilograms(5.0);
    EXPECT_FALSE(water::counts(fish, question)) << "nobody knows how heavy it was";
    fish.weight = units::Weight::kilograms(5.0);
    EXPECT_TRUE(water::counts(fish, question));
    fish.weight = units::Weight::kilograms(4.99);
    EXPECT_FALSE(water::counts(fish, question));
    question = {};
    fish.landed = false;
    EXPECT_FALSE(water::counts(fish, question)) << "a run that was lost is no fish";
    question.species = "perch";
    fish.landed = true;
    EXPECT_FALSE(water::counts(fish, question));
}

TEST_F(ReviewChoice, LeavesOutOfTheRatesWhatIsNotAsked) {
    add("2026-03-03 09:00").bait = "smelt";
    add("2026-10-03 09:00").bait = "smelt";
    add("2026-10-10 09:00").bait = "roach";
    ReviewQuestion question;
    question.by = ReviewBy::mark;
    EXPECT_EQ(staysBy(question), std::vector<int>{3});
    question.season = logbook::Season{std::chrono::September / 1, std::chrono::November / 30};
    EXPECT_EQ(staysBy(question), std::vector<int>{2});
    question.bait = "smelt";
    EXPECT_EQ(staysBy(question), std::vector<int>{1});
    base::Progress silent;
    EXPECT_EQ(water::reviewHours(water_, question, silent).value().trips, 1);
}

TEST_F(ReviewChoice, RefusesDaysThatEndBeforeTheyBeginAndShowsNoEmptyLog) {
    add("2026-10-03 09:00");
    ReviewQuestion question;
    question.by = ReviewBy::mark;
    question.from = units::dayFrom("2026-10-04");
    question.to = units::dayFrom("2026-10-02");
    base::Progress silent;
    const auto refused = water::reviewLog(water_, {}, question, silent);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().kind, base::ErrorKind::wrongUse);
    question.to = question.from;
    EXPECT_TRUE(water::reviewLog(water_, {}, question, silent));
}

TEST_F(ReviewChoice, KnowsWhereEachMarkLies) {
    add("2026-10-01 09:00", 0.0);
    add("2026-10-01 13:00", 200.0);
    add("2026-10-02 13:00", 190.0);
    const auto places = water::placesOfMarks(water_);
    ASSERT_EQ(places.size(), 2U);
    EXPECT_NEAR(water_.frame->toWater(places[0]).x_m, 0.0, 1e-6);
    EXPECT_NEAR(water_.frame->toWater(places[1]).x_m, 200.0, 1e-6);
    EXPECT_EQ(water::byMark(water_)[2].group, "mark 2");
}

TEST_F(ReviewChoice, LightIsFromTheEarliestToTheLatestOfTheDaysAsked) {
    EXPECT_FALSE(water::fishedLight(water_, {}));
    add("2026-06-21 09:00");
    add("2026-12-21 09:00");
    const auto light = water::fishedLight(water_, {}).value();
    // Sunrise and sunset of London's clock at 55.2 N 3.1 E: from memory of almanacs, to within a
    // quarter of an hour.
    EXPECT_NEAR(light.sunrise.from, 4.25, 0.25);
    EXPECT_NEAR(light.sunrise.to, 8.25, 0.25);
    EXPECT_NEAR(light.sunset.from, 15.4, 0.25);
    EXPECT_NEAR(light.sunset.to, 21.5, 0.25);
    ReviewQuestion winter;
    winter.season = logbook::Season{std::chrono::December / 1, std::chrono::February / 29};
    const auto dark = water::fishedLight(water_, winter).value();
    EXPECT_EQ(dark.sunrise.from, dark.sunrise.to);
    EXPECT_EQ(dark.sunrise.to, light.sunrise.to);
}

} // namespace
