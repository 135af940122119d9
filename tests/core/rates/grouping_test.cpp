// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rates/grouping.h"

#include "tests/core/rates/log_builder.h"

#include <algorithm>
#include <numeric>
#include <random>

#include <gtest/gtest.h>

namespace {

using rates::GroupedStay;

const GroupedStay& of(const std::vector<GroupedStay>& parts, const std::string& group) {
    const auto found = std::ranges::find(parts, group, &GroupedStay::group);
    EXPECT_NE(found, parts.end()) << group;
    return *found;
}

TEST(ByHour, SplitsAStayOverTheBlocksThatItCovers) {
    logbook::Log log{logs::stay("2026-10-03", "07:30", "10:15", 2)};
    log[0].runs = {logs::fish("2026-10-03 09:10", 4.0), logs::lost("2026-10-03 10:10")};
    const auto parts = rates::byHour(log, units::Clock());
    ASSERT_EQ(parts.size(), 3U);
    EXPECT_NEAR(of(parts, "06-08").rodHours, 1.0, 1e-9);
    EXPECT_NEAR(of(parts, "08-10").rodHours, 4.0, 1e-9);
    EXPECT_NEAR(of(parts, "10-12").rodHours, 0.5, 1e-9);
    EXPECT_TRUE(of(parts, "06-08").runs.empty());
    EXPECT_EQ(of(parts, "08-10").runs.size(), 1U);
    EXPECT_EQ(of(parts, "10-12").runs.size(), 1U);
}

TEST(ByHour, CountsBlocksByTheClockAtTheWater) {
    const logbook::Log log{logs::stay("2026-07-03", "05:00", "05:30")};
    const auto london = units::Clock::inZone("Europe/London").value();
    EXPECT_EQ(rates::byHour(log, london).front().group, "06-08");
}

TEST(ByHour, PutsAFishAtTheVeryEndIntoTheBlockThatWasFished) {
    logbook::Log log{logs::stay("2026-10-03", "07:00", "08:00")};
    log[0].runs = {logs::fish("2026-10-03 08:00", 4.0)};
    const auto parts = rates::byHour(log, units::Clock());
    ASSERT_EQ(parts.size(), 1U);
    EXPECT_EQ(parts.front().runs.size(), 1U);
}

TEST(ByHour, LosesNoEffortAndNoRun) {
    constexpr unsigned seed = 5;
    SCOPED_TRACE(seed);
    std::mt19937 chance(seed);
    const auto dublin = units::Clock::inZone("Europe/Dublin").value();
    logbook::Log log;
    double effort = 0.0;
    for (int i = 0; i < 300; ++i) {
        logbook::Stay made;
        // Round the end of summer time, so that one night has 25 hours.
        made.start = logs::moment("2026-10-23T00:00:00Z") + std::chrono::minutes(chance() % 7200);
        made.end = made.start + std::chrono::seconds(chance() % 40000);
        made.rods = 1 + static_cast<int>(chance() % 3);
        logbook::Fish run;
        run.time = made.start + (made.end - made.start) / 2;
        made.runs = {run};
        effort += made.rodHours().value();
        log.push_back(made);
    }
    for (const int hours : {1, 2, 3, 4, 6, 8, 12}) {
        double found = 0.0;
        std::size_t runs = 0;
        for (const GroupedStay& part : rates::byHour(log, dublin, hours)) {
            EXPECT_GE(part.rodHours, 0.0);
            found += part.rodHours;
            runs += part.runs.size();
        }
        EXPECT_NEAR(found, effort, 1e-6);
        EXPECT_EQ(runs, log.size());
    }
}

TEST(ByBait, SharesTheEffortAmongTheBaitsNamed) {
    logbook::Log log{logs::stay("2026-10-03", "07:00", "09:00", 2, "Perch, smelt")};
    log[0].runs = {logs::fish("2026-10-03 08:00", 4.0, "smelt"),
                   logs::fish("2026-10-03 08:20", 4.0)};
    const auto parts = rates::byBait(log);
    EXPECT_NEAR(of(parts, "perch").rodHours, 2.0, 1e-9);
    EXPECT_NEAR(of(parts, "smelt").rodHours, 2.0, 1e-9);
    EXPECT_EQ(of(parts, "smelt").runs.size(), 1U);
    EXPECT_EQ(of(parts, "not noted").runs.size(), 1U);
}

TEST(ByBait, CountsABaitThatOnlyTheFishNames) {
    logbook::Log log{logs::stay("2026-10-03", "07:00", "09:00", 1, "roach")};
    log[0].runs = {logs::fish("2026-10-03 08:00", 4.0, "Trout")};
    const auto parts = rates::byBait(log);
    EXPECT_NEAR(of(parts, "roach").rodHours, 1.0, 1e-9);
    EXPECT_NEAR(of(parts, "trout").rodHours, 1.0, 1e-9);
    EXPECT_EQ(of(parts, "trout").runs.size(), 1U);
}

TEST(ByWind, NamesEighthsCalmAndWhatWasNotNoted) {
    EXPECT_EQ(rates::windEighth(units::Bearing::degrees(0)), "N");
    EXPECT_EQ(rates::windEighth(units::Bearing::degrees(22.6)), "NE");
    EXPECT_EQ(rates::windEighth(units::Bearing::degrees(225)), "SW");
    EXPECT_EQ(rates::windEighth(units::Bearing::degrees(350)), "N");
    logbook::Log log{logs::stay("2026-10-03", "07:00", "09:00"),
                     logs::stay("2026-10-03", "09:00", "10:00")};
    log[1].conditions.windFrom = units::Bearing::degrees(90);
    log[1].conditions.windSpeed = units::Speed::metresPerSecond(0.1);
    const auto parts = rates::byWind(log);
    EXPECT_EQ(parts[0].group, "not noted");
    EXPECT_EQ(parts[1].group, "calm");
}

TEST(ByMonth, GoesByTheStartOfTheStay) {
    const logbook::Log log{logs::stay("2026-11-30", "07:00", "09:00")};
    EXPECT_EQ(rates::byMonth(log, units::Clock()).front().group, "November");
    EXPECT_EQ(rates::monthOrder().size(), 12U);
    EXPECT_EQ(rates::windOrder().front(), "N");
}

} // namespace
