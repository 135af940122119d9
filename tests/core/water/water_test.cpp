// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/document/stamp.h"
#include "core/water/document/swap_parts.h"
#include "core/water/document/water.h"
#include "core/water/steps/check_plausible.h"
#include "core/water/steps/derive.h"
#include "core/water/steps/propose_trip.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace {

using namespace water;

/// A track over a bowl round 3.1 E 55.2 N: depth falls with the distance from its middle.
soundings::SurveyDay bowlDay(std::int64_t id, double unitsPerMetre = 1.0) {
    soundings::SurveyDay day;
    day.id = soundings::SurveyDayId(id);
    day.name = "day " + std::to_string(id);
    day.passStarts = {0};
    for (int i = 0; i < 400; ++i) {
        const double x = -1.0 + 2.0 * (i % 20) / 19.0;
        const int row = i / 20;
        const double y = -1.0 + 2.0 * row / 19.0;
        const double depth_m = 8.0 - 4.0 * std::hypot(x, y);
        day.soundings.edit().push_back({{3.1 + 0.002 * x, 55.2 + 0.001 * y},
                                        units::Depth::metres(depth_m * unitsPerMetre),
                                        std::nullopt});
    }
    return day;
}

Water bowl() {
    Water water;
    water.name = "Bowl";
    water.shoreline = {{{{3.096, 55.198}, {3.104, 55.198}, {3.104, 55.202}, {3.096, 55.202}}, {}}};
    water.days = {bowlDay(1)};
    EXPECT_TRUE(layFrame(water));
    return water;
}

TEST(Water, FreshIdsAreAboveAllThatAreGiven) {
    Water water = bowl();
    EXPECT_EQ(freshId(Water()), 1);
    logbook::Stay stay;
    stay.id = logbook::StayId(7);
    stay.runs.push_back({});
    stay.runs.back().id = logbook::FishId(41);
    water.log.push_back(stay);
    EXPECT_EQ(freshId(water), 42);
}

TEST(Water, FrameIsLaidOnceAndStays) {
    Water water = bowl();
    const auto first = water.frame;
    water.shoreline.edit().front().outer.front().lon_deg -= 0.5;
    EXPECT_TRUE(layFrame(water));
    EXPECT_EQ(water.frame, first);
    Water empty;
    EXPECT_FALSE(layFrame(empty));
}

TEST(Water, PlansForTomorrowOnceThePlannedDayIsOver) {
    Water water = bowl();
    const units::Moment now =
        std::chrono::sys_days(std::chrono::year(2026) / 11 / 25) + std::chrono::hours(22);
    water.plan.day.day = std::chrono::year(2026) / 11 / 24;
    water.plan.day.wind = {units::Bearing::degrees(225.0), units::Speed::metresPerSecond(9.0)};
    water.plan.day.windLater = marks::LaterWind{std::chrono::hours(12), water.plan.day.wind};
    const marks::ExpectedDay gone = water.plan.day;
    EXPECT_TRUE(planFromTomorrow(water, now));
    EXPECT_EQ(units::isoText(water.plan.day.day), "2026-11-26");
    EXPECT_EQ(water.plan.day.wind, logbook::Wind()) << "it was forecast for another day";
    EXPECT_FALSE(water.plan.day.windLater);
    EXPECT_EQ(water.plan.day.start, gone.start) << "his habits stay";
    water.plan.day.wind = gone.wind;
    EXPECT_FALSE(planFromTomorrow(water, now)) << "a day to come stays";
    EXPECT_EQ(water.plan.day.wind, gone.wind);
    water.plan.day.day = std::chrono::year(2026) / 11 / 25;
    EXPECT_FALSE(planFromTomorrow(water, now)) << "today is not over";
}

TEST(Stamp, EqualInputsGiveEqualStampsAndOthersDoNot) {
    const auto of = [](double a, std::string_view b) { return Stamp().take(a).take(b); };
    EXPECT_EQ(of(1.5, "x"), of(1.5, "x"));
    EXPECT_NE(of(1.5, "x"), of(1.5, "y"));
    EXPECT_NE(of(1.5, "x"), of(2.5, "x"));
    // Neighbouring texts do not run into each other.
    EXPECT_NE(Stamp().take(std::string_view("ab")).take(std::string_view("c")),
              Stamp().take(std::string_view("a")).take(std::string_view("bc")));
    EXPECT_FALSE(Stamp().isMade());
}

