// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/spoken_names.h"
#include "app/wording/typed_amount.h"
#include "app/wording/typed_place.h"
#include "app/wording/words.h"

#include <gtest/gtest.h>

#include <cmath>

namespace {

using preferences::UnitSystem;

constexpr double none = NAN;

/// What is typed, and what it means in SI to one and to the other; `none`: nothing.
struct Row {
    const char* text;
    double inMetric;
    double inImperial;
};

template <class Typed>
void expectRows(const std::vector<Row>& rows, const Typed& typed) {
    for (const Row& row : rows) {
        for (const auto& [units, expected] : {std::pair(UnitSystem::metric, row.inMetric),
                                              std::pair(UnitSystem::imperial, row.inImperial)}) {
            const std::optional<double> got = typed(QString::fromUtf8(row.text), units);
            EXPECT_EQ(got.has_value(), !std::isnan(expected)) << row.text;
            if (got && !std::isnan(expected)) {
                EXPECT_NEAR(*got, expected, 1e-9 * std::max(1.0, std::fabs(expected))) << row.text;
            }
        }
    }
}

const std::vector<Row>& lengthRows() {
    static const std::vector<Row> rows{{"12", 12.0, 3.6576},
                                       {" 3.6 m ", 3.6, 3.6},
                                       {"3,6m", 3.6, 3.6},
                                       {"12ft", 3.6576, 3.6576},
                                       {"12 FEET", 3.6576, 3.6576},
                                       {"1 foot", 0.3048, 0.3048},
                                       {"12' 6\"", 3.81, 3.81},
                                       {"12ft 6in", 3.81, 3.81},
                                       {"40 cm", 0.4, 0.4},
                                       {"250mm", 0.25, 0.25},
                                       {"2 km", 2000.0, 2000.0},
                                       {"0.5 mi", 804.672, 804.672},
                                       {"2 fathoms", 3.6576, 3.6576},
                                       {"1 fathom", 1.8288, 1.8288},
                                       {"3 metres", 3.0, 3.0},
                                       {"1 metre", 1.0, 1.0},
                                       {"+0.35 m", 0.35, 0.35},
                                       {"-0.35 m", -0.35, -0.35},
                                       {"−0.35 m", -0.35, -0.35},
                                       {"-1", -1.0, -0.3048},
                                       // A sign stands before all of it.
                                       {"-1 ft 6 in", -0.4572, -0.4572},
                                       {"−1ft 6in", -0.4572, -0.4572},
                                       {"2m-4m", none, none},
                                       {"2-4", none, none},
                                       {"12 6", none, none},
                                       {"12 ft 6", 3.81, 3.81},
                                       {"", none, none},
                                       {" ", none, none},
                                       {"m", none, none},
                                       {"-", none, none},
                                       {"deep", none, none},
                                       {"3 kg", none, none},
                                       {"3 m!", none, none},
                                       {"1e3", none, none}};
    return rows;
}

TEST(TypedTable, LengthsAndDepthsWithSignAndUnit) {
    expectRows(lengthRows(), [](const QString& text, UnitSystem units) -> std::optional<double> {
        const auto length = wording::lengthTyped(text, units);
        return length ? std::optional(length->inMetres()) : std::nullopt;
    });
    expectRows(lengthRows(), [](const QString& text, UnitSystem units) -> std::optional<double> {
        const auto depth = wording::depthTyped(text, units);
        return depth ? std::optional(depth->inMetres()) : std::nullopt;
    });
}

TEST(TypedTable, Areas) {
    constexpr double acre = 4046.8564224;
    expectRows({{"2", 20000.0, 2.0 * acre},
                {"2 ha", 20000.0, 20000.0},
                {"2 hectares", 20000.0, 20000.0},
                {"3ac", 3.0 * acre, 3.0 * acre},
                {"3 acres", 3.0 * acre, 3.0 * acre},
                {"1 acre", acre, acre},
                {"3 m", none, none},
                {"", none, none}},
               [](const QString& text, UnitSystem units) -> std::optional<double> {
                   const auto area = wording::areaTyped(text, units);
                   return area ? std::optional(area->inSquareMetres()) : std::nullopt;
               });
}

TEST(TypedTable, Weights) {
    constexpr double pound = 0.45359237;
    expectRows({{"5", 5.0, 5.0 * pound},
                {"5,2 kg", 5.2, 5.2},
                {"850 g", 0.85, 0.85},
                {"12 lb 8 oz", 12.5 * pound, 12.5 * pound},
                {"12lbs", 12.0 * pound, 12.0 * pound},
                {"4oz", 0.25 * pound, 0.25 * pound},
                {"5 ft", none, none},
                {"", none, none}},
               [](const QString& text, UnitSystem units) -> std::optional<double> {
                   const auto weight = wording::weightTyped(text, units);
                   return weight ? std::optional(weight->inKilograms()) : std::nullopt;
               });
}

TEST(TypedTable, Speeds) {
    expectRows({{"6", 6.0, 6.0 * 0.44704},
                {"6 m/s", 6.0, 6.0},
                {"13 mph", 13.0 * 0.44704, 13.0 * 0.44704},
                {"12 kn", 12.0 * 1852.0 / 3600.0, 12.0 * 1852.0 / 3600.0},
                {"12kt", 12.0 * 1852.0 / 3600.0, 12.0 * 1852.0 / 3600.0},
                {"12 knots", 12.0 * 1852.0 / 3600.0, 12.0 * 1852.0 / 3600.0},
                {"18 km/h", 5.0, 5.0},
                {"6 m", none, none},
                {"", none, none}},
               [](const QString& text, UnitSystem units) -> std::optional<double> {
                   const auto speed = wording::speedTyped(text, units);
                   return speed ? std::optional(speed->inMetresPerSecond()) : std::nullopt;
               });
    expectRows({{"1450", 1450.0, 1450.0 * 0.3048},
                {"1450 m/s", 1450.0, 1450.0},
                {"5000 ft/s", 1524.0, 1524.0},
                {"13 mph", none, none}},
               [](const QString& text, UnitSystem units) -> std::optional<double> {
                   const auto speed = wording::soundSpeedTyped(text, units);
                   return speed ? std::optional(speed->inMetresPerSecond()) : std::nullopt;
               });
}

TEST(TypedTable, TemperaturesAndPercents) {
    expectRows({{"8", 8.0, (8.0 - 32.0) / 1.8},
                {"8 °C", 8.0, 8.0},
                {"8c", 8.0, 8.0},
                {"46 F", 7.0 + 7.0 / 9.0, 7.0 + 7.0 / 9.0},
                {"46 °F", 7.0 + 7.0 / 9.0, 7.0 + 7.0 / 9.0},
                {"8°", 8.0, (8.0 - 32.0) / 1.8},
                {"-1.5 °C", -1.5, -1.5},
                {"8 K", none, none},
                {"", none, none}},
               [](const QString& text, UnitSystem units) -> std::optional<double> {
                   const auto t = wording::temperatureTyped(text, units);
                   return t ? std::optional(t->inCelsius()) : std::nullopt;
               });
    expectRows({{"14 %", 14.0, 14.0},
                {"14", 14.0, 14.0},
                {"8,5 percent", 8.5, 8.5},
                {"14 m", none, none},
                {"", none, none}},
               [](const QString& text, UnitSystem) { return wording::percentTyped(text); });
}

TEST(TypedTable, WhatIsShownCanBeTypedBack) {
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial}) {
        const wording::Words words(units);
        const double step = words.isMetric() ? 1.0 : 0.3048; // Shown to a tenth, or a whole foot.
        for (const double m : {-7.4, -0.35, 0.42, 3.6, 28.7}) {
            const auto level =
                wording::lengthTyped(words.levelChange(units::Length::metres(m)), units);
            ASSERT_TRUE(level);
            EXPECT_NEAR(level->inMetres(), m, 0.0501 * step) << m;
            const auto depth = wording::depthTyped(words.depth(units::Depth::metres(m)), units);
            ASSERT_TRUE(depth);
            EXPECT_NEAR(depth->inMetres(), m, 0.0501 * step) << m;
            const auto length = wording::lengthTyped(words.length(units::Length::metres(m)), units);
            ASSERT_TRUE(length);
            EXPECT_NEAR(length->inMetres(), m, 0.501 * step) << m;
        }
        const auto t =
            wording::temperatureTyped(words.temperature(units::Temperature::celsius(-0.5)), units);
        ASSERT_TRUE(t);
        EXPECT_NEAR(t->inCelsius(), -0.5, 0.06);
        const auto weight =
            wording::weightTyped(words.weight(units::Weight::kilograms(9.6)), units);
        ASSERT_TRUE(weight);
        EXPECT_NEAR(weight->inKilograms(), 9.6, 0.015);
        const auto speed =
            wording::speedTyped(words.speed(units::Speed::metresPerSecond(6.2)), units);
        ASSERT_TRUE(speed);
        EXPECT_NEAR(speed->inMetresPerSecond(), 6.2, 0.23);
        const auto area = wording::areaTyped(words.area(units::Area::hectares(4.06)), units);
        ASSERT_TRUE(area);
        EXPECT_NEAR(area->inHectares(), 4.06, 0.06);
    }
}

