// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/questions/section_use.h"

#include "core/water/steps/derive.h"

#include <gtest/gtest.h>

#include <numbers>

namespace {

using namespace water;

/// A square of 500 m by 440 m, flat at 4 m, round 3.1 E 55.2 N.
Water square() {
    soundings::SurveyDay day;
    day.passStarts = {0};
    for (int row = 0; row < 20; ++row) {
        for (int col = 0; col < 20; ++col) {
            day.soundings.edit().push_back({{3.0962 + 0.0004 * col, 55.1981 + 0.0002 * row},
                                            units::Depth::metres(4.0),
                                            std::nullopt});
        }
    }
    Water water;
    water.shoreline = {{{{3.096, 55.198}, {3.104, 55.198}, {3.104, 55.202}, {3.096, 55.202}}, {}}};
    water.days = {day};
    water.settings.cell = units::Length::metres(4.0);
    water.plan.tackle.cast = units::Length::metres(40.0);
    EXPECT_TRUE(layFrame(water));
    return water;
}

Derived derivedOf(const Water& water) {
    base::Progress quiet;
    return derive(water, {}, Step::sections, quiet).value();
}

logbook::Stay stayAt(geo::LonLat place, int hours, int rods, const std::vector<bool>& landed) {
    logbook::Stay stay;
    stay.place = place;
    stay.end = stay.start + std::chrono::hours(hours);
    stay.rods = rods;
    for (const bool each : landed) {
        stay.runs.push_back({});
        stay.runs.back().landed = each;
    }
    return stay;
}

TEST(UseOfSections, CountsEffortLandedFishAndBlanksWhereTheBoatLay) {
    Water water = square();
    const Derived derived = derivedOf(water);
    const auto& all = derived.sections->sections;
    ASSERT_GE(all.size(), 3U);
    const geo::LonLat place = water.frame->toEarth(all[1].middle);
    water.log = {stayAt(place, 2, 3, {true, false, true}), stayAt(place, 5, 2, {false}),
                 stayAt({3.2, 55.2}, 9, 4, {true})};
    const auto uses = useOfSections(water, derived);
    ASSERT_EQ(uses.size(), all.size());
    EXPECT_EQ(uses[1].stays, 2);
    EXPECT_EQ(uses[1].blanks, 1);
    EXPECT_EQ(uses[1].tally, (rates::Tally{2, 16.0}));
    EXPECT_EQ(uses[0].stays + uses[2].stays, 0) << "what lies off the water counts nowhere";
}

TEST(UseOfSections, FishedIsWhatLiesWithinACastCountedOnce) {
    Water water = square();
    const Derived derived = derivedOf(water);
    const auto& section = derived.sections->sections[0];
    const geo::LonLat place = water.frame->toEarth(section.middle);
    EXPECT_EQ(useOfSections(water, derived)[0].fishedShare, 0.0);
    water.log = {stayAt(place, 2, 3, {}), stayAt(place, 2, 3, {})};
    // The middle of a section of 4 ha is farther than a cast from its borders.
    const double circle_m2 = std::numbers::pi * 40.0 * 40.0;
    EXPECT_NEAR(useOfSections(water, derived)[0].fishedShare,
                circle_m2 / section.area.inSquareMetres(), 0.01);
}

TEST(UseOfSections, LieOpenToTheWindThatBlowsAlongTheWaterTowardsThem) {
    Water water = square();
    const Derived derived = derivedOf(water);
    const auto west = static_cast<std::size_t>(
        sections::sectionAt(*derived.sections, water.frame->toWater(geo::LonLat{3.0965, 55.2})));
    water.plan.day.wind = {units::Bearing::degrees(90.0), units::Speed::metresPerSecond(8.0)};
    const SectionUse open = useOfSections(water, derived).at(west);
    water.plan.day.wind.from = units::Bearing::degrees(270.0);
    const SectionUse sheltered = useOfSections(water, derived).at(west);
    EXPECT_GT(open.fetch.value().inMetres(), 2.0 * sheltered.fetch.value().inMetres());
    EXPECT_GT(open.waves.value(), sheltered.waves.value());
}

TEST(UseOfSections, KnowNoWavesOfAWindThatNobodySaid) {
    Water water = square();
    const Derived derived = derivedOf(water);
    EXPECT_EQ(useOfSections(water, derived)[0].fetch, std::nullopt);
    EXPECT_EQ(useOfSections(water, derived)[0].waves, std::nullopt);
    water.plan.day.wind.from = units::Bearing::degrees(90.0);
    EXPECT_GT(useOfSections(water, derived)[0].fetch.value().inMetres(), 0.0);
    EXPECT_EQ(useOfSections(water, derived)[0].waves, std::nullopt);
    water.plan.day.wind.speed = units::Speed();
    EXPECT_EQ(useOfSections(water, derived)[0].waves, units::Length()) << "a calm is said";
}

TEST(UseOfSections, OfAWaterNotYetDividedIsEmpty) {
    EXPECT_TRUE(useOfSections(square(), Derived()).empty());
}

} // namespace