TEST(StampOf, ChangesWithWhatTheStepDependsOnAndWithNothingElse) {
    const Water before = bowl();
    const auto touched = [&](auto change) {
        Water after = before;
        change(after);
        std::string steps;
        for (const Step step : allSteps) {
            if (stampOf(after, step) != stampOf(before, step)) {
                steps += std::string(nameOf(step)) + ' ';
            }
        }
        return steps;
    };
    EXPECT_EQ(touched([](Water& w) { w.days[0].sounder.draft = units::Depth::metres(0.3); }),
              "reduce draw bands level structure weed sections ");
    EXPECT_EQ(touched([](Water& w) { w.days[0].setAsideByHand = {3}; }),
              "reduce draw bands level structure weed sections ");
    EXPECT_EQ(touched([](Water& w) { w.settings.cell = units::Length::metres(3); }),
              "draw bands level structure weed sections ");
    EXPECT_EQ(
        touched([](Water& w) {
            w.settings.bands =
                contours::Bands::make({units::Depth::metres(3)}, units::Depth::metres(9)).value();
        }),
        "bands level structure sections ");
    EXPECT_EQ(touched([](Water& w) { w.settings.structure.dropOffFrom_percent = 20.0; }),
              "structure sections ");
    EXPECT_EQ(touched([](Water& w) { w.settings.secchi = units::Depth::metres(2); }),
              "weed sections ");
    EXPECT_EQ(touched([](Water& w) {
                  w.sectionNames.push_back({{3.1, 55.2}, "Neck"});
              }),
              "sections ");
    EXPECT_EQ(touched([](Water& w) { w.plan.day.levelChange = units::Length::metres(-0.4); }),
              "level ");
    EXPECT_EQ(touched([](Water& w) {
                  w.sectionChanges.push_back(
                      {sections::SectionChange::Kind::split, {}, {{3.1, 55.2}, {3.11, 55.2}}});
              }),
              "sections ");
    EXPECT_EQ(touched([](Water& w) { w.log.push_back({}); }), "");
    EXPECT_EQ(touched([](Water& w) { w.name = "Other"; }), "");
}

TEST(Derive, TracesTheWaterAtTodaysLevelBesideThatOfTheChart) {
    Water water = bowl();
    base::Progress silent;
    auto derived = derive(water, {}, Step::level, silent);
    ASSERT_TRUE(derived) << derived.error().sentence();
    EXPECT_EQ(derived->today, derived->form) << "at chart level they are the same";

    water.plan.day.levelChange = units::Length::metres(-1.0);
    const auto low = derive(water, *derived, Step::level, silent);
    ASSERT_TRUE(low);
    EXPECT_EQ(low->form, derived->form) << "a level changes nothing at chart level";
    ASSERT_TRUE(low->today);
    EXPECT_EQ(low->today->rise, units::Length::metres(-1.0));
    EXPECT_LT(low->today->hypsography.area, low->form->hypsography.area);
    EXPECT_FALSE(low->today->waterLeft.empty());

    water.plan.day.levelChange = units::Length::metres(-50.0);
    const auto dry = derive(water, *low, Step::level, silent);
    ASSERT_TRUE(dry);
    EXPECT_FALSE(dry->today);
    EXPECT_TRUE(dry->failures.contains(Step::level));
    EXPECT_TRUE(dry->form);
}

TEST(Derive, AShoreAloneCanBeSeenBeforeThereAreSoundings) {
    Water water = bowl();
    water.days.clear();
    base::Progress silent;
    const auto derived = derive(water, {}, Step::reduce, silent);
    ASSERT_TRUE(derived) << derived.error().sentence();
    EXPECT_TRUE(derived->failures.empty());
    ASSERT_TRUE(derived->outline);
    EXPECT_FALSE(derived->outlineIsAssumed);
}

TEST(ProposeTrip, SailsFromTheLaunchAlongEveryLineAndBackWithinTheTime) {
    Water water = bowl();
    water.settings.cell = units::Length::metres(5.0);
    // An uneven bottom, sounded in the western half only.
    water.days[0].soundings.edit().clear();
    for (int line = 0; line < 12; ++line) {
        for (int i = 0; i < 60; ++i) {
            const double lon_deg = 3.0963 + 6e-5 * i;
            const double lat_deg = 55.1982 + 3.2e-4 * line;
            water.days[0].soundings.edit().push_back(
                {{lon_deg, lat_deg},
                 units::Depth::metres(5.0 + 2.0 * std::sin(9000.0 * lon_deg) *
                                                std::cos(17000.0 * lat_deg)),
                 std::nullopt});
        }
    }
    water.plan.launch = geo::LonLat{3.0961, 55.2};
    base::Progress silent;
    const auto derived = derive(water, {}, Step::draw, silent);
    ASSERT_TRUE(derived && derived->drawn);
    const auto trip = proposeTrip(water, *derived, std::chrono::minutes(40), silent);
    ASSERT_TRUE(trip) << trip.error().sentence();
    EXPECT_LE(trip->duration, std::chrono::minutes(40));
    const geo::WaterPoint launch = water.frame->toWater(*water.plan.launch);
    EXPECT_EQ(trip->route.front(), launch);
    EXPECT_EQ(trip->route.back(), launch);
    auto at = trip->route.begin();
    for (const surface::SurveyLine& line : trip->lines) {
        // a way to another line may lead over the start of this one, too
        const std::array ends{line.start, line.end};
        at = std::search(at, trip->route.end(), ends.begin(), ends.end());
        ASSERT_NE(at, trip->route.end()) << "every line in its order";
        ++at;
    }
    EXPECT_NEAR(geo::lengthOf(trip->route).inMetres(), trip->distance.inMetres(),
                0.1 * trip->distance.inMetres() + 30.0);
}

