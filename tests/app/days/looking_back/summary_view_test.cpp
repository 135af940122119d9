// SPDX-License-Identifier: GPL-3.0-or-later
// The log in a few sentences.
#include "app/days/looking_back/summary_view.h"

#include "tests/app/days/autumn_log.h"

#include <gtest/gtest.h>

namespace {

using namespace days::looking_back;

QStringList inShortOf(const water::Water& water, const water::ReviewQuestion& question = {}) {
    base::Progress silent;
    return inShort(water, {}, question, wording::Words(), silent).value();
}

TEST(InShort, SaysFirstWhereMostIsToBeExpectedAndThenWhatTheCountsBear) {
    water::Water water = *autumn::waterWith(autumn::log());
    water.frame = geo::WaterFrame::around(std::vector<geo::LonLat>{{3.1, 55.2}}).value();
    water.places = {{"Gannick Bar", {3.1, 55.2}}};
    const QStringList said = inShortOf(water);
    ASSERT_GE(said.size(), 2);
    EXPECT_LE(said.size(), 5);
    EXPECT_TRUE(said[0].startsWith("Over all: ")) << "one place alone is no better than others";
    EXPECT_TRUE(said[0].contains("fish per 10 rod-hours"));
    EXPECT_TRUE(said.last().contains("one good day makes a rate")) << said.last().toStdString();
}

TEST(InShort, SaysThatNothingThatCountsWasCaught) {
    const auto water = autumn::waterWith(autumn::log());
    water::ReviewQuestion question;
    question.species = "eel";
    EXPECT_TRUE(inShortOf(*water, question)[0].startsWith("No fish in "));
}

TEST(InShort, SaysWhichPartOfTheLogThatIs) {
    water::ReviewQuestion question;
    EXPECT_EQ(askedWords(question, wording::Words()), "");
    question.species = "pike";
    question.leastWeight = units::Weight::kilograms(5.0);
    question.bait = "smelt";
    question.from = units::dayFrom("2026-10-03");
    EXPECT_EQ(askedWords(question, wording::Words()),
              "Only what was asked for: pike, from 5.00 kg, with smelt, since Sat 3 Oct 2026.");
    question = {};
    question.leastWeight = units::Weight::kilograms(5.0);
    EXPECT_EQ(askedWords(question, wording::Words()), "Only what was asked for: from 5.00 kg.");
    question = {};
    question.season = logbook::Season{std::chrono::September / 1, std::chrono::November / 30};
    EXPECT_EQ(askedWords(question, wording::Words()),
              "Only what was asked for: from 09-01 to 11-30 of each year.");
    question = {};
    question.from = units::dayFrom("2026-09-30");
    question.to = units::dayFrom("2026-10-03");
    EXPECT_EQ(askedWords(question, wording::Words()),
              "Only what was asked for: since Wed 30 Sep 2026, until Sat 3 Oct 2026.");
}

TEST(InShort, HoursAreThoseOfWhatIsAsked) {
    logbook::Log log;
    for (int day = 0; day < 12; ++day) {
        const std::string date = (day < 5 ? "2025-10-" : "2026-10-") + std::to_string(11 + day);
        logbook::Stay stay = autumn::stayAt(date + " 07:00", date + " 18:00", 2, "smelt");
        stay.id = logbook::StayId(1 + day);
        stay.runs = {autumn::fishAt(date + " 08:10", "pike", 5.0)};
        log.push_back(stay);
    }
    const auto water = autumn::waterWith(log);
    EXPECT_FALSE(inShortOf(*water).filter("by 12 trips.").isEmpty());
    water::ReviewQuestion question;
    question.to = units::dayFrom("2025-12-31");
    EXPECT_FALSE(inShortOf(*water, question).filter("by 5 trips.").isEmpty());
}

} // namespace
