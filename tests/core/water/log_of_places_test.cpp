// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rates/count_hour_rates.h"
#include "core/rates/count_rates.h"
#include "core/water/questions/log_groups.h"
#include "core/water/questions/review_log.h"
#include "core/water/questions/section_use.h"
#include "core/wind/fetch.h"
#include "core/wind/waves.h"
#include "tests/support/given.h"
#include "tests/support/planned_water.h"

#include <algorithm>
#include <functional>
#include <numbers>

#include <gtest/gtest.h>

namespace {

using geo::WaterPoint;
using support::given;
using support::PlannedWater;
using water::ReviewBy;

logbook::Stay stayAt(const PlannedWater& made, WaterPoint place, unsigned month, double hour) {
    logbook::Stay stay;
    stay.start = made.water.clock.at(std::chrono::year(2025) / std::chrono::month(month) / 5,
                                     std::chrono::minutes(std::lround(60.0 * hour)));
    stay.end = stay.start + std::chrono::hours(2);
    stay.place = made.onEarth(place);
    stay.rods = 3;
    return stay;
}

void land(logbook::Stay& stay, const std::string& species, double kg, double afterHours) {
    logbook::Fish fish;
    fish.time = stay.start + std::chrono::minutes(std::lround(60.0 * afterHours));
    fish.species = species;
    fish.weight = units::Weight::kilograms(kg);
    stay.runs.push_back(fish);
}

/// Four stays: on the plateau in the west, in weed in the east, on plain ground in the west, and on
/// land.
PlannedWater logged() {
    PlannedWater made;
    logbook::Log log{stayAt(made, {-200, 0}, 2, 10.0), stayAt(made, {120, 100}, 7, 14.0),
                     stayAt(made, {-50, 20}, 11, 12.0), stayAt(made, {900, 0}, 12, 12.0)};
    log[0].bait = "Smelt";
    log[0].conditions.windFrom = units::Bearing::degrees(92.0);
    log[1].bait = "Perch";
    log[1].conditions.windFrom = units::Bearing::degrees(182.0);
    land(log[0], "pike", 6.0, 0.5);
    land(log[0], "pike", 3.0, 1.5);
    land(log[1], "perch", 1.0, 1.0);
    logbook::Fish lost;
    lost.landed = false;
    lost.time = log[2].start;
    log[2].runs.push_back(lost);
    made.water.log = std::move(log);
    return made;
}

rates::RateTable reviewed(const PlannedWater& made, const water::ReviewQuestion& question) {
    base::Progress quiet;
    return water::reviewLog(made.water, made.derived, question, quiet).value();
}

std::vector<std::string> rowsOf(const rates::RateTable& table) {
    std::vector<std::string> names;
    for (const rates::RateRow& row : table.rows) {
        names.push_back(row.name + " " + std::to_string(row.stays) + " " +
                        std::to_string(row.fish));
    }
    return names;
}

TEST(ReviewLog, SortsByWhatIsAskedInTheOrderOfItsKind) {
    struct Row {
        ReviewBy by;
        std::vector<std::string> rows;
    };
    // Two-metre bands at chart level: 1.6 m on the plateau, 5.7 in the weed, 3.5 on plain ground.
    for (const Row& row :
         {Row{ReviewBy::section, {"West 2 2", "East 1 1", "elsewhere 1 0"}},
          Row{ReviewBy::zone, {"elsewhere 1 0", "plain bottom 1 0", "plateau 1 2", "weed bed 1 1"}},
          Row{ReviewBy::band, {"0 to 2 m 1 2", "2 to 4 m 1 0", "over 4 m 1 1", "elsewhere 1 0"}},
          Row{ReviewBy::hour, {"10-12 1 2", "12-14 2 0", "14-16 1 1"}},
          Row{ReviewBy::bait, {"not noted 2 0", "perch 1 1", "smelt 1 2"}},
          Row{ReviewBy::wind, {"E 1 2", "S 1 1", "not noted 2 0"}},
          Row{ReviewBy::month, {"February 1 2", "July 1 1", "November 1 0", "December 1 0"}},
          Row{ReviewBy::mark, {"mark 1 1 2", "mark 2 1 1", "mark 3 1 0", "mark 4 1 0"}}}) {
        water::ReviewQuestion question;
        question.by = row.by;
        EXPECT_EQ(rowsOf(reviewed(logged(), question)), row.rows) << water::nameOf(row.by);
    }
}

TEST(ReviewLog, ListsSectionsAndBandsThatNobodyTried) {
    PlannedWater made = logged();
    made.water.log = {made.water.log[0]};
    water::ReviewQuestion question;
    EXPECT_EQ(rowsOf(reviewed(made, question)), (std::vector<std::string>{"West 1 2", "East 0 0"}));
    question.by = ReviewBy::band;
    EXPECT_EQ(rowsOf(reviewed(made, question)),
              (std::vector<std::string>{"0 to 2 m 1 2", "2 to 4 m 0 0", "over 4 m 0 0"}));
    question.by = ReviewBy::wind;
    EXPECT_EQ(reviewed(made, question).rows.size(), 1U);
}

TEST(ReviewLog, AsksForSpeciesWeightAndDays) {
    const auto found = [](auto change) {
        water::ReviewQuestion question;
        change(question);
        const rates::RateRow all = reviewed(logged(), question).overall;
        return std::pair(all.stays, all.fish);
    };
    using Q = water::ReviewQuestion;
    using std::pair;
    const auto day = [](int month, int of) { return std::chrono::year(2025) / month / of; };
    EXPECT_EQ(found([](Q&) {}), pair(4, 3));
    EXPECT_EQ(found([](Q& q) { q.species = "pike"; }), pair(4, 2));
    EXPECT_EQ(found([](Q& q) { q.leastWeight = units::Weight::kilograms(3.0); }), pair(4, 2));
    EXPECT_EQ(found([](Q& q) { q.leastWeight = units::Weight::kilograms(3.1); }), pair(4, 1));
    EXPECT_EQ(found([&](Q& q) { q.from = day(7, 5); }), pair(3, 1));
    EXPECT_EQ(found([&](Q& q) { q.from = day(7, 6); }), pair(2, 0));
    EXPECT_EQ(found([&](Q& q) { q.to = day(7, 5); }), pair(2, 3));
    EXPECT_EQ(found([&](Q& q) { q.to = day(7, 4); }), pair(1, 2));
}

TEST(ReviewLog, CountsDaysByTheClockAtTheWater) {
    PlannedWater made;
    made.water.log = {stayAt(made, {-200, 0}, 7, 0.5)}; // still the day before by UTC
    water::ReviewQuestion question;
    question.from = std::chrono::year(2025) / 7 / 5;
    EXPECT_EQ(reviewed(made, question).overall.stays, 1);
    question.from = std::chrono::year(2025) / 7 / 6;
    EXPECT_EQ(reviewed(made, question).overall.stays, 0);
}

TEST(ReviewLog, SpeaksInItsNotesOfWhatItSortsBy) {
    for (const ReviewBy by : water::allReviewBy) {
        water::ReviewQuestion question;
        question.by = by;
        if (by == ReviewBy::temperature || by == ReviewBy::daysSince) {
            continue; // one row: nobody noted it, and each place was fished once
        }
        const auto notes = reviewed(logged(), question).notes;
        const std::string sentence = "No " + std::string(water::nameOf(by)) +
                                     " differs from the rest more than chance would make it.";
        EXPECT_EQ(std::ranges::count(notes, sentence), 1) << sentence;
    }
}

TEST(ReviewLog, NeedsTheDrawnWaterForPlacesAlone) {
    const PlannedWater made = logged();
    base::Progress quiet;
    for (const ReviewBy by : water::allReviewBy) {
        const bool isByPlace =
            by == ReviewBy::section || by == ReviewBy::zone || by == ReviewBy::band;
        water::ReviewQuestion question;
        question.by = by;
        for (const auto& lose : std::vector<std::function<void(water::Derived&)>>{
                 [](water::Derived& d) { d.drawn.reset(); },
                 [](water::Derived& d) { d.structure.reset(); },
                 [](water::Derived& d) { d.weed.reset(); },
                 [](water::Derived& d) { d.sections.reset(); }}) {
            water::Derived derived = made.derived;
            lose(derived);
            const auto table = water::reviewLog(made.water, derived, question, quiet);
            EXPECT_EQ(table.has_value(), !isByPlace) << water::nameOf(by);
            EXPECT_TRUE(table || table.error().kind == base::ErrorKind::wrongUse);
        }
    }
}

TEST(ReviewLog, NamesItsWaysOfSorting) {
    std::string names;
    for (const ReviewBy by : water::allReviewBy) {
        names += std::string(water::nameOf(by)) + " ";
        EXPECT_EQ(water::reviewByNamed(water::nameOf(by)), by);
    }
    EXPECT_EQ(names, "section zone band hour bait wind month mark temperature days_since ");
    EXPECT_EQ(water::reviewByNamed("moon"), std::nullopt);
}

TEST(ReviewHours, AreThoseOfTheStaysWithinTheDaysAskedForBothIncluded) {
    const PlannedWater made = logged();
    base::Progress quiet;
    const auto sameAs = [&](const water::ReviewQuestion& question, const logbook::Log& stays,
                            const std::string& species) {
        rates::HourSettings settings;
        settings.species = species;
        const auto found = water::reviewHours(made.water, question, quiet).value();
        const auto expected =
            rates::countHourRates(stays, made.water.clock, settings, quiet).value();
        bool isSame = found.points.size() == expected.points.size();
        for (std::size_t k = 0; isSame && k < found.points.size(); ++k) {
            isSame = found.points[k].rodHours == expected.points[k].rodHours &&
                     found.points[k].rate == expected.points[k].rate;
        }
        return isSame;
    };
    const logbook::Log log = made.water.log.copied();
    water::ReviewQuestion question;
    EXPECT_TRUE(sameAs(question, log, ""));
    question.from = std::chrono::year(2025) / 7 / 5;
    question.to = std::chrono::year(2025) / 11 / 5;
    EXPECT_TRUE(sameAs(question, {log[1], log[2]}, ""));
    question.from.reset();
    question.species = "pike";
    EXPECT_TRUE(sameAs(question, {log[0], log[1], log[2]}, "pike"));
    EXPECT_FALSE(sameAs(question, {log[0], log[1], log[2]}, ""));
}

TEST(LogGroups, PutStaysWithinTwentyFiveMetresOnOneMark) {
    PlannedWater made;
    made.water.log = {stayAt(made, {0, 0}, 1, 9), stayAt(made, {24.99, 0}, 1, 9),
                      stayAt(made, {25.01, 0}, 1, 9), stayAt(made, {0, -10}, 1, 9)};
    std::vector<std::string> groups;
    for (const rates::GroupedStay& stay : water::byMark(made.water)) {
        groups.push_back(stay.group);
        EXPECT_EQ(stay.rodHours, 6.0);
    }
    EXPECT_EQ(groups, (std::vector<std::string>{"mark 1", "mark 1", "mark 2", "mark 1"}));
}

TEST(LogGroups, NameBandsByTheirDepths) {
    const auto bands = contours::Bands::make({units::Depth::metres(1.5), units::Depth::metres(4.0),
                                              units::Depth::feet(30.0)},
                                             units::Depth::metres(9.0))
                           .value();
    EXPECT_EQ(water::bandName(bands, 0), "0 to 1.5 m");
    EXPECT_EQ(water::bandName(bands, 1), "1.5 to 4 m");
    EXPECT_EQ(water::bandName(bands, 2), "4 to 9.1 m");
    EXPECT_EQ(water::bandName(bands, 3), "over 9.1 m");
}

TEST(LogGroups, CountAWaterWithoutAFrameElsewhere) {
    PlannedWater made = logged();
    made.water.frame.reset();
    for (const auto& stays :
         {water::bySection(made.water, made.derived), water::byZone(made.water, made.derived),
          water::byBand(made.water, made.derived)}) {
        ASSERT_EQ(stays.size(), 4U);
        EXPECT_EQ(stays[0].group, "elsewhere");
    }
}

std::string zoneFishedFrom(const PlannedWater& made, WaterPoint place) {
    return water::zoneGroup(made.water, made.derived, {place, made.water.plan.tackle.cast});
}

TEST(LogGroups, TakeTheKindOfStructureBeforeThatOfWeed) {
    const PlannedWater made;
    const auto at = [&](WaterPoint p) { return zoneFishedFrom(made, p); };
    EXPECT_EQ(at({-200, 0}), "plateau");
    EXPECT_EQ(at({100, 100}), "weed bed");
    EXPECT_EQ(at({0, 0}), "plain bottom");
    EXPECT_EQ(at({250, 0}), "deeper than the limit") << "7 m, where 6 are the limit";
    EXPECT_EQ(at({900, 0}), "elsewhere");
    PlannedWater both;
    structure::ZoneMap zones = *both.derived.structure;
    support::addZone(zones, both.ground, structure::ZoneKind::flat,
                     [](WaterPoint p) { return p.x_m > 0.0; });
    both.derived.structure = std::make_shared<const structure::ZoneMap>(zones);
    EXPECT_EQ(zoneFishedFrom(both, {100, 100}), "flat");
}

TEST(LogGroups, AHumpFishedFromBesideItIsThatHump) {
    PlannedWater made; // a cast is 15 m, cells are 4 m
    structure::ZoneMap zones = *made.derived.structure;
    support::addZone(zones, made.ground, structure::ZoneKind::hump,
                     [](WaterPoint p) { return std::hypot(p.x_m, p.y_m) < 10.0; });
    support::addZone(zones, made.ground, structure::ZoneKind::flat,
                     [](WaterPoint p) { return p.y_m < -60.0; });
    support::addZone(zones, made.ground, structure::ZoneKind::hump,
                     [](WaterPoint p) { return std::hypot(p.x_m - 200.0, p.y_m + 52.0) < 6.0; });
    made.derived.structure = std::make_shared<const structure::ZoneMap>(zones);
    const auto at = [&](WaterPoint p) { return zoneFishedFrom(made, p); };
    EXPECT_EQ(at({0, 0}), "hump");
    EXPECT_EQ(at({20, 0}), "hump");
    EXPECT_EQ(at({28, 0}), "plain bottom") << "beyond a cast";
    EXPECT_EQ(at({100, -55}), "plain bottom") << "flat ground beside the boat is no place";
    EXPECT_EQ(at({100, -65}), "flat");
    EXPECT_EQ(at({200, -65}), "hump") << "though the boat lies on a flat";
    made.water.plan.tackle.cast = units::Length::metres(30.0);
    EXPECT_EQ(at({35, 0}), "hump");
}

TEST(LogGroups, ASectionFishedFromBesideItIsThatSection) {
    PlannedWater made; // the sections end where it is 6 m deep today
    const auto groupAt = [&](WaterPoint p) {
        made.water.log = {stayAt(made, p, 5, 10.0)};
        return water::bySection(made.water, made.derived)[0].group;
    };
    const double edge_m = 2.5 / 0.012; // 4 + 0.012 x - 0.5 = 6
    EXPECT_EQ(groupAt({edge_m - 10.0, 0}), "East");
    EXPECT_EQ(groupAt({edge_m + 8.0, 0}), "East");
    EXPECT_EQ(groupAt({edge_m + 30.0, 0}), "deeper than the limit");
    EXPECT_EQ(groupAt({900, 0}), "elsewhere");
}

TEST(LogGroups, AStayCountsWhereItsBaitsLayOnceThatIsNoted) {
    PlannedWater made; // the ground falls to the east; the plateau is in the west
    structure::ZoneMap zones = *made.derived.structure;
    support::addZone(zones, made.ground, structure::ZoneKind::hump,
                     [](WaterPoint p) { return std::hypot(p.x_m - 60.0, p.y_m) < 10.0; });
    made.derived.structure = std::make_shared<const structure::ZoneMap>(zones);
    const auto groupsOf = [&](std::optional<WaterPoint> baits) {
        logbook::Stay stay = stayAt(made, {0, 0}, 5, 10.0);
        if (baits) {
            stay.baitPlace = made.water.frame->toEarth(*baits);
        }
        made.water.log = {stay};
        return std::vector{water::bySection(made.water, made.derived)[0].group,
                           water::byZone(made.water, made.derived)[0].group,
                           water::byBand(made.water, made.derived)[0].group};
    };
    made.water.plan.tackle.cast = units::Length::metres(55.0);
    EXPECT_EQ(groupsOf(std::nullopt)[1], "hump") << "within a cast of the boat";
    EXPECT_EQ(groupsOf(WaterPoint{0, -50})[1], "plain bottom") << "he fished the other side";
    made.water.plan.tackle.cast = units::Length::metres(15.0);
    EXPECT_EQ(groupsOf(std::nullopt)[1], "plain bottom");
    EXPECT_EQ(groupsOf(WaterPoint{60, 0})[1], "hump");
    EXPECT_EQ(groupsOf(WaterPoint{80, 0})[1], "hump") << "beside it, as well as a place is noted";
    EXPECT_EQ(groupsOf(WaterPoint{90, 0})[1], "plain bottom");
    // 4 + 0.012 x, half a metre less today: sections end at 208 m.
    EXPECT_EQ(groupsOf(WaterPoint{250, 0})[0], "deeper than the limit");
    EXPECT_EQ(groupsOf(std::nullopt)[2], "over 4 m");
    EXPECT_EQ(groupsOf(WaterPoint{-150, 0})[2], "2 to 4 m") << "the band under the baits";
}

TEST(UseOfSections, TellsFetchAndWavesAtTheMiddleOfEachInThePlansWind) {
    PlannedWater made = logged();
    sections::SectionMap map = *made.derived.sections;
    map.sections[0].middle = {-150, 10};
    map.sections[1].middle = {100, -20};
    made.derived.sections = std::make_shared<const sections::SectionMap>(map);
    const auto uses = water::useOfSections(made.water, made.derived);
    ASSERT_EQ(uses.size(), 2U);
    for (std::size_t k = 0; k < 2; ++k) {
        const auto fetch = wind::fetchAt(made.ground.outline, map.sections[k].middle,
                                         units::Bearing::degrees(120.0));
        EXPECT_EQ(uses[k].fetch, fetch.effective);
        EXPECT_EQ(uses[k].waves,
                  wind::wavesOnDeepWater(units::Speed::metresPerSecond(7.0), fetch.effective)
                      .significantHeight);
    }
    EXPECT_EQ(uses[0].stays, 2);
    EXPECT_EQ(uses[0].blanks, 1) << "a lost run is no fish";
    EXPECT_EQ(uses[0].tally, (rates::Tally{2, 12.0}));
    EXPECT_EQ(uses[1].tally, (rates::Tally{1, 6.0}));
    EXPECT_EQ(uses[1].blanks, 0);
    const double circle_m2 = std::numbers::pi * 15.0 * 15.0;
    const auto west_m2 = 16.0 * static_cast<double>(map.sections[0].cells.size());
    EXPECT_NEAR(uses[0].fishedShare * west_m2, 2.0 * circle_m2, 0.05 * circle_m2);
    for (const auto& lose : std::vector<std::function<void(PlannedWater&)>>{
             [](PlannedWater& w) { w.water.frame.reset(); },
             [](PlannedWater& w) { w.derived.sections.reset(); },
             [](PlannedWater& w) { w.derived.drawn.reset(); },
             [](PlannedWater& w) { w.derived.outline.reset(); }}) {
        PlannedWater less = made;
        lose(less);
        EXPECT_TRUE(water::useOfSections(less.water, less.derived).empty());
    }
}

} // namespace
