// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/sayings.h"

#include <gtest/gtest.h>

namespace {

using water::ReviewBy;

std::string text(const rates::Saying& saying, ReviewBy by = ReviewBy::section) {
    return wording::said(saying, by).toStdString();
}

const rates::Rate rate{2.1, 1.2, 3.4};

TEST(Sayings, EachHasItsFiguresAndHowSureTheyAre) {
    EXPECT_EQ(text(rates::NothingCounted{}), "Nothing that counts was logged in this time.");
    EXPECT_EQ(text(rates::NoFishYet{20.2, 1.8}),
              "No fish in 20 rod-hours: up to 1.8 per 10 rod-hours may still be there.");
    EXPECT_EQ(text(rates::MostExpected{"Heron Bay", rate, 1.6, true}),
              "Most is to be expected at Heron Bay: 2.1 fish per 10 rod-hours (1.2 to 3.4), 1.6 "
              "times the whole water's. That is more than chance would make it.");
    EXPECT_EQ(text(rates::MostExpected{"October", rate, 1.6, false}, ReviewBy::month),
              "Most is to be expected in October: 2.1 fish per 10 rod-hours (1.2 to 3.4), 1.6 "
              "times the whole water's. Chance alone could make such a difference.");
    EXPECT_EQ(text(rates::TooLittleTried{{}, {"a", "b", "c", "d", "e"}, 9, 0.12}),
              "Too little was tried to tell of 5 of 9, with 12 % of the effort: a, b, c, d and 1 "
              "more.");
    EXPECT_EQ(text(rates::TooLittleTried{{"reeds", "pier"}, {}, 9, 0.0}),
              "Never fished: 2 of 9 (reeds, pier).");
    EXPECT_EQ(text(rates::TooLittleTried{{"pier"}, {"bar"}, 9, 0.03}),
              "Never fished: 1 of 9 (pier). Too little was tried to tell of 1 of 9, with 3 % of "
              "the effort: bar.");
    EXPECT_EQ(text(rates::HoursSay{{6.5, 9.0}, rate, 12}),
              "The hours from 06:30 to 09:00 were best, at their height 2.1 fish per 10 rod-hours "
              "(1.2 to 3.4), by 12 trips.");
    EXPECT_EQ(text(rates::HoursSay{{0.0, 0.0}, rate, 1}),
              "No hour of the day stands out, by 1 trip.");
    EXPECT_EQ(
        text(rates::TryNext{"Heron Bay", rate, 0.0, 8.4}),
        "Worth trying next at Heron Bay (not fished yet): 2.1 fish per 10 rod-hours (1.2 to "
        "3.4) is what it may bring; if it is no better than the rest, 8 rod-hours there bring "
        "one fish.");
    EXPECT_EQ(text(rates::WholeRate{rate, 41.2}),
              "Over all: 2.1 fish per 10 rod-hours (1.2 to 3.4), in 41 rod-hours.");
    EXPECT_EQ(text(rates::FewDays{3}), "All of it was 3 days: one good day makes a rate.");
    EXPECT_EQ(text(rates::EffortUnknown{1}),
              "1 stay counts in no rate: its rods or its length are not known.");
}

TEST(Sayings, NameARowAsItsKindAsksFor) {
    const auto row = [](const char* name, ReviewBy by) {
        return wording::rowInSentence(name, by).toStdString();
    };
    EXPECT_EQ(row("smelt", ReviewBy::bait), "with smelt");
    EXPECT_EQ(row("SW", ReviewBy::wind), "with wind from SW");
    EXPECT_EQ(row("calm", ReviewBy::wind), "in a calm");
    EXPECT_EQ(row("4 to 6 m", ReviewBy::band), "in 4 to 6 m");
    EXPECT_EQ(row("mark 3", ReviewBy::mark), "at mark 3");
    EXPECT_EQ(row("9 to 12 °C", ReviewBy::temperature), "in water of 9 to 12 °C");
    EXPECT_EQ(row("1 to 3 days before", ReviewBy::daysSince),
              "at places last fished 1 to 3 days before");
}

TEST(Comparisons, SayTheRatioAndHowSureItIs) {
    const auto said = [](const rates::RowComparison& c) { return wording::said(c).toStdString(); };
    EXPECT_EQ(said({"bay", "bar", 2.5, 1.3, 4.8, 0.004}),
              "Bay brought 2.5 times as much for its effort as bar (1.3 to 4.8). That is more than "
              "chance would make it (1 in 100).");
    EXPECT_EQ(said({"bay", "bar", 2.5, 0.4, std::nullopt, 0.31}),
              "Bay brought 2.5 times as much for its effort as bar (0.4 or more). Chance "
              "alone makes as large a difference 31 times in 100.");
    EXPECT_EQ(said({"bay", "bar", std::nullopt, 1.2, std::nullopt, 0.03}),
              "Bar brought no fish; bay brought at least 1.2 times as much for its effort, if "
              "anything. That is more than chance would make it (3 in 100).");
}

} // namespace
