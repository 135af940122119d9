// SPDX-License-Identifier: GPL-3.0-or-later
// A water sounded again after years: what becomes of its bed and of its marks.
#include "core/water/questions/compare_years.h"
#include "tests/support/planned_water.h"

#include <gtest/gtest.h>

namespace {

using geo::WaterPoint;
using support::PlannedWater;
using units::Length;
using water::CommonRise;

surface::DrawnWater deeperBy(const PlannedWater& made, double deeper_m,
                             double (*more_m)(WaterPoint)) {
    surface::DrawnWater drawn = *made.derived.drawn;
    const grid::GridFrame& frame = drawn.depth.frame();
    for (std::size_t i = 0; i < drawn.depth.size(); ++i) {
        if (drawn.depth.has(i)) {
            drawn.depth.raw_m()[i] +=
                static_cast<float>(deeper_m + more_m(frame.centre(frame.cellAt(i))));
        }
    }
    return drawn;
}

double nowhere(WaterPoint) {
    return 0.0;
}
/// A hole of old, since filled.
double inTheWest(WaterPoint p) {
    return p.x_m < -200.0 ? 2.0 : 0.0;
}

water::YearsCompared compared(const PlannedWater& later, const water::Water& earlier,
                              const surface::DrawnWater& drawn,
                              CommonRise common = CommonRise::isChange) {
    base::Progress quiet;
    return water::compareYears(later.water, later.derived, earlier, drawn, common, quiet).value();
}

TEST(CompareYears, ReadsBothChartLevelsOnOneGauge) {
    PlannedWater later;
    later.water.chartLevel = units::WaterLevel::metresOnGauge(1.5);
    water::Water earlier = later.water;
    earlier.chartLevel = units::WaterLevel::metresOnGauge(1.1);
    // At 1.1 on the gauge the same bed lies 0.4 m less deep.
    const auto same = compared(later, earlier, deeperBy(later, -0.4, nowhere));
    EXPECT_NEAR(same.sums.middle.inMetres(), 0.0, 1e-4);
    EXPECT_FALSE(same.takenOff);
    const auto silted = compared(later, earlier, deeperBy(later, 0.1, nowhere));
    EXPECT_NEAR(silted.sums.middle.inMetres(), 0.5, 1e-4);
}

TEST(CompareYears, TakesOffWhatAllHasInCommonWhereThatIsALevel) {
    PlannedWater later;
    const auto drawn = deeperBy(later, 0.7, inTheWest);
    const auto asNoted = compared(later, later.water, drawn);
    EXPECT_NEAR(asNoted.sums.middle.inMetres(), 0.7, 1e-4);
    const auto levelled = compared(later, later.water, drawn, CommonRise::isOfLevel);
    ASSERT_TRUE(levelled.takenOff);
    EXPECT_NEAR(levelled.takenOff->inMetres(), 0.7, 1e-4);
    EXPECT_NEAR(levelled.sums.middle.inMetres(), 0.0, 1e-4);
    EXPECT_NEAR(levelled.sums.risen.inHectares(), 100.0 * 400.0 / 1e4, 0.25)
        << "the hole of old, and nothing beside it";
    EXPECT_LT(levelled.sums.risen.inHectares(), asNoted.sums.risen.inHectares());
}

TEST(CompareYears, TellsOfEachMarkWhatHasBecomeOfIt) {
    PlannedWater later;
    later.water.pinnedMarks = {{"Old hole", later.onEarth({-250, 0})},
                               {"Point", later.onEarth({0, 0})}};
    water::Water earlier = later.water;
    earlier.pinnedMarks = {{"The hole", later.onEarth({-251, 1})},
                           {"Bank", later.onEarth({100, 50})},
                           {"Elsewhere", later.onEarth({900, 0})}};
    const auto years = compared(later, earlier, deeperBy(later, 0.0, inTheWest));
    ASSERT_EQ(years.marks.size(), 4U) << "two marks within 5 m are one";
    EXPECT_EQ(years.marks[0].name, "Old hole");
    ASSERT_TRUE(years.marks[0].rise);
    EXPECT_NEAR(years.marks[0].rise->inMetres(), 2.0, 1e-4);
    EXPECT_TRUE(years.marks[0].isSure());
    EXPECT_NEAR(years.marks[1].rise->inMetres(), 0.0, 1e-4);
    EXPECT_FALSE(years.marks[1].isSure());
    EXPECT_EQ(years.marks[2].name, "Bank");
    EXPECT_EQ(years.marks[3].name, "Elsewhere");
    EXPECT_FALSE(years.marks[3].rise) << "on no water";
    EXPECT_FALSE(years.marks[3].isSure());
}

TEST(CompareYears, SaysHowManyDaysHadNoLevel) {
    PlannedWater later;
    auto now = *later.derived.drawn;
    now.report.daysWithoutLevel = 2;
    auto drawn = deeperBy(later, 0.0, nowhere);
    drawn.report.daysWithoutLevel = 1;
    later.derived.drawn = std::make_shared<const surface::DrawnWater>(now);
    EXPECT_EQ(compared(later, later.water, drawn).daysWithoutLevel, 3U);
}

TEST(CompareYears, NeedsBothDrawn) {
    PlannedWater later;
    const auto drawn = deeperBy(later, 0.0, nowhere);
    later.derived.drawn.reset();
    base::Progress quiet;
    const auto refused = water::compareYears(later.water, later.derived, later.water, drawn,
                                             CommonRise::isChange, quiet);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().kind, base::ErrorKind::wrongUse);
}

} // namespace
