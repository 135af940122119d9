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
}

} // namespace
