// SPDX-License-Identifier: GPL-3.0-or-later
// The document itself: what an edit swaps, what is in range, which ids are free, where the frame
// is laid.
#include "core/water/document/stamp.h"
#include "core/water/document/swap_parts.h"

#include "tests/support/full_water.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <string>

namespace {

using namespace water;
using units::Area;
using units::Depth;
using units::Length;

/// A water in which just the members of this part are those of the whole one, written out by hand.
Water onlyPart(Part part) {
    const Water full = support::fullWater();
    Water w;
    switch (part) {
    case Part::facts:
        w.name = full.name;
        w.clock = full.clock;
        w.chartLevel = full.chartLevel;
        w.frame = full.frame;
        w.places = full.places;
        w.settings = full.settings;
        break;
    case Part::shoreline:
        w.shoreline = full.shoreline;
        break;
    case Part::days:
        w.days = full.days;
        break;
    case Part::leadLine:
        w.leadLine = full.leadLine;
        break;
    case Part::weedNotes:
        w.weedNotes = full.weedNotes;
        break;
    case Part::houseRules:
        w.houseRules = full.houseRules;
        break;
    case Part::sections:
        w.sectionNames = full.sectionNames;
        w.sectionChanges = full.sectionChanges;
        break;
    case Part::numbering:
        w.numbering = full.numbering;
        break;
    case Part::plan:
        w.plan = full.plan;
        w.pinnedMarks = full.pinnedMarks;
        w.banned = full.banned;
        w.beliefProfiles = full.beliefProfiles;
        w.dayByHand = full.dayByHand;
        break;
    case Part::sheets:
        w.sheets = full.sheets;
        break;
    case Part::log:
        w.log = full.log;
        break;
    }
    return w;
}

TEST(Parts, ACopyHoldsAllMembersOfThePartAndNoOther) {
    for (const Part part : allParts) {
        EXPECT_NE(onlyPart(part), Water());
        EXPECT_EQ(copyOfParts(support::fullWater(), std::array{part}), onlyPart(part))
            << "part " << static_cast<int>(part);
    }
    EXPECT_EQ(copyOfParts(support::fullWater(), {}), Water());
    EXPECT_EQ(copyOfParts(support::fullWater(), allParts), support::fullWater());
}

TEST(Parts, SwappingMovesAllMembersOfThePartBothWays) {
    for (const Part part : allParts) {
        Water a = support::fullWater();
        Water b;
        swapParts(a, b, std::array{part});
        EXPECT_EQ(b, onlyPart(part)) << "part " << static_cast<int>(part);
        Water back = a;
        swapParts(a, b, std::array{part});
        EXPECT_EQ(a, support::fullWater());
        EXPECT_EQ(b, Water());
        // What is left without the part is the whole once the part is put in.
        Water put = onlyPart(part);
        swapParts(back, put, std::array{part});
        EXPECT_EQ(back, support::fullWater());
    }
}

TEST(Parts, AllPartsTogetherAreTheWholeWater) {
    Water a = support::fullWater();
    Water b;
    swapParts(a, b, allParts);
    EXPECT_EQ(a, Water());
    EXPECT_EQ(b, support::fullWater());
}

TEST(Parts, ThoseInWhichTwoWatersDifferAreNamed) {
    EXPECT_TRUE(differingParts(support::fullWater(), support::fullWater()).empty());
    for (const Part part : allParts) {
        Water without = support::fullWater();
        Water none;
        swapParts(without, none, std::array{part});
        EXPECT_EQ(differingParts(support::fullWater(), without), std::vector{part})
            << "part " << static_cast<int>(part);
        EXPECT_EQ(differingParts(onlyPart(part), Water()), std::vector{part});
    }
    EXPECT_EQ(differingParts(support::fullWater(), Water()),
              std::vector(allParts.begin(), allParts.end()));
}

TEST(Parts, OneMemberThatDiffersIsEnough) {
    Water named = support::fullWater();
    named.name += " again";
    EXPECT_EQ(differingParts(support::fullWater(), named), std::vector{Part::facts});
    Water section = support::fullWater();
    section.sectionNames.front().name += " again";
    EXPECT_EQ(differingParts(support::fullWater(), section), std::vector{Part::sections});
    Water later = support::fullWater();
    later.plan.count += 1;
    EXPECT_EQ(differingParts(support::fullWater(), later), std::vector{Part::plan});
}

/// What a step of undo costs: of a copy the long lists are those of the water, item for item.
TEST(Parts, ACopySharesTheLongLists) {
    const Water water = support::fullWater();
    const Water copy = copyOfParts(water, allParts);
    EXPECT_EQ(copy.shoreline.data(), water.shoreline.data());
    EXPECT_EQ(copy.leadLine.data(), water.leadLine.data());
    EXPECT_EQ(copy.weedNotes.data(), water.weedNotes.data());
    EXPECT_TRUE(copy.log.isSameAs(water.log));
    for (std::size_t d = 0; d < water.days.size(); ++d) {
        EXPECT_EQ(copy.days[d].soundings.data(), water.days[d].soundings.data());
        EXPECT_EQ(copy.days[d].passStarts.data(), water.days[d].passStarts.data());
    }
}

TEST(Water, AFreshIdIsOneAboveTheHighestOfEveryKind) {
    const std::array<void (*)(Water&), 5> raise{
        [](Water& w) { w.days[1].id = soundings::SurveyDayId(900); },
        [](Water& w) { w.leadLine.edit()[0].id = soundings::LeadLineId(900); },
        [](Water& w) { w.weedNotes.edit()[1].id = weed::WeedNoteId(900); },
        [](Water& w) { w.log.edit(0).id = logbook::StayId(900); },
        [](Water& w) { w.log.edit(0).runs[0].id = logbook::FishId(900); }};
    EXPECT_EQ(freshId(support::fullWater()), 33) << "the fish has 32";
    for (const auto change : raise) {
        Water w = support::fullWater();
        change(w);
        EXPECT_EQ(freshId(w), 901);
    }
}

TEST(Water, TheFrameIsLaidRoundTheShoreAndElseRoundTheSoundings) {
    Water w = support::fullWater();
    w.frame.reset();
    for (geo::LonLat& corner : w.shoreline.edit()[0].outer) {
        corner.lon_deg += 1.0; // the soundings lie elsewhere
    }
    ASSERT_TRUE(layFrame(w));
    EXPECT_EQ(w.frame->centre(), (geo::LonLat{4.1, 55.2}));
    w.shoreline.edit().push_back(
        {{{4.2, 55.3}, {4.3, 55.3}, {4.3, 55.4}}, {}}); // all pieces count: 4.096 to 4.3
    w.frame.reset();
    ASSERT_TRUE(layFrame(w));
    EXPECT_NEAR(w.frame->centre().lon_deg, 4.2, 1e-9);
    EXPECT_NEAR(w.frame->centre().lat_deg, 55.3, 1e-9);
    w.shoreline.edit().clear();
    w.frame.reset();
    w.days[1].soundings.edit().push_back(
        {{3.1438, 55.2}, Depth::metres(1.0), {}}); // all days count
    ASSERT_TRUE(layFrame(w));
    EXPECT_NEAR(w.frame->centre().lon_deg, 3.12, 1e-9); // half way from 3.0962
    w.days.clear();
    w.frame.reset();
    EXPECT_FALSE(layFrame(w));
    EXPECT_FALSE(w.frame);
}

TEST(Water, PlansForTomorrowByItsOwnClock) {
    Water w;
    w.clock = units::Clock::inZone("Pacific/Auckland").value(); // 13 h ahead of UTC then
    w.plan.day.day = std::chrono::year(2026) / 11 / 25;
    const units::Moment noon =
        std::chrono::sys_days(std::chrono::year(2026) / 11 / 25) + std::chrono::hours(12);
    EXPECT_TRUE(planFromTomorrow(w, noon)) << "there it is the 26th";
    EXPECT_EQ(w.plan.day.day, std::chrono::year(2026) / 11 / 27);
    w.plan.day.day = std::chrono::year(2026) / 11 / 25;
    EXPECT_FALSE(planFromTomorrow(w, noon - std::chrono::hours(2)));
    EXPECT_EQ(w.plan.day.day, std::chrono::year(2026) / 11 / 25);
    w.plan.day.day = std::chrono::year(2026) / 12 / 31;
    EXPECT_TRUE(planFromTomorrow(w, noon + std::chrono::days(40)));
    EXPECT_EQ(w.plan.day.day, std::chrono::year(2027) / 1 / 6);
}

// Noll's published values of FNV-1a, 64 bit (isthe.com/chongo/tech/comp/fnv): kept drawings carry
// stamps, which have to be the same on the next machine.
TEST(Stamp, IsTheSameOnEveryMachine) {
    const auto of = [](std::string_view text) {
        return Stamp().take(std::as_bytes(std::span(text.data(), text.size()))).value();
    };
    EXPECT_EQ(of("a"), 0xaf63dc4c8601ec8cULL);
    EXPECT_EQ(of("foobar"), 0x85944171f73967e8ULL);
    EXPECT_EQ(of(""), 0xcbf29ce484222325ULL);
}

TEST(Stamp, GoesOnFromAnotherAndKeepsWhatItIsGiven) {
    EXPECT_EQ(Stamp(77).value(), 77U);
    EXPECT_TRUE(Stamp(77).isMade());
    EXPECT_NE(Stamp().take(Stamp(77)), Stamp().take(Stamp(78)));
    EXPECT_NE(Stamp().take(1).take(2), Stamp().take(2).take(1));
    EXPECT_NE(Stamp().take(true), Stamp().take(false));
    EXPECT_NE(Stamp().take(std::string_view()), Stamp());
}

struct SettingRow {
    const char* sentence;
    void (*set)(Settings&, double);
    double low;
    double high;
    double step;
};

// A range holds at its ends, and not just beyond them.
TEST(Settings, HoldTheirRangesToTheEnds) {
    const std::array rows{
        SettingRow{"the cell must be between 0.5 and 100 m",
                   [](Settings& s, double v) { s.cell = Length::metres(v); }, 0.5, 100.0, 0.001},
        SettingRow{"the wanted size of a section must be between 0.1 and 1000 ha",
                   [](Settings& s, double v) { s.sectionArea = Area::squareMetres(v); }, 1000.0,
                   1.0e7, 1.0},
        SettingRow{"the Secchi depth must be between 0.1 and 40 m",
                   [](Settings& s, double v) { s.secchi = Depth::metres(v); }, 0.1, 40.0, 0.001},
        SettingRow{"the share of weed left must be between 0 and 1",
                   [](Settings& s, double v) { s.weedLeft = v; }, 0.0, 1.0, 0.001},
        SettingRow{"the fine scale of structure must be between 3 and 50 m",
                   [](Settings& s, double v) {
                       s.structure.fineScale = Length::metres(v);
                       s.structure.broadScale = Length::metres(100.0);
                   },
                   3.0, 50.0, 0.001},
        SettingRow{"the broad scale of structure must be between 20 and 500 m, and more than the "
                   "fine scale",
                   [](Settings& s, double v) { s.structure.broadScale = Length::metres(v); }, 20.0,
                   500.0, 0.001},
        SettingRow{"the slope of a drop-off must be between 1 and 200 percent",
                   [](Settings& s, double v) { s.structure.dropOffFrom_percent = v; }, 1.0, 200.0,
                   0.001},
        SettingRow{"the rise of high ground must be between 0.05 and 20 m",
                   [](Settings& s, double v) { s.structure.highGround = Length::metres(v); }, 0.05,
                   20.0, 0.001},
        SettingRow{"the least size of a zone must be between 0 and 10 ha",
                   [](Settings& s, double v) { s.structure.leastArea = Area::squareMetres(v); },
                   0.0, 1.0e5, 1.0}};
    for (const SettingRow& row : rows) {
        const auto problems = [&row](double value) {
            Settings settings;
            row.set(settings, value);
            return problemsIn(settings);
        };
        const std::vector<std::string> wanted{row.sentence};
        EXPECT_TRUE(problems(row.low).empty()) << row.sentence;
        EXPECT_TRUE(problems(row.high).empty()) << row.sentence;
        EXPECT_EQ(problems(row.low - row.step), wanted);
        EXPECT_EQ(problems(row.high + row.step), wanted);
        ASSERT_FALSE(problems(NAN).empty());
        EXPECT_EQ(problems(NAN).front(), row.sentence);
    }
}

TEST(Settings, TheBroadScaleIsMoreThanTheFineOneWhicheverIsChosen) {
    Settings settings;
    settings.structure.fineScale = Length::metres(30.0);
    settings.structure.broadScale = Length::metres(30.0);
    EXPECT_EQ(problemsIn(settings).size(), 1U);
    settings.structure.broadScale = Length::metres(30.1);
    EXPECT_TRUE(problemsIn(settings).empty());
}

TEST(Settings, AreAsTheyAreSaidToComeWhereNothingIsChosen) {
    const Settings settings;
    EXPECT_FALSE(settings.sectionArea) << "chosen from the fishable water";
    EXPECT_EQ(settings.weedLeft, 1.0);
    EXPECT_FALSE(settings.cell || settings.secchi);
    EXPECT_EQ(settings.structure, StructureChoice());
    EXPECT_TRUE(problemsIn(settings).empty());
}

} // namespace
