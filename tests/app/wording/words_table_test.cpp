// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/words.h"

#include <gtest/gtest.h>

#include <QStringList>

// Every way of writing an amount against texts worked out by hand, in both systems of units, on
// both sides of each edge where the way of writing changes.
namespace {

using units::Area;
using units::Bearing;
using units::Depth;
using units::Length;
using wording::Words;

const Words metric(preferences::UnitSystem::metric);
const Words imperial(preferences::UnitSystem::imperial);

struct Row {
    double amount;
    const char* inMetric;
    const char* inImperial;
};

/// \param write the text of an amount in SI.
template <class Write>
void expectRows(const std::vector<Row>& rows, const Write& write) {
    for (const Row& row : rows) {
        EXPECT_EQ(write(metric, row.amount).toStdString(), row.inMetric) << row.amount;
        EXPECT_EQ(write(imperial, row.amount).toStdString(), row.inImperial) << row.amount;
    }
}

TEST(WordsTable, Depth) {
    const std::vector<Row> rows{{5.44, "5.4 m", "17.8 ft"},    {5.46, "5.5 m", "17.9 ft"},
                                {0.0, "0.0 m", "0.0 ft"},      {-0.01, "0.0 m", "0.0 ft"},
                                {-0.36, "-0.4 m", "-1.2 ft"},  {3.048, "3.0 m", "10.0 ft"},
                                {104.2, "104.2 m", "341.9 ft"}};
    expectRows(rows, [](const Words& w, double m) { return w.depth(Depth::metres(m)); });
    expectRows(rows, [](const Words& w, double m) {
        return w.depthNumber(Depth::metres(m)) + ' ' + w.depthUnit();
    });
}

TEST(WordsTable, ShortDepthWithoutANoughtBehindThePoint) {
    expectRows({{4.0, "4", "13.1"},
                {9.144, "9.1", "30"},
                {10.0, "10", "32.8"},
                {30.48, "30.5", "100"},
                {20.04, "20", "65.7"},
                {0.0, "0", "0"}},
               [](const Words& w, double m) { return w.shortDepthNumber(Depth::metres(m)); });
}

TEST(WordsTable, DepthRange) {
    expectRows({{4.0, "2 to 4 m", "6.6 to 13.1 ft"},
                {2.04, "2 m", "6.6 to 6.7 ft"},
                {2.001, "2 m", "6.6 ft"}},
               [](const Words& w, double m) {
                   return w.depthRange(Depth::metres(2.0), Depth::metres(m));
               });
    expectRows({{20.0, "over 20 m", "over 65.6 ft"}}, [](const Words& w, double m) {
        return w.depthRange(Depth::metres(m), std::nullopt);
    });
}

TEST(WordsTable, FineDepthAndTrust) {
    expectRows(
        {{0.25, "0.25 m", "0.82 ft"}, {0.3048, "0.30 m", "1.00 ft"}, {0, "0.00 m", "0.00 ft"}},
        [](const Words& w, double m) { return w.fineDepth(Depth::metres(m)); });
    expectRows({{0.21, "±0.2 m", "±0.7 ft"}, {1.26, "±1.3 m", "±4.1 ft"}},
               [](const Words& w, double m) { return w.plusMinus(Depth::metres(m)); });
}

TEST(WordsTable, Length) {
    expectRows({{0.0, "0.0 m", "0 ft"},
                {18.34, "18.3 m", "60 ft"},
                {99.94, "99.9 m", "328 ft"},
                {100.0, "100 m", "328 ft"},
                {999.4, "999 m", "3279 ft"},
                {1000.0, "1.0 km", "3281 ft"},
                {1609.0, "1.6 km", "5279 ft"},
                {1609.4, "1.6 km", "1.0 mi"},
                {2896.8, "2.9 km", "1.8 mi"},
                {-2.5, "-2.5 m", "-8 ft"}},
               [](const Words& w, double m) { return w.length(Length::metres(m)); });
    expectRows({{0.784, "78 cm", "30.9 in"}, {0.0, "0 cm", "0.0 in"}},
               [](const Words& w, double m) { return w.fishLength(Length::metres(m)); });
}

TEST(WordsTable, LevelAboveAndBelowTheChart) {
    expectRows({{0.35, "+0.35 m", "+1.1 ft"},
                {-0.35, "−0.35 m", "−1.1 ft"},
                {0.0, "±0.00 m", "±0.0 ft"},
                {0.004, "±0.00 m", "±0.0 ft"},
                {-0.004, "±0.00 m", "±0.0 ft"},
                {0.006, "+0.01 m", "±0.0 ft"},
                {-0.02, "−0.02 m", "−0.1 ft"},
                {10.0, "+10.00 m", "+32.8 ft"},
                {-30.48, "−30.48 m", "−100.0 ft"}},
               [](const Words& w, double m) { return w.levelChange(Length::metres(m)); });
}

TEST(WordsTable, Area) {
    expectRows({{212.0, "0.02 ha", "0.05 ac"},
                {994.0, "0.10 ha", "0.2 ac"},
                {1000.0, "0.1 ha", "0.2 ac"},
                {40600.0, "4.1 ha", "10.0 ac"},
                {998000.0, "99.8 ha", "247 ac"},
                {1000000.0, "100 ha", "247 ac"}},
               [](const Words& w, double m2) { return w.area(Area::squareMetres(m2)); });
    expectRows({{40600.0, "4.1 ha (10.0 ac)", "10.0 ac (4.1 ha)"}},
               [](const Words& w, double m2) { return w.areaInBoth(Area::squareMetres(m2)); });
    expectRows({{40600.0, "4.06", "10.03"}},
               [](const Words& w, double m2) { return w.areaNumber(Area::squareMetres(m2)); });
    EXPECT_DOUBLE_EQ(metric.areaAmount(Area::squareMetres(40600.0)), 4.06);
    EXPECT_NEAR(imperial.areaAmount(Area::squareMetres(40600.0)), 40600.0 / 4046.8564224, 1e-9);
}

TEST(WordsTable, Volume) {
    using units::Volume;
    expectRows({{0.0, "0 m³", "0 ac-ft"},
                {229503.4, "229,503 m³", "186 ac-ft"},
                {999999.4, "999,999 m³", "811 ac-ft"},
                {1e6, "1.00 million m³", "811 ac-ft"},
                {1.634e7, "16.34 million m³", "13,247 ac-ft"}},
               [](const Words& w, double m3) { return w.volume(Volume::cubicMetres(m3)); });
    expectRows({{229503.4, "229.5", "186.1"}},
               [](const Words& w, double m3) { return w.volumeNumber(Volume::cubicMetres(m3)); });
    EXPECT_DOUBLE_EQ(metric.volumeAmount(Volume::cubicMetres(229503.0)), 229.503);
    EXPECT_NEAR(imperial.volumeAmount(Volume::cubicMetres(229503.0)),
                229503.0 / (4046.8564224 * 0.3048), 1e-9);
}

TEST(WordsTable, Weight) {
    expectRows({{5.67, "5.67 kg", "12 lb 8 oz"},
                {0.0, "0.00 kg", "0 lb 0 oz"},
                {0.4535, "0.45 kg", "1 lb 0 oz"}, // 15.997 oz
                {0.4252, "0.43 kg", "0 lb 15 oz"},
                {18.1437, "18.14 kg", "40 lb 0 oz"}},
               [](const Words& w, double kg) { return w.weight(units::Weight::kilograms(kg)); });
}

TEST(WordsTable, SpeedAndTemperature) {
    using units::Speed;
    expectRows({{0.0, "0 m/s", "0 mph"},
                {4.47, "4.5 m/s", "10 mph"},
                {6.0, "6 m/s", "13 mph"},
                {6.2, "6.2 m/s", "14 mph"},
                {10.0, "10 m/s", "22 mph"}},
               [](const Words& w, double v) { return w.speed(Speed::metresPerSecond(v)); });
    expectRows({{1482.4, "1482 m/s", "4864 ft/s"}, {1500.0, "1500 m/s", "4921 ft/s"}},
               [](const Words& w, double v) { return w.soundSpeed(Speed::metresPerSecond(v)); });
    expectRows(
        {{12.5, "12.5 °C", "54.5 °F"}, {0.0, "0.0 °C", "32.0 °F"}, {-1.04, "-1.0 °C", "30.1 °F"}},
        [](const Words& w, double c) { return w.temperature(units::Temperature::celsius(c)); });
}

TEST(WordsTable, UnitsOfBareFigures) {
    EXPECT_EQ(metric.depthUnit() + metric.speedUnit() + metric.areaUnit() + metric.volumeUnit(),
              "mm/sha1000 m³");
    EXPECT_EQ(imperial.depthUnit() + ' ' + imperial.speedUnit() + ' ' + imperial.areaUnit() + ' ' +
                  imperial.volumeUnit(),
              "ft mph ac ac-ft");
    EXPECT_DOUBLE_EQ(metric.depthAmount(Depth::metres(3.048)), 3.048);
    EXPECT_DOUBLE_EQ(imperial.depthAmount(Depth::metres(3.048)), 10.0);
    EXPECT_TRUE(metric.isMetric());
    EXPECT_FALSE(imperial.isMetric());
}

TEST(WordsTable, Bearing) {
    for (const auto& [degrees, text] : {std::pair(0.0, "000°"),
                                        {7.4, "007°"},
                                        {7.6, "008°"},
                                        {83.5, "084°"},
                                        {300.0, "300°"},
                                        {359.4, "359°"},
                                        {359.6, "000°"}}) {
        EXPECT_EQ(Words::bearing(Bearing::degrees(degrees)).toStdString(), text);
    }
}

TEST(WordsTable, WindHasAPointEveryTwentyTwoAndAHalfDegrees) {
    const QStringList points{"N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE",
                             "S", "SSW", "SW", "WSW", "W", "WNW", "NW", "NNW"};
    for (int i = 0; i < 16; ++i) {
        for (const double off : {-11.2, 0.0, 11.2}) {
            EXPECT_EQ(Words::windPoint(Bearing::degrees(22.5 * i + off)), points[i]) << i << off;
        }
    }
    const logbook::Wind wind{Bearing::degrees(47.0), units::Speed::metresPerSecond(6.0)};
    EXPECT_EQ(metric.wind(wind), "NE 047° 6 m/s");
    EXPECT_EQ(imperial.wind(wind), "NE 047° 13 mph");
}

TEST(WordsTable, WindThatNobodySaidIsNoCalm) {
    const auto from = Bearing::degrees(47.0);
    EXPECT_EQ(metric.wind({}), "wind not said");
    EXPECT_EQ(metric.wind({from, {}}), "NE 047°, strength not said");
    EXPECT_EQ(metric.wind({{}, units::Speed::metresPerSecond(3.0)}), "variable 3 m/s");
    EXPECT_EQ(metric.wind({{}, units::Speed()}), "calm");
    EXPECT_EQ(metric.wind({from, units::Speed()}), "NE 047° 0 m/s");
}

TEST(WordsTable, PlaceInEveryQuarterOfTheEarth) {
    EXPECT_EQ(Words::place({3.112724, 55.203406}), "55.20341 N  3.11272 E");
    EXPECT_EQ(Words::place({-3.112724, 55.203406}), "55.20341 N  3.11272 W");
    EXPECT_EQ(Words::place({3.112724, -55.203406}), "55.20341 S  3.11272 E");
    EXPECT_EQ(Words::place({-179.9, -0.5}), "0.50000 S  179.90000 W");
    EXPECT_EQ(Words::place({0.0, 0.0}), "0.00000 N  0.00000 E");
}

TEST(WordsTable, SharesSlopesCountsRatesHoursDays) {
    EXPECT_EQ(Words::share(0.424), "42 %");
    EXPECT_EQ(Words::share(1.0), "100 %");
    EXPECT_EQ(Words::slope(8.46), "8.5 %");
    EXPECT_EQ(Words::slope(9.0), "9 %");
    EXPECT_EQ(Words::slope(10.4), "10 %");
    EXPECT_EQ(Words::slope(100.0), "100 %");
    EXPECT_EQ(Words::count(0), "0");
    EXPECT_EQ(Words::count(999), "999");
    EXPECT_EQ(Words::count(1234567), "1,234,567");
    EXPECT_EQ(Words::rate(0.0), "0.0");
    EXPECT_EQ(Words::rate(9.94), "9.9");
    EXPECT_EQ(Words::rate(10.0), "10");
    EXPECT_EQ(Words::rate(12.6), "13");
    EXPECT_EQ(Words::hours(0.0), "0 min");
    EXPECT_EQ(Words::hours(0.99), "59 min");
    EXPECT_EQ(Words::hours(0.995), "1 h 00");
    EXPECT_EQ(Words::hours(7.0 + 10.0 / 60.0), "7 h 10");
    EXPECT_EQ(Words::hours(12.05), "12 h 03");
    using namespace std::chrono;
    EXPECT_EQ(Words::day(2026y / November / 27), "Fri 27 Nov 2026");
    EXPECT_EQ(Words::day(2028y / February / 29), "Tue 29 Feb 2028");
    EXPECT_EQ(Words::day(2026y / January / 1), "Thu 1 Jan 2026");
}

} // namespace
