// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/day_cautions.h"

#include <algorithm>
#include <functional>

#include <gtest/gtest.h>

namespace {

using units::Speed;
using units::Temperature;
using water::PlannedDay;
using water::Water;

using Cautions = std::vector<water::DayCaution>;
using Rules = std::vector<water::DayRule>;
using Said = std::variant<water::DayCaution, water::DayRule, water::FishCare>;
using water::ColdWater;
using water::FallingIn;
using water::FishCare;

/// A day on which nothing is to be said but what is said every day.
struct Day {
    Day() {
        planned.plan.day.wind.speed = Speed::metresPerSecond(3.0);
        planned.plan.day.waterTemperature = Temperature::celsius(17.0);
        planned.plan.day.day = std::chrono::year(2026) / 10 / 14;
        planned.plan.tackle.scope = 6.0;
    }
    [[nodiscard]] Cautions cautions() const { return dayCautions(planned); }
    [[nodiscard]] Rules rules() const { return rulesOfTheDay(water, planned); }
    [[nodiscard]] std::vector<Said> everything() const {
        std::vector<Said> all;
        const auto take = [&all](const auto& said) {
            all.insert(all.end(), said.begin(), said.end());
        };
        take(cautions());
        take(rules());
        take(fishCare(planned));
        return all;
    }
    Water water;
    PlannedDay planned;
};

TEST(DayCautions, SayWhatHoldsOnEveryDay) {
    EXPECT_EQ(Day().cautions(), (Cautions{FallingIn{}, water::Thunder{}, water::WindOnTheBeam{},
                                          water::Ropes{}, water::TellSomebody{}}));
    EXPECT_EQ(Day().rules(), Rules{water::LocalRulesFirst{}});
    EXPECT_EQ(fishCare(Day().planned), std::vector{FishCare::handling});
}

struct Row {
    const char* name;
    Said said;
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

std::function<void(Day&)> wind(double knots) {
    return [knots](Day& d) { setWind(d, knots); };
}

std::function<void(Day&)> waterOf(double celsius) {
    return [celsius](Day& d) { setWater(d, celsius); };
}

Said caution(water::DayCaution said) {
    return said;
}

const std::vector<Row>& rows() {
    const Said cold = caution(FallingIn{ColdWater{true}, false});
    const Said ice = caution(FallingIn{ColdWater{true}, true});
    static const std::vector<Row> all{
        {"force 5", caution(water::WhiteHorses{5}), wind(16.51), wind(16.49)},
        {"still force 5", caution(water::WhiteHorses{5}), wind(21.49), wind(21.51)},
        {"force 6", caution(water::StayAshore{6}), wind(21.51), wind(21.49)},
        {"force 8", caution(water::StayAshore{8}), wind(34.0), wind(33.0)},
        {"cold", cold, waterOf(14.99), waterOf(15.0)},
        {"cold without ice", cold, waterOf(4.0), waterOf(3.99)},
        {"ice", ice, waterOf(3.99), waterOf(4.0)},
        {"nobody measured it", caution(FallingIn{ColdWater{false}, true}),
         [](Day& d) { d.planned.plan.day.waterTemperature.reset(); }, waterOf(15.0)},
        {"warm", FishCare::warmWater, waterOf(20.01), waterOf(20.0)},
        {"season", water::DayRule(water::OutsideSeason{}), [](Day& d) { setSeason(d, 13); },
         [](Day& d) { setSeason(d, 14); }},
        {"rods", water::DayRule(water::RodLimit{3}),
         [](Day& d) { d.water.houseRules.rodLimit = 3; },
         [](Day& d) { d.water.houseRules.rodLimit.reset(); }},
        {"scope", caution(water::Ropes{5.9}), [](Day& d) { d.planned.plan.tackle.scope = 5.9; },
         [](Day& d) { d.planned.plan.tackle.scope = 6.0; }},
    };
    return all;
}

TEST(DayCautions, BeginEachAtItsThresholdAndNotJustBelow) {
    for (const Row& row : rows()) {
        Day at;
        row.at(at);
        const auto said = at.everything();
        EXPECT_EQ(std::ranges::count(said, row.said), 1) << row.name;
        Day justShort;
        row.justShort(justShort);
        const auto unsaid = justShort.everything();
        EXPECT_EQ(std::ranges::count(unsaid, row.said), 0) << row.name;
    }
}

TEST(DayCautions, SayAshoreByItselfFromForceSixOn) {
    const auto dayOf = [](double knots) {
        marks::ExpectedDay day;
        day.wind.speed = Speed::knots(knots);
        return day;
    };
    EXPECT_EQ(water::ashoreCaution(dayOf(21.49)), std::nullopt);
    EXPECT_EQ(water::ashoreCaution(dayOf(21.51)), water::StayAshore{6});
    EXPECT_EQ(water::windCaution(dayOf(16.49)), std::nullopt);
}

TEST(DayCautions, OfAWindThatNobodySaidSendToTheForecastAndNameNoForce) {
    Day day;
    day.planned.plan.day.wind = {};
    EXPECT_EQ(water::ashoreCaution(day.planned.plan.day), std::nullopt);
    EXPECT_EQ(day.cautions().front(), water::DayCaution(water::WindNotSaid{}));
    day.planned.plan.day.wind.from = units::Bearing::degrees(240.0);
    EXPECT_EQ(day.cautions().front(), water::DayCaution(water::WindNotSaid{}))
        << "a direction says nothing of the force";
    setWind(day, 0.0);
    EXPECT_EQ(day.cautions().front(), water::DayCaution(FallingIn{})) << "a calm is said";
}

TEST(DayCautions, RulesNameEveryClosedWaterAndEveryNoteOfTheHouse) {
    Day day;
    setSeason(day, 2);
    day.water.houseRules.rodLimit = 2;
    day.water.houseRules.closed = {{"Reserve", {}}, {"Dam", {}}};
    day.water.houseRules.notes = {"Nets are provided.", "No engines within 50 m."};
    EXPECT_EQ(day.rules(),
              (Rules{water::OutsideSeason{}, water::RodLimit{2}, water::ClosedPart{"Reserve"},
                     water::ClosedPart{"Dam"}, water::HouseNote{"Nets are provided."},
                     water::HouseNote{"No engines within 50 m."}, water::LocalRulesFirst{}}));
}

TEST(DayCautions, AreAtMostSevenTheGravestFirst) {
    Day day;
    setWind(day, 30.0);
    setWater(day, 3.0);
    day.planned.day.dark = {true, marks::DarkHours::Home::inTheDark};
    day.planned.plan.tackle.scope = 3.0;
    const auto said = day.cautions();
    ASSERT_EQ(said.size(), water::mostCautions);
    EXPECT_EQ(said, (Cautions{water::StayAshore{7}, FallingIn{ColdWater{true}, true},
                              water::Thunder{}, day.planned.day.dark, water::WindOnTheBeam{},
                              water::Ropes{3.0}, water::TellSomebody{}}));
}

} // namespace
