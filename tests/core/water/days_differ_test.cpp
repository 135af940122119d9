// SPDX-License-Identifier: GPL-3.0-or-later
// Two survey days of one bowl, the second at another level: what disagrees is said with the
// soundings, with the drawing and with the list of marks, until it is agreed.
#include "core/water/steps/derive.h"
#include "core/water/steps/plan_day.h"
#include "tests/support/bowl.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace {

using namespace water;

constexpr int lines = 15;
constexpr int soundingsInLine = 60;

/// Lines over the bowl, each a pass: from west to east, or from south to north.
soundings::SurveyDay dayOf(int id, bool isNorthward, double deeper_m) {
    soundings::SurveyDay day;
    day.id = soundings::SurveyDayId(id);
    std::vector<std::size_t> passes;
    for (int line = 0; line < lines; ++line) {
        passes.push_back(day.soundings.size());
        for (int k = 0; k < soundingsInLine; ++k) {
            const double on = -1.0 + (2.0 * k + 1.0) / soundingsInLine;
            const double beside = -1.0 + (2.0 * line + 1.0) / lines;
            const double x = isNorthward ? beside : on;
            const double y = isNorthward ? on : beside;
            day.soundings.edit().push_back(
                {{3.1 + 0.0038 * x, 55.2 + 0.0019 * y},
                 units::Depth::metres(8.0 - 4.0 * std::hypot(x, y) + deeper_m),
                 {}});
        }
    }
    day.passStarts = passes;
    return day;
}

Water bowlOf(double deeper_m) {
    Water water;
    water.shoreline = support::bowlShore();
    water.days = {dayOf(1, false, 0.0), dayOf(2, true, deeper_m)};
    water.settings.cell = units::Length::metres(10.0);
    EXPECT_TRUE(layFrame(water));
    return water;
}

Derived derivedOf(const Water& water) {
    base::Progress quiet;
    return derive(water, {}, Step::sections, quiet).value();
}

template <class Note>
const Note* noteOf(const Water& water, const Derived& derived) {
    base::Progress quiet;
    static PlannedDay planned;
    planned = planDay(water, derived, water.plan, quiet).value();
    for (const PlanNote& note : planned.basis) {
        if (const auto* found = std::get_if<Note>(&note)) {
            return found;
        }
    }
    return nullptr;
}

TEST(DaysDiffer, IsSaidWithTheSoundingsTheDrawingAndTheList) {
    const Water water = bowlOf(0.47);
    const Derived derived = derivedOf(water);
    ASSERT_EQ(derived.checked->differences.size(), 1U);
    EXPECT_NEAR(derived.checked->differences[0].difference.inMetres(), 0.47, 0.05);
    ASSERT_TRUE(derived.drawn->report.daysDiffer);
    EXPECT_NEAR(derived.drawn->report.daysDiffer->inMetres(), 0.47, 0.05);
    const auto* note = noteOf<water::DaysDiffer>(water, derived);
    ASSERT_NE(note, nullptr);
    EXPECT_NEAR(note->by.inMetres(), 0.47, 0.05);
}

TEST(DaysDiffer, IsSaidNoMoreOnceTheOffsetIsAgreed) {
    Water agreed = bowlOf(0.47);
    agreed.days[1].agreedOffset = units::Length::metres(-0.47);
    const Derived derived = derivedOf(agreed);
    EXPECT_TRUE(derived.checked->differences.empty());
    EXPECT_FALSE(derived.drawn->report.daysDiffer);
    EXPECT_EQ(noteOf<water::DaysDiffer>(agreed, derived), nullptr);
    EXPECT_FALSE(derivedOf(bowlOf(0.0)).drawn->report.daysDiffer) << "nor where they agree";
}

TEST(DaysDiffer, LevelsTwelveMetresApartAreTakenIntoTheDepthsAndNotSaid) {
    Water water = bowlOf(0.0);
    water.chartLevel = units::WaterLevel::metresOnGauge(100.0);
    const auto at = [](double level_m) {
        return soundings::Gauge::constant(units::WaterLevel::metresOnGauge(level_m));
    };
    water.days[0].gauge = at(100.0);
    water.days[1] = dayOf(2, true, 12.0);
    water.days[1].gauge = at(112.0);
    const Derived derived = derivedOf(water);
    EXPECT_TRUE(derived.checked->differences.empty());
    EXPECT_EQ(derived.drawn->report.daysWithoutLevel, 0U);
    EXPECT_EQ(derived.levelUnknown, nullptr);
}

TEST(LevelUnknown, IsToldWhereTheNearestSoundingIsOfSuchADay) {
    Water water = bowlOf(0.0);
    water.days[0].gauge = soundings::Gauge::constant(units::WaterLevel());
    // The day without a level covers the east alone.
    auto& east = water.days[1].soundings.edit();
    std::erase_if(east, [](const soundings::Sounding& s) { return s.place.lon_deg < 3.1; });
    water.days[1].passStarts = {0};
    const Derived derived = derivedOf(water);
    EXPECT_EQ(derived.drawn->report.daysWithoutLevel, 1U);
    ASSERT_NE(derived.levelUnknown, nullptr);
    const auto& unknown = *derived.levelUnknown;
    const auto at = [&](double lon_deg, double lat_deg) {
        return unknown[unknown.frame().cellOf(water.frame->toWater(geo::LonLat{lon_deg, lat_deg}))];
    };
    EXPECT_EQ(at(3.0975, 55.2005), 0) << "the level of the west is known";
    EXPECT_GT(std::ranges::count(unknown.values(), 1), 100);
    const auto* note = noteOf<water::DaysWithoutLevel>(water, derived);
    ASSERT_NE(note, nullptr);
    EXPECT_EQ(note->days, 1U);
    // An agreed offset stands for the level; a day alone is its own level.
    water.days[1].agreedOffset = units::Length();
    EXPECT_EQ(derivedOf(water).levelUnknown, nullptr);
    water.days.pop_back();
    water.days[0].gauge = {};
    EXPECT_EQ(derivedOf(water).drawn->report.daysWithoutLevel, 0U);
}

} // namespace