TEST(SwapParts, GivesBackExactlyWhatWasThere) {
    const Water original = bowl();
    Water water = original;
    Water other = copyOfParts(water, std::array{Part::days, Part::facts});
    other.days.clear();
    other.name = "Changed";
    const std::array parts{Part::days, Part::facts};
    swapParts(water, other, parts);
    EXPECT_TRUE(water.days.empty());
    EXPECT_EQ(water.name, "Changed");
    EXPECT_EQ(water.shoreline, original.shoreline);
    swapParts(water, other, parts);
    EXPECT_EQ(water, original);
}

TEST(CopyOfParts, OfAllPartsIsTheWholeWater) {
    EXPECT_EQ(copyOfParts(bowl(), allParts), bowl());
}

TEST(CheckPlausible, TellsFeetTakenForMetresByTheDepthsAlreadyThere) {
    const auto feet = checkPlausible(bowl(), bowlDay(2, 1.0 / 0.3048), "b.csv");
    ASSERT_FALSE(feet);
    EXPECT_EQ(feet.error().kind, base::ErrorKind::unusableInput);
    EXPECT_EQ(feet.error().where, "b.csv");
    EXPECT_NE(feet.error().what.find("feet taken for metres"), std::string::npos);
    EXPECT_FALSE(checkPlausible(bowl(), bowlDay(2, 0.3048), "b.csv"));
    EXPECT_TRUE(checkPlausible(bowl(), bowlDay(2), "b.csv"));
    EXPECT_TRUE(checkPlausible(bowl(), bowlDay(2, 1.4), "b.csv"))
        << "a higher level is no other unit";
}

TEST(CheckPlausible, TellsDepthsThatNoStillwaterHas) {
    EXPECT_FALSE(checkPlausible(Water(), bowlDay(1, 40.0), "deep.csv"));
}

TEST(CheckPlausible, TellsSwappedCoordinatesAndAnotherWater) {
    soundings::SurveyDay swapped = bowlDay(2);
    soundings::SurveyDay elsewhere = bowlDay(2);
    for (std::size_t i = 0; i < swapped.soundings.size(); ++i) {
        geo::LonLat& place = swapped.soundings.edit()[i].place;
        std::swap(place.lon_deg, place.lat_deg);
        elsewhere.soundings.edit()[i].place.lon_deg += 5.0;
    }
    const auto first = checkPlausible(bowl(), swapped, "s.csv");
    ASSERT_FALSE(first);
    EXPECT_NE(first.error().whatToDo.find("swapped"), std::string::npos);
    const auto second = checkPlausible(bowl(), elsewhere, "e.csv");
    ASSERT_FALSE(second);
    EXPECT_NE(second.error().what.find("km from"), std::string::npos);
}

TEST(CheckShorePlausible, TellsAShoreElsewhereOnTheGlobe) {
    const std::vector<geo::LonLatPiece> far{{{{-70.0, 45.0}, {-69.99, 45.0}, {-69.99, 45.01}}, {}}};
    const auto shore = checkShorePlausible(bowl(), far, "shore.geojson");
    ASSERT_FALSE(shore);
    EXPECT_NE(shore.error().sentence().find("shore.geojson"), std::string::npos);
}

TEST(Settings, SaysWhatIsOutOfRange) {
    Settings settings;
    EXPECT_TRUE(problemsIn(settings).empty());
    settings.weedLeft = NAN;
    settings.secchi = units::Depth::metres(-1.0);
    EXPECT_EQ(problemsIn(settings).size(), 2U);
}

TEST(Settings, RefusesThresholdsOfStructureOutOfTheirRange) {
    const auto problems = [](const StructureChoice& chosen) {
        Settings settings;
        settings.structure = chosen;
        return problemsIn(settings).size();
    };
    EXPECT_EQ(problems({units::Length::metres(8), units::Length::metres(60), 14.0,
                        units::Length::metres(0.4), units::Area::hectares(0.05)}),
              0U);
    EXPECT_EQ(problems({units::Length::metres(2), {}, {}, {}, {}}), 1U);
    EXPECT_EQ(problems({units::Length::metres(40), units::Length::metres(30), {}, {}, {}}), 1U)
        << "broad must be more than fine";
    EXPECT_EQ(problems({{}, units::Length::metres(5), {}, {}, {}}), 1U);
    EXPECT_EQ(problems({{}, {}, NAN, units::Length::metres(30), units::Area::hectares(11)}), 3U);
}

TEST(Derive, FindsStructureByTheThresholdThatTheUserChose) {
    Water water = bowl();
    water.settings.structure.dropOffFrom_percent = 150.0;
    base::Progress silent;
    const auto derived = derive(water, {}, Step::structure, silent);
    ASSERT_TRUE(derived);
    ASSERT_TRUE(derived->structure && derived->structure->report);
    EXPECT_EQ(derived->structure->report->dropOffFrom_percent, 150.0);
    for (const structure::Zone& zone : derived->structure->zones) {
        EXPECT_NE(zone.kind, structure::ZoneKind::dropOff) << "nothing in the bowl is so steep";
    }
}

} // namespace