TEST(TypedTable, PlacesLatitudeFirst) {
    struct Place {
        const char* text;
        double lat_deg;
        double lon_deg;
    };
    for (const Place& row : {Place{"55.195;3.1041", 55.195, 3.1041},
                             {"N55° 11.70' E3° 6.246'", 55.195, 3.1041},
                             {"S55° 11.70' W3° 6.246'", -55.195, -3.1041},
                             {"55.195N 3.1041W", 55.195, -3.1041},
                             {"-55.195, -3.1041", -55.195, -3.1041},
                             {"3.1041 55.195", 3.1041, 55.195},
                             {"90, 180", 90.0, 180.0},
                             {"-90, -180", -90.0, -180.0}}) {
        const auto place = wording::placeTyped(QString::fromUtf8(row.text));
        ASSERT_TRUE(place) << row.text;
        EXPECT_NEAR(place->lat_deg, row.lat_deg, 1e-9) << row.text;
        EXPECT_NEAR(place->lon_deg, row.lon_deg, 1e-9) << row.text;
    }
    for (const char* text : {"90.01, 3", "-90.01, 3", "55, 180.01", "55, -180.01", "E 55, N 3",
                             "55 3 N", "55 3 S", "55, 3, 4", "1 2 3 4 5 6 7 8 9"}) {
        EXPECT_FALSE(wording::placeTyped(text)) << text;
    }
}

TEST(SpokenNames, EveryReasonToSetASoundingAsideHasItsWords) {
    using soundings::Verdict;
    for (const auto& [verdict, words] : {std::pair(Verdict::kept, "kept"),
                                         {Verdict::dropOut, "no echo"},
                                         {Verdict::spike, "spike"},
                                         {Verdict::doubleEcho, "double echo"},
                                         {Verdict::stuckDepth, "depth stuck"},
                                         {Verdict::positionJump, "position jumped"},
                                         {Verdict::stuckPosition, "position stuck"},
                                         {Verdict::outsideShore, "on land"},
                                         {Verdict::disagrees, "other passes disagree"},
                                         {Verdict::byHand, "by hand"}}) {
        EXPECT_EQ(wording::spoken(verdict).toStdString(), words);
    }
}

} // namespace
