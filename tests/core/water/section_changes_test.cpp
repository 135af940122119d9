// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/document/water.h"
#include "core/water/questions/locate.h"
#include "core/water/questions/log_groups.h"
#include "core/water/steps/derive.h"

#include "tests/support/bowl.h"

#include <gtest/gtest.h>

namespace {

using namespace water;
using sections::SectionChange;
using Kind = SectionChange::Kind;

/// A square bowl of 23 ha round 3.1 E 55.2 N, in sections of about 4 ha.
Water bowl() {
    soundings::SurveyDay day = support::bowlDay();
    day.id = soundings::SurveyDayId(1);
    Water water;
    water.shoreline = support::bowlShore();
    water.days = {day};
    water.settings.cell = units::Length::metres(6.0);
    EXPECT_TRUE(layFrame(water));
    return water;
}

Derived derivedOf(const Water& water, const Derived& before = {}) {
    base::Progress quiet;
    return derive(water, before, Step::sections, quiet).value();
}

geo::LonLat middleOf(const Water& water, const Derived& derived, std::size_t section) {
    return water.frame->toEarth(derived.sections->sections.at(section).middle);
}

double area_m2(const Derived& derived) {
    double sum_m2 = 0.0;
    for (const sections::Section& section : derived.sections->sections) {
        sum_m2 += section.area.inSquareMetres();
    }
    return sum_m2;
}

/// A line across the section from west to east, through its middle and out on both sides.
SectionChange splitOf(const Water& water, const Derived& derived, std::size_t section) {
    const geo::WaterPoint middle = derived.sections->sections.at(section).middle;
    double from_m = middle.x_m;
    double to_m = middle.x_m;
    const auto& map = derived.sections->sectionOfCell;
    for (const std::size_t cell : derived.sections->sections[section].cells) {
        const geo::WaterPoint p = map.frame().centre(map.frame().cellAt(cell));
        from_m = std::min(from_m, p.x_m);
        to_m = std::max(to_m, p.x_m);
    }
    return {Kind::split,
            {},
            {water.frame->toEarth(geo::WaterPoint{from_m - 10.0, middle.y_m}),
             water.frame->toEarth(geo::WaterPoint{to_m + 10.0, middle.y_m})}};
}

TEST(SectionChanges, AreMadeAfterTheDivisionAndTakenBackWithIt) {
    Water water = bowl();
    const Derived plain = derivedOf(water);
    const std::size_t count = plain.sections->sections.size();
    ASSERT_GE(count, 4U);
    water.sectionChanges = {splitOf(water, plain, 1)};
    const Derived split = derivedOf(water, plain);
    EXPECT_TRUE(split.sections->refused.empty());
    EXPECT_EQ(split.sections->sections.size(), count + 1);
    EXPECT_NEAR(area_m2(split), area_m2(plain), 1.0);
    water.sectionChanges.clear();
    EXPECT_EQ(derivedOf(water, split).sections->sectionOfCell, plain.sections->sectionOfCell);
}

TEST(SectionChanges, OneThatCannotBeMadeIsToldAndTheOthersStand) {
    Water water = bowl();
    const Derived plain = derivedOf(water);
    const SectionChange outside{Kind::split, {}, {{3.2, 55.2}, {3.21, 55.2}}};
    water.sectionChanges = {outside, splitOf(water, plain, 0)};
    const Derived changed = derivedOf(water, plain);
    ASSERT_EQ(changed.sections->refused.size(), 1U);
    EXPECT_EQ(changed.sections->refused[0].change, 0U);
    EXPECT_EQ(changed.sections->sections.size(), plain.sections->sections.size() + 1);
    EXPECT_NEAR(area_m2(changed), area_m2(plain), 1.0);
    EXPECT_TRUE(changed.failures.empty());
}

TEST(SectionChanges, ANamedSectionKeepsNameAndCatchesWhenTheMapIsDrawnAnew) {
    Water water = bowl();
    const Derived plain = derivedOf(water);
    const geo::LonLat seed = middleOf(water, plain, 2);
    water.sectionNames = {{seed, "Heron Bay"}};
    logbook::Stay stay;
    stay.place = seed;
    stay.end = stay.start + std::chrono::hours(3);
    stay.rods = 2;
    stay.runs.resize(2);
    water.log = {stay};
    const auto isKept = [&](const Derived& derived) {
        const auto stays = bySection(water, derived);
        return stays.size() == 1 && stays[0].group == "Heron Bay" && stays[0].runs.size() == 2 &&
               stays[0].rodHours == 6.0;
    };
    EXPECT_TRUE(isKept(derivedOf(water, plain)));
    // Another section is cut, so that all behind it get other numbers.
    water.sectionChanges = {splitOf(water, plain, 0)};
    EXPECT_TRUE(isKept(derivedOf(water, plain)));
    // A fiftieth of the soundings goes, and the water is drawn again.
    auto& soundings = water.days[0].soundings.edit();
    for (std::size_t i = soundings.size(); i-- > 0;) {
        if (i % 50 == 7) {
            soundings.erase(soundings.begin() + static_cast<std::ptrdiff_t>(i));
        }
    }
    const Derived redrawn = derivedOf(water);
    EXPECT_TRUE(isKept(redrawn));
    EXPECT_TRUE(redrawn.sections->refused.empty());
    // Joined with its neighbour it keeps both.
    for (std::size_t other = 0; other < redrawn.sections->sections.size(); ++other) {
        Water joined = water;
        joined.sectionChanges.push_back({Kind::join, {seed, middleOf(water, redrawn, other)}, {}});
        const Derived derived = derivedOf(joined, redrawn);
        if (derived.sections->refused.empty()) {
            EXPECT_EQ(derived.sections->sections.size(), redrawn.sections->sections.size() - 1);
            EXPECT_TRUE(isKept(derived));
            return;
        }
    }
    FAIL() << "no neighbour to join with";
}

} // namespace
