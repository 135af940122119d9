// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/soundings/gauge.h"
#include "core/soundings/lead_line.h"
#include "core/soundings/sounder.h"
#include "core/soundings/verdict.h"

#include <gtest/gtest.h>

#include <set>

namespace {

using namespace soundings;
using units::WaterLevel;
using namespace std::chrono_literals;

const units::Moment eight{std::chrono::sys_days(std::chrono::year(2026) / 9 / 5) + 8h};

TEST(Gauge, UnknownHasNoLevel) {
    EXPECT_FALSE(Gauge().isKnown());
    EXPECT_FALSE(Gauge().levelAt(eight));
}

TEST(Gauge, ConstantHoldsAtEveryTime) {
    const Gauge gauge = Gauge::constant(WaterLevel::metresOnGauge(0.3));
    EXPECT_DOUBLE_EQ(gauge.levelAt(eight)->inMetresOnGauge(), 0.3);
    EXPECT_DOUBLE_EQ(gauge.levelAt(std::nullopt)->inMetresOnGauge(), 0.3);
}

TEST(Gauge, TableIsStraightBetweenReadingsAndHeldOutsideThem) {
    const Gauge gauge = Gauge::table(
        {{eight + 2h, WaterLevel::metresOnGauge(1.4)}, {eight, WaterLevel::metresOnGauge(1.0)}});
    EXPECT_NEAR(gauge.levelAt(eight + 30min)->inMetresOnGauge(), 1.1, 1e-12);
    EXPECT_DOUBLE_EQ(gauge.levelAt(eight - 5h)->inMetresOnGauge(), 1.0);
    EXPECT_DOUBLE_EQ(gauge.levelAt(eight + 9h)->inMetresOnGauge(), 1.4);
    EXPECT_NEAR(gauge.levelAt(std::nullopt)->inMetresOnGauge(), 1.2, 1e-12);
}

TEST(Gauge, IsKnownByOneLevelOrByReadings) {
    EXPECT_TRUE(Gauge::constant(WaterLevel::metresOnGauge(0.0)).isKnown());
    EXPECT_TRUE(Gauge::table({{eight, WaterLevel::metresOnGauge(1.0)}}).isKnown());
    EXPECT_FALSE(Gauge::table({}).isKnown());
    EXPECT_FALSE(Gauge::table({{eight, WaterLevel::metresOnGauge(1.0)}}).constantLevel());
    EXPECT_EQ(Gauge::constant(WaterLevel::metresOnGauge(0.3)).constantLevel(),
              WaterLevel::metresOnGauge(0.3));
}

TEST(Sounder, IsSetTo1500MetresASecondAndMeasuresBySoundUnlessSaid) {
    EXPECT_EQ(Sounder().assumedSoundSpeed, units::Speed::metresPerSecond(1500.0));
    EXPECT_TRUE(Sounder().measuresBySound);
    EXPECT_EQ(Sounder().draft, units::Depth());
}

TEST(Verdict, IsNamedInFilesByItsReason) {
    const std::vector<std::pair<Verdict, std::string_view>> names{
        {Verdict::kept, ""},
        {Verdict::dropOut, "drop_out"},
        {Verdict::spike, "spike"},
        {Verdict::doubleEcho, "double_echo"},
        {Verdict::stuckDepth, "stuck_depth"},
        {Verdict::positionJump, "position_jump"},
        {Verdict::stuckPosition, "stuck_position"},
        {Verdict::outsideShore, "outside_shore"},
        {Verdict::disagrees, "disagrees"},
        {Verdict::byHand, "by_hand"}};
    ASSERT_EQ(names.size(), allVerdicts.size());
    for (const auto& [verdict, name] : names) {
        EXPECT_EQ(nameOf(verdict), name);
    }
}

TEST(Gauge, LaterOfTwoReadingsAtOneTimeCounts) {
    const Gauge gauge = Gauge::table(
        {{eight, WaterLevel::metresOnGauge(1.0)}, {eight, WaterLevel::metresOnGauge(2.0)}});
    ASSERT_EQ(gauge.readings().size(), 1U);
    EXPECT_DOUBLE_EQ(gauge.levelAt(eight)->inMetresOnGauge(), 2.0);
}

TEST(Verdict, NoTwoHaveOneName) {
    std::set<std::string_view> names;
    for (const Verdict verdict : allVerdicts) {
        EXPECT_TRUE(names.insert(nameOf(verdict)).second) << nameOf(verdict);
    }
}

TEST(LeadLine, EveryBottomHasItsName) {
    for (const char* name : {"soft", "gravel", "rock", "weed"}) {
        ASSERT_TRUE(bottomNamed(name)) << name;
        EXPECT_EQ(nameOf(*bottomNamed(name)), name);
    }
    EXPECT_FALSE(bottomNamed("cheese"));
}

} // namespace
