// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/day_cautions.h"

#include <algorithm>
#include <functional>

#include <gtest/gtest.h>

namespace {

using units::Speed;
using units::Temperature;
using water::PlannedDay;
using water::Water;

/// A day on which nothing is to be said but what is said every day.
struct Day {
    Day() {
        planned.plan.day.waterTemperature = Temperature::celsius(17.0);
        planned.plan.day.day = std::chrono::year(2026) / 10 / 14;
        planned.plan.tackle.scope = 5.0;
    }
    [[nodiscard]] std::vector<std::string> cautions() const { return dayCautions(water, planned); }
    Water water;
    PlannedDay planned;
};

const std::vector<std::string> everyDay{
    "Never lie to the stern anchor alone, and be able to let both ropes go at once: a knife "
    "within reach.",
    "Wear a lifejacket. Tell somebody ashore where you are and when you will be back.",
    "Drawn from your own soundings: not for navigation. Local rules and the fishery's staff go "
    "first."};

TEST(DayCautions, SayWhatHoldsOnEveryDay) {
    EXPECT_EQ(Day().cautions(), everyDay);
}

struct Row {
    const char* sentence;
    std::function<void(Day&)> at;        ///< Just where it begins.
    std::function<void(Day&)> justShort; ///< Just where it does not yet.
};

void setWind(Day& day, double knots) {
    day.planned.plan.day.wind.speed = Speed::knots(knots);
}

void setWater(Day& day, double celsius) {
    day.planned.plan.day.waterTemperature = Temperature::celsius(celsius);
}

void setSeason(Day& day, unsigned lastOfOctober) {
    using namespace std::chrono;
    day.water.houseRules.season =
        logbook::Season{October / 1, October / std::chrono::day(lastOfOctober)};
}

const std::vector<Row>& rows() {
    static const std::vector<Row> all{
        {"Force 5: white horses. Keep to sheltered water, pay out more rope, be ready to go in.",
         [](Day& d) { setWind(d, 16.51); }, [](Day& d) { setWind(d, 16.49); }},
        {"Force 5: white horses. Keep to sheltered water, pay out more rope, be ready to go in.",
         [](Day& d) { setWind(d, 21.49); }, [](Day& d) { setWind(d, 21.51); }},
        {"Force 6 is no weather for a small open boat: stay ashore.",
         [](Day& d) { setWind(d, 21.51); }, [](Day& d) { setWind(d, 21.49); }},
        {"Force 8 is no weather for a small open boat: stay ashore.",
         [](Day& d) { setWind(d, 34.0); }, [](Day& d) { setWind(d, 33.0); }},
        {"The water is cold (below 15 °C): the shock of falling in can kill within a minute. Wear "
         "the lifejacket, float first.",
         [](Day& d) { setWater(d, 14.99); }, [](Day& d) { setWater(d, 15.0); }},
        {"Below 15 °C water is cold: the shock of falling in can kill within a minute. Wear the "
         "lifejacket, float first.",
         [](Day& d) { d.planned.plan.day.waterTemperature.reset(); },
         [](Day& d) { setWater(d, 15.0); }},
        {"The water is 21 °C or warmer: pike do not survive being caught well. Leave them alone.",
         [](Day& d) { setWater(d, 21.0); }, [](Day& d) { setWater(d, 20.99); }},
        {"By the house rules that day lies outside the season.", [](Day& d) { setSeason(d, 13); },
         [](Day& d) { setSeason(d, 14); }},
        {"House rules: 3 rods in a boat.", [](Day& d) { d.water.houseRules.rodLimit = 3; },
         [](Day& d) { d.water.houseRules.rodLimit.reset(); }},
        {"Rope at 4.9 times the depth is for settled weather only; boating courses ask for 5 to "
         "10.",
         [](Day& d) { d.planned.plan.tackle.scope = 4.9; },
         [](Day& d) { d.planned.plan.tackle.scope = 5.0; }},
    };
    return all;
}

TEST(DayCautions, BeginEachAtItsThresholdAndNotJustBelow) {
    for (const Row& row : rows()) {
        Day at;
        row.at(at);
        const auto said = at.cautions();
        ASSERT_EQ(said.size(), everyDay.size() + 1) << row.sentence;
        EXPECT_EQ(said.front(), row.sentence) << "what holds every day comes last";
        Day justShort;
        row.justShort(justShort);
        const auto unsaid = justShort.cautions();
        EXPECT_EQ(std::ranges::find(unsaid, row.sentence), unsaid.end()) << row.sentence;
    }
}

TEST(DayCautions, NameEveryClosedWaterAndEveryNoteOfTheHouse) {
    Day day;
    day.water.houseRules.closed = {{"Reserve", {}}, {"Dam", {}}};
    day.water.houseRules.notes = {"Nets are provided.", "No engines."};
    day.planned.day.cautions = {"You come home after sunset.", "There is no time."};
    std::vector<std::string> expected{"You come home after sunset.", "There is no time.",
                                      "Closed water: Reserve.",      "Closed water: Dam.",
                                      "Nets are provided.",          "No engines."};
    expected.insert(expected.end(), everyDay.begin(), everyDay.end());
    EXPECT_EQ(day.cautions(), expected);
}

TEST(DayCautions, ComeTheGravestFirst) {
    Day day;
    setWind(day, 30.0);
    setWater(day, 5.0);
    setSeason(day, 2);
    day.planned.day.cautions = {"You come home in the dark: carry a white light."};
    day.water.houseRules.rodLimit = 2;
    day.planned.plan.tackle.scope = 3.0;
    const auto said = day.cautions();
    ASSERT_EQ(said.size(), 6U + everyDay.size());
    EXPECT_EQ(said[0], "Force 7 is no weather for a small open boat: stay ashore.");
    EXPECT_TRUE(said[1].starts_with("The water is cold"));
    EXPECT_EQ(said[2], "You come home in the dark: carry a white light.");
    EXPECT_EQ(said[3], "By the house rules that day lies outside the season.");
    EXPECT_EQ(said[4], "House rules: 2 rods in a boat.");
    EXPECT_TRUE(said[5].starts_with("Rope at 3.0 times"));
}

} // namespace
