// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/beliefs.h"
#include "core/marks/factor_values.h"

#include "tests/support/made_up_day.h"

#include <algorithm>
#include <functional>
#include <numbers>

#include <gtest/gtest.h>

namespace {

using marks::Factor;
using marks::FactorKind;
using marks::Surroundings;
using Way = marks::WindOnSlope::Way;
using units::Bearing;
using units::Depth;
using units::Length;
using units::Speed;

TEST(FactorValues, AreTheDocumentedMaps) {
    // Each worked out by hand from the formula in the header.
    const Length cast = Length::metres(20.0);
    EXPECT_DOUBLE_EQ(marks::depthValue(0.37), 0.37);
    EXPECT_DOUBLE_EQ(marks::depthValue(1.4), 1.0);
    EXPECT_DOUBLE_EQ(marks::depthValue(-0.4), 0.0);
    EXPECT_NEAR(marks::edgeValue(10.0, cast), 0.393469, 1e-6); // 1 - exp(-0.5)
    EXPECT_DOUBLE_EQ(marks::edgeValue(-10.0, cast), 0.0);
    EXPECT_NEAR(marks::featureValue(125.66371, cast), 0.632121, 1e-6); // a tenth of the circle
    EXPECT_NEAR(marks::windwardValue(Speed::metresPerSecond(3.0)), 0.75, 1e-12);
    EXPECT_NEAR(marks::windwardValue(Speed::metresPerSecond(-6.0)), 1.0 / 6.0, 1e-12);
    // Calm: 1 / (1 + (H / 0.25)^2).
    EXPECT_NEAR(marks::waveValue(Length::metres(0.25), 0.0), 0.5, 1e-12);
    EXPECT_NEAR(marks::waveValue(Length::metres(0.5), 0.0), 0.2, 1e-12);
    // Rippled: 1 / (1 + ((H - 0.2) / 0.125)^2).
    EXPECT_NEAR(marks::waveValue(Length::metres(0.2), 1.0), 1.0, 1e-12);
    EXPECT_NEAR(marks::waveValue(Length::metres(0.325), 1.0), 0.5, 1e-12);
    EXPECT_NEAR(marks::waveValue(Length(), 1.0), 1.0 / 3.56, 1e-12);
    // Both alike: 1 / (1 + ((H - 0.1) / 0.1875)^2).
    EXPECT_NEAR(marks::waveValue(Length::metres(0.2875), 0.5), 0.5, 1e-12);
    EXPECT_NEAR(marks::lessTriedValue(marks::LogSays{{1, 0, 2}, 1, 0.25}), 0.2, 1e-12);
    EXPECT_NEAR(marks::trustValue(Length::metres(0.5)), 0.5, 1e-12);
    EXPECT_NEAR(marks::trustValue(Length::metres(1.0)), 0.2, 1e-12);
    EXPECT_EQ(marks::trustValue(Length::metres(INFINITY)), 0.0);
}

TEST(Windward, CountsASlopeOfFivePercentInFullAndNoSteeperOneForMore) {
    const logbook::Wind west{Bearing::degrees(270.0), Speed::metresPerSecond(8.0)};
    EXPECT_NEAR(marks::windUpSlope(west, 0.05, 0.0).inMetresPerSecond(), 8.0, 1e-9);
    EXPECT_NEAR(marks::windUpSlope(west, 0.5, 0.0).inMetresPerSecond(), 8.0, 1e-9);
    EXPECT_NEAR(marks::windUpSlope(west, 0.025, 0.0).inMetresPerSecond(), 4.0, 1e-9);
    const logbook::Wind south{Bearing::degrees(180.0), Speed::metresPerSecond(8.0)};
    EXPECT_NEAR(marks::windUpSlope(south, 0.0, 0.1).inMetresPerSecond(), 8.0, 1e-9);
    EXPECT_NEAR(marks::windUpSlope(south, 0.04, 0.03).inMetresPerSecond(), 4.8, 1e-9);
}

TEST(Factors, HaveTheirNamesAndDefaultWeights) {
    struct Row {
        FactorKind kind;
        const char* name;
        double weight;
    };
    const std::vector<Row> rows{
        {FactorKind::depth, "depth", 1.0},        {FactorKind::dropOff, "drop_off", 1.0},
        {FactorKind::weedEdge, "weed_edge", 0.6}, {FactorKind::feature, "feature", 0.6},
        {FactorKind::windward, "windward", 0.4},  {FactorKind::shelter, "shelter", 0.4},
        {FactorKind::record, "record", 0.8},      {FactorKind::lessTried, "less_tried", 0.3},
        {FactorKind::trust, "trust", 0.3}};
    marks::Weights weights;
    ASSERT_EQ(rows.size(), marks::allFactorKinds.size());
    for (std::size_t k = 0; k < rows.size(); ++k) {
        EXPECT_EQ(marks::allFactorKinds[k], rows[k].kind);
        EXPECT_EQ(marks::nameOf(rows[k].kind), rows[k].name);
        EXPECT_EQ(marks::factorNamed(rows[k].name), rows[k].kind);
        EXPECT_EQ(weights.of(rows[k].kind), rows[k].weight);
    }
    EXPECT_EQ(marks::factorNamed("Depth"), std::nullopt);
    // What the log alone speaks of has a name and no weight.
    EXPECT_EQ(marks::nameOf(FactorKind::bottom), "bottom");
    EXPECT_EQ(marks::nameOf(FactorKind::hour), "hour");
    EXPECT_EQ(marks::factorNamed("hour"), std::nullopt);
    EXPECT_EQ(weights.of(FactorKind::hour), 0.0);
    EXPECT_NEAR(weights.sum(), 5.4, 1e-12);
    weights.set(FactorKind::trust, 7.5);
    EXPECT_EQ(weights.of(FactorKind::trust), 7.5);
    EXPECT_NEAR(weights.sum(), 12.6, 1e-12);
    for (const double none : {-1.0, static_cast<double>(NAN), static_cast<double>(INFINITY)}) {
        weights.set(FactorKind::trust, none);
        EXPECT_EQ(weights.of(FactorKind::trust), 0.0);
    }
}

/// Factors of a made-up place, changed at will.
class ToldFactors : public testing::Test {
protected:
    ToldFactors() {
        around_.fishableShare = 0.634;
        around_.shallowest = Depth::metres(2.24);
        around_.deepest = Depth::metres(5.06);
        around_.dropOff_m = 57.6;
        around_.dropOffTop = Depth::metres(3.96);
        around_.dropOffFoot = Depth::metres(8.84);
        around_.weedEdge_m = 12.4;
        around_.featureArea_m2 = 310.4;
        around_.feature = structure::ZoneKind::spur;
        around_.riseEast = 0.04;
        around_.riseNorth = 0.03;
        around_.trust = Length::metres(0.44);
        wind_ = {Bearing::degrees(233.13), Speed::metresPerSecond(6.04)};
        log_ = marks::LogSays{{2.46, 0.94, 4.16}, 1.23, 0.5};
        day_.plan.day.wind = wind_;
    }
    [[nodiscard]] Factor of(FactorKind kind) {
        day_.plan.day.wind = wind_;
        const auto factors =
            marks::factorsOf(day_.ground.limit(), around_, day_.plan,
                             marks::WaveState{Length::metres(412.3), Length::metres(0.118)}, log_);
        return *std::ranges::find(factors, kind, &Factor::kind);
    }
    [[nodiscard]] Way wayOfWind() {
        return std::get<marks::WindOnSlope>(of(FactorKind::windward).because).way;
    }
    support::MadeUpDay day_;
    Surroundings around_;
    logbook::Wind wind_;
    std::optional<marks::LogSays> log_;
};

TEST_F(ToldFactors, HoldTheQuantitiesBehindEach) {
    using units::Area;
    struct Row {
        FactorKind kind;
        double value;
        marks::Reason because;
    };
    for (const Row& row :
         {Row{FactorKind::depth, 0.634,
              marks::FishableWater{0.634, Depth::metres(2.24), Depth::metres(5.06),
                                   day_.ground.limit()}},
          Row{FactorKind::dropOff, 1.0 - std::exp(-57.6 / 30.0),
              marks::DropOffNear{Length::metres(57.6), Depth::metres(3.96), Depth::metres(8.84)}},
          Row{FactorKind::weedEdge, 1.0 - std::exp(-12.4 / 30.0),
              marks::WeedEdgeNear{Length::metres(12.4)}},
          Row{FactorKind::feature, 1.0 - std::exp(-310.4 / (90.0 * std::numbers::pi)),
              marks::FeaturesNear{Area::squareMetres(310.4), structure::ZoneKind::spur}},
          Row{FactorKind::windward, 0.5 * (1.0 + 6.04 / 9.04),
              marks::WindOnSlope{Speed::metresPerSecond(6.04), Way::up, 0.05}},
          Row{FactorKind::shelter, 1.0 / (1.0 + std::pow(0.018 / 0.1875, 2)),
              marks::WaveState{Length::metres(412.3), Length::metres(0.118)}},
          Row{FactorKind::record, 2.0 / 3.0, marks::CatchHere{2.46, 1.23}},
          Row{FactorKind::lessTried, 1.0 / 3.0, marks::RateBetween{0.94, 4.16}},
          Row{FactorKind::trust, 1.0 / (1.0 + 0.88 * 0.88),
              marks::DepthsKnownTo{Length::metres(0.44)}}}) {
        EXPECT_EQ(of(row.kind).because, row.because) << marks::nameOf(row.kind);
        EXPECT_NEAR(of(row.kind).value, row.value, 1e-6) << marks::nameOf(row.kind);
        EXPECT_EQ(of(row.kind).weight, marks::countingWeight({}, row.kind));
    }
}

TEST_F(ToldFactors, KnowWhereThereIsNothing) {
    using marks::Reason;
    around_ = {};
    around_.trust = Length::metres(NAN);
    log_.reset();
    EXPECT_EQ(of(FactorKind::depth).because,
              Reason(marks::FishableWater{0.0, {}, {}, Depth::metres(9.144)}));
    EXPECT_EQ(of(FactorKind::dropOff).because, Reason(marks::DropOffNear{}));
    EXPECT_EQ(of(FactorKind::weedEdge).because, Reason(marks::WeedEdgeNear{}));
    EXPECT_EQ(of(FactorKind::feature).because, Reason(marks::FeaturesNear{}));
    EXPECT_EQ(wayOfWind(), Way::neither);
    wind_.speed = Speed::metresPerSecond(0.06);
    EXPECT_EQ(wayOfWind(), Way::neither);
    wind_.speed = Speed::metresPerSecond(0.04);
    EXPECT_EQ(of(FactorKind::windward).because, Reason(marks::NoWind{}));
    EXPECT_EQ(of(FactorKind::record).because, Reason(marks::LogIsSilent{}));
    EXPECT_EQ(of(FactorKind::lessTried).because, Reason(marks::NeverTried{}));
    EXPECT_EQ(of(FactorKind::trust).because, Reason(marks::DepthsKnownTo{}));
}

TEST_F(ToldFactors, KnowOfAWindThatHardlyBlowsWhereItBlowsTo) {
    wind_.speed = Speed::metresPerSecond(0.06);
    EXPECT_EQ(wayOfWind(), Way::up);
}

TEST_F(ToldFactors, KnowWhenTheWindBlowsDownTheSlope) {
    wind_.from = wind_.from->opposite();
    EXPECT_EQ(wayOfWind(), Way::down);
    EXPECT_LT(of(FactorKind::windward).value, 0.2);
}

} // namespace
