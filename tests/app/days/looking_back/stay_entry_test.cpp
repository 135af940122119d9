// SPDX-License-Identifier: GPL-3.0-or-later
// What is typed of a stay or a fish, read to the figure; and that nothing is made up.
#include "app/days/looking_back/stay_entry.h"

#include "tests/app/days/autumn_log.h"

#include <gtest/gtest.h>

#include <random>

namespace {

using namespace days::looking_back;
using autumn::at;
using preferences::UnitSystem;

const geo::LonLat bar{3.1, 55.2};

StayTyped typed(const char* place, const char* day, const char* from, const char* to,
                const char* rods = "", const char* bait = "") {
    return {{place, from, to, rods, bait, day}, {}};
}

const std::vector<KnownPlace> places{{"3 Gannick Bar", bar, 3}, {"Kiln Bay", {3.2, 55.3}, {}}};

std::optional<logbook::Stay> stayOf(const StayTyped& lines, const units::Clock& clock = {}) {
    water::Water water;
    water.clock = clock;
    return readStay(lines, water, places).stay;
}

TEST(StayTypedIn, IsReadInAllWaysInWhichOneNamesAPlace) {
    for (const char* place : {"3", "3 gannick bar", "3 Gannick Bar", "55.2 N 3.1 E", "55.2, 3.1"}) {
        const auto stay = stayOf(typed(place, "2026-10-03", "0910", "11:05"));
        ASSERT_TRUE(stay) << place;
        EXPECT_NEAR(stay->place.lon_deg, bar.lon_deg, 1e-9) << place;
        EXPECT_NEAR(stay->place.lat_deg, bar.lat_deg, 1e-9) << place;
    }
    EXPECT_EQ(stayOf(typed("kiln bay", "2026-10-03", "0910", "11:05"))->place, places[1].place);
    for (const char* place : {"", "4", "Gannick", "55.2"}) {
        EXPECT_FALSE(stayOf(typed(place, "2026-10-03", "0910", "11:05"))) << place;
    }
}

TEST(StayTypedIn, IsNotKnownWhereNothingIsTyped) {
    const auto stay = stayOf(typed("3", "3/10/26", "9:10", "11.05"));
    ASSERT_TRUE(stay);
    EXPECT_EQ(stay->start, at("2026-10-03 09:10"));
    EXPECT_EQ(stay->end, at("2026-10-03 11:05"));
    logbook::Stay bare;
    bare.start = stay->start;
    bare.end = stay->end;
    bare.place = bar;
    EXPECT_EQ(*stay, bare);
    const auto more = stayOf(typed("3", "3/10/26", "9:10", "11.05", " 4 ", " smelt, eel "));
    ASSERT_TRUE(more);
    EXPECT_EQ(more->rods, 4);
    EXPECT_EQ(more->bait, "smelt, eel");
}

TEST(StayTypedIn, SaysWhichLineIsWrong) {
    const auto wrong = [](const StayTyped& lines) {
        const StayRead read = readStay(lines, water::Water(), places);
        EXPECT_FALSE(read.stay);
        std::vector<int> at;
        for (int i = 0; i < stayLineCount; ++i) {
            if (!read.isRight[static_cast<std::size_t>(i)]) {
                at.push_back(i);
            }
        }
        return at;
    };
    EXPECT_EQ(wrong(typed("x", "2026-10-03", "0910", "1105")), std::vector<int>{placeLine});
    EXPECT_EQ(wrong(typed("3", "2026-10-03", "late", "1105")), std::vector<int>{fromLine});
    EXPECT_EQ(wrong(typed("3", "2026-10-03", "0910", "")), std::vector<int>{toLine});
    for (const char* rods : {"0", "9", "two", "2.5"}) {
        EXPECT_EQ(wrong(typed("3", "2026-10-03", "0910", "1105", rods)),
                  std::vector<int>{rodsLine});
    }
    EXPECT_EQ(wrong(typed("3", "2026-10-03", "0910", "2026-10-02 1105")), std::vector<int>{toLine})
        << "a day that is said is meant";
    EXPECT_EQ(wrong(typed("3", "2026-10-03", "0910", "2026-10-05 1105")), std::vector<int>{toLine});
}

TEST(StayTypedIn, LastsPastMidnightByTheWatersClock) {
    const auto london = units::Clock::inZone("Europe/London").value();
    const auto moment = [&london](const char* text) { return units::momentFrom(text, london); };
    const auto night = stayOf(typed("3", "2026-10-24", "22:10", "03:00"), london);
    ASSERT_TRUE(night);
    EXPECT_EQ(night->start, moment("2026-10-24 22:10"));
    EXPECT_EQ(night->end, moment("2026-10-25 03:00"));
    EXPECT_EQ(night->end - night->start, std::chrono::minutes(350)) << "the clocks went back";
}

TEST(StayTypedIn, ComesBackAsItIsShownWhateverItIs) {
    std::mt19937 chance(1313); // NOLINT(cert-msc51-cpp): the same cases each time
    const auto upTo = [&chance](int most) {
        return static_cast<int>(chance() % static_cast<unsigned>(most + 1));
    };
    for (const char* zone : {"Etc/UTC", "Europe/London", "America/St_Johns"}) {
        const auto clock = units::Clock::inZone(zone).value();
        for (int i = 0; i < 200; ++i) {
            logbook::Stay stay;
            const units::Day day{std::chrono::sys_days(std::chrono::year(2026) / 1 / 1) +
                                 std::chrono::days(upTo(364))};
            // Not in the hours in which clocks are turned: there one time has two meanings.
            stay.start = clock.at(day, std::chrono::minutes(60 * 4 + upTo(60 * 19)));
            stay.end = stay.start + std::chrono::minutes(1 + upTo(60 * 3));
            stay.place = {0.001 * upTo(1000), 55.0 + 0.001 * upTo(1000)};
            stay.rods = upTo(1) == 0 ? std::nullopt : std::optional(1 + upTo(7));
            stay.bait = upTo(1) == 0 ? "" : "roach, smelt";
            const auto text = [&clock](units::Moment moment) {
                return QString::fromStdString(units::timeOfDayText(moment, clock));
            };
            if (clock.hourOfDay(stay.end) < 4.0) {
                continue; // the hours of the turning again
            }
            const StayTyped lines{{wording::Words::place(stay.place), text(stay.start),
                                   text(stay.end), stay.rods ? QString::number(*stay.rods) : "",
                                   QString::fromStdString(stay.bait),
                                   QString::fromStdString(units::isoText(day))},
                                  KnownPlace{wording::Words::place(stay.place), stay.place, {}}};
            const auto read = stayOf(lines, clock);
            ASSERT_TRUE(read) << zone << ' ' << i;
            EXPECT_EQ(*read, stay) << zone << ' ' << i;
        }
    }
}

TEST(StayOfferedNext, IsWhatTheLastOneOfThatDayHad) {
    water::Water water;
    water.log = autumn::log();
    const auto offered = [&](const char* day) {
        return offeredOn(water, units::dayFrom(day).value());
    };
    EXPECT_EQ(offered("2026-10-03").from, "13:00");
    EXPECT_EQ(offered("2026-10-03").rods, "3");
    EXPECT_EQ(offered("2026-10-03").bait, "");
    EXPECT_EQ(offered("2026-09-30").bait, "roach");
    EXPECT_EQ(offered("2026-09-30").rods, "1");
    for (const char* day : {"2026-10-04", "2026-10-02", "2026-09-01"}) {
        EXPECT_EQ(offered(day).from + offered(day).rods + offered(day).bait, "") << day;
    }
    water.houseRules.rodLimit = 2;
    EXPECT_EQ(offered("2026-10-03").rods, "2") << "never more than the house allows";
    water.log.edit(2).end = at("2026-10-04 02:00");
    EXPECT_EQ(offered("2026-10-03").from, "") << "no stay of that morning begins at night's end";
    EXPECT_EQ(offered("2026-10-03").rods, "2");
}

std::optional<logbook::Fish> fishOf(const char* time, const char* species, const char* weight,
                                    const logbook::Stay& stay,
                                    UnitSystem units = UnitSystem::metric) {
    return readFish({time, species, weight}, stay, true, {}, wording::Words(units)).fish;
}

TEST(FishTypedIn, LiesWithinItsStay) {
    logbook::Stay stay;
    stay.start = at("2026-10-03 22:00");
    stay.end = at("2026-10-04 02:00");
    EXPECT_EQ(fishOf("2230", "", "", stay)->time, at("2026-10-03 22:30"));
    EXPECT_EQ(fishOf("0130", "", "", stay)->time, at("2026-10-04 01:30"));
    EXPECT_EQ(fishOf("22:00", "", "", stay)->time, stay.start);
    EXPECT_EQ(fishOf("02:00", "", "", stay)->time, stay.end);
    ASSERT_TRUE(fishOf("", "", "", stay));
    EXPECT_FALSE(fishOf("", "", "", stay)->time) << "nobody noted it";
    for (const char* time : {"21:59", "02:01", "soon"}) {
        EXPECT_FALSE(fishOf(time, "", "", stay)) << time;
    }
}

TEST(FishTypedIn, HasTheWeightThatAnAnglerWrites) {
    logbook::Stay stay;
    stay.start = at("2026-10-03 08:00");
    stay.end = at("2026-10-03 10:00");
    const auto pounds = fishOf("0930", "pike", "12-8", stay, UnitSystem::imperial);
    ASSERT_TRUE(pounds);
    EXPECT_NEAR(pounds->weight.value().inPounds(), 12.5, 1e-9);
    EXPECT_EQ(pounds->species, "pike");
    EXPECT_FALSE(fishOf("0930", "", "", stay)->weight);
    EXPECT_FALSE(fishOf("0930", "pike", "heavy", stay));
    EXPECT_FALSE(fishOf("0930", "pike", "-1 kg", stay));
    const auto lost = readFish({"0930", "pike", "3"}, stay, false, {}, wording::Words()).fish;
    ASSERT_TRUE(lost);
    EXPECT_FALSE(lost->landed);
    EXPECT_EQ(lost->species, "") << "a run that was lost has no species and no weight";
    EXPECT_FALSE(lost->weight);
}

TEST(WordsOfTheLog, ComeByHowOftenTheyWereUsed) {
    logbook::Log log = autumn::log();
    log[0].runs = {autumn::fishAt("2026-09-30 09:00", "perch", 1.0)};
    log[2].bait = "smelt";
    EXPECT_EQ(speciesByUse(log), (QStringList{"perch", "pike", "zander"}));
    EXPECT_EQ(baitsByUse(log), (QStringList{"smelt", "roach"}));
}

} // namespace
