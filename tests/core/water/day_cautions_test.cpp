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
        planned.plan.tackle.scope = 6.0;
    }
    [[nodiscard]] std::vector<std::string> cautions() const { return dayCautions(planned); }
    [[nodiscard]] std::vector<std::string> rules() const { return rulesOfTheDay(water, planned); }
    [[nodiscard]] std::vector<std::string> everything() const {
        std::vector<std::string> all = cautions();
        for (const auto& more : {rules(), fishCare(planned)}) {
            all.insert(all.end(), more.begin(), more.end());
        }
        return all;
    }
    Water water;
    PlannedDay planned;
};

const std::string lifejacket =
    "Wear the lifejacket, do not stow it. If you fall in, float on your back until your breathing "
    "settles.";
const std::string thunder =
    "At the first thunder go ashore: a boat is the highest thing on the water.";
const std::string beam = "Wind on the beam of a boat held at both ends can fill her: when it goes "
                         "round, slip the stern rope and let her swing to the "
                         "bow. Make both ropes fast so that they slip at once, a knife within "
                         "reach; never lie to the stern anchor alone.";
const std::string engine =
    "Engine in neutral before you fall back: a rope in the propeller holds the boat by the stern.";
const std::string tell = "Tell somebody ashore where you are and when you will be back.";
const std::string local = "Local rules and the fishery's staff go first.";
const std::string handling = "Fish: wet hands, a wet mat, unhooked in the water where it can be "
                             "done, and a short time in the air.";

TEST(DayCautions, SayWhatHoldsOnEveryDay) {
    EXPECT_EQ(Day().cautions(), (std::vector{lifejacket, thunder, beam, engine, tell}));
    EXPECT_EQ(Day().rules(), std::vector{local});
    EXPECT_EQ(fishCare(Day().planned), std::vector{handling});
}

struct Row {
    std::string sentence;
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
    static const std::string force5 = "Force 5: white horses. Keep to sheltered water, pay out "
                                      "more rope, and go in if it freshens.";
    static const std::string shock = ": the shock of falling in can kill within a minute. ";
    static const std::string ice = " Where there is ice, stay ashore: never break out through it.";
    static const std::vector<Row> all{
        {force5, [](Day& d) { setWind(d, 16.51); }, [](Day& d) { setWind(d, 16.49); }},
        {force5, [](Day& d) { setWind(d, 21.49); }, [](Day& d) { setWind(d, 21.51); }},
        {"Force 6 is no weather for a small open boat: stay ashore.",
         [](Day& d) { setWind(d, 21.51); }, [](Day& d) { setWind(d, 21.49); }},
        {"Force 8 is no weather for a small open boat: stay ashore.",
         [](Day& d) { setWind(d, 34.0); }, [](Day& d) { setWind(d, 33.0); }},
        {"The water is cold (below 15 °C)" + shock + lifejacket, [](Day& d) { setWater(d, 14.99); },
         [](Day& d) { setWater(d, 15.0); }},
        {"The water is cold (below 15 °C)" + shock + lifejacket, [](Day& d) { setWater(d, 4.0); },
         [](Day& d) { setWater(d, 3.99); }},
        {"The water is cold (below 15 °C)" + shock + lifejacket + ice,
         [](Day& d) { setWater(d, 3.99); }, [](Day& d) { setWater(d, 4.0); }},
        {"Water below 15 °C is cold" + shock + lifejacket + ice,
         [](Day& d) { d.planned.plan.day.waterTemperature.reset(); },
         [](Day& d) { setWater(d, 15.0); }},
        {"Above 20 °C pike often die after capture in water this warm: consider not fishing for "
         "them, or for any species that dies of "
         "it.",
         [](Day& d) { setWater(d, 20.01); }, [](Day& d) { setWater(d, 20.0); }},
        {"That day lies outside the season.", [](Day& d) { setSeason(d, 13); },
         [](Day& d) { setSeason(d, 14); }},
        {"At most 3 rods in a boat.", [](Day& d) { d.water.houseRules.rodLimit = 3; },
         [](Day& d) { d.water.houseRules.rodLimit.reset(); }},
        {engine + " Rope at 5.9 times depth and bow height is for settled weather only: courses "
                  "teach 6 to 10, and more is safer.",
         [](Day& d) { d.planned.plan.tackle.scope = 5.9; },
         [](Day& d) { d.planned.plan.tackle.scope = 6.0; }},
    };
    return all;
}

TEST(DayCautions, BeginEachAtItsThresholdAndNotJustBelow) {
    for (const Row& row : rows()) {
        Day at;
        row.at(at);
        const auto said = at.everything();
        EXPECT_EQ(std::ranges::count(said, row.sentence), 1) << row.sentence;
        Day justShort;
        row.justShort(justShort);
        const auto unsaid = justShort.everything();
        EXPECT_EQ(std::ranges::count(unsaid, row.sentence), 0) << row.sentence;
    }
}

TEST(DayCautions, RulesNameEveryClosedWaterAndEveryNoteOfTheHouse) {
    Day day;
    setSeason(day, 2);
    day.water.houseRules.rodLimit = 2;
    day.water.houseRules.closed = {{"Reserve", {}}, {"Dam", {}}};
    day.water.houseRules.notes = {"Nets are provided.", "No engines within 50 m."};
    EXPECT_EQ(day.rules(), (std::vector<std::string>{
                               "That day lies outside the season.", "At most 2 rods in a boat.",
                               "Closed water: Reserve.", "Closed water: Dam.", "Nets are provided.",
                               "No engines within 50 m.", local}));
}

TEST(DayCautions, AreAtMostSevenTheGravestFirstAndNameTheLifejacketOnce) {
    Day day;
    setWind(day, 30.0);
    setWater(day, 3.0);
    day.planned.day.cautions = {"You start before it is light.", "You come home in the dark."};
    day.planned.plan.tackle.scope = 3.0;
    const auto said = day.cautions();
    ASSERT_EQ(said.size(), water::mostCautions);
    EXPECT_EQ(said[0], "Force 7 is no weather for a small open boat: stay ashore.");
    EXPECT_TRUE(said[1].starts_with("The water is cold"));
    EXPECT_EQ(said[2], thunder);
    EXPECT_EQ(said[3], "You start before it is light. You come home in the dark.");
    EXPECT_EQ(said[4], beam);
    EXPECT_TRUE(said[5].ends_with("and more is safer."));
    EXPECT_EQ(said[6], tell);
    std::size_t lifejackets = 0;
    for (const std::string& sentence : said) {
        lifejackets += sentence.find("lifejacket") != std::string::npos ? 1 : 0;
    }
    EXPECT_EQ(lifejackets, 1U);
}

} // namespace
