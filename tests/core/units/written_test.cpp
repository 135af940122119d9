// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/written.h"
#include "core/units/written_time.h"

#include <cmath>

#include <gtest/gtest.h>

namespace {

using units::Bare;
using namespace std::chrono_literals;

constexpr double none = NAN;

/// What is written, and what it is in SI to one who counts in metres and to one who counts in feet;
/// `none`: refused.
struct Row {
    const char* text;
    double inMetric;
    double inImperial;
};

template <class Read>
void expectRows(const std::vector<Row>& rows, const Read& read) {
    for (const Row& row : rows) {
        for (const auto& [bare, expected] :
             {std::pair(Bare::metric, row.inMetric), std::pair(Bare::imperial, row.inImperial)}) {
            const std::optional<double> got = read(row.text, bare);
            ASSERT_EQ(got.has_value(), !std::isnan(expected)) << row.text;
            if (got) {
                EXPECT_NEAR(*got, expected, 1e-9 * std::max(1.0, std::fabs(expected))) << row.text;
            }
        }
    }
}

// 21 lb 4 oz, 12 lb 8 oz, 20 lb by the pound of 0.45359237 kg.
constexpr double lb21oz4 = 9.6388378625;
constexpr double lb12oz8 = 5.669904625;

TEST(Written, Weights) {
    expectRows({{"21-4", lb21oz4, lb21oz4},
                {"12-8", lb12oz8, lb12oz8},
                {"12-16", none, none},
                {"-12", -12.0, -5.44310844},
                {"12lb 8", lb12oz8, lb12oz8},
                {"12lb 16", none, none},
                {"12lbs 8ozs", lb12oz8, lb12oz8},
                {"12lb8oz", lb12oz8, lb12oz8},
                {"12 LB 8 OZ", lb12oz8, lb12oz8},
                {"20 pounds", 9.0718474, 9.0718474},
                {"21lb 4oz", lb21oz4, lb21oz4},
                {"21 pounds 4 ounces", lb21oz4, lb21oz4},
                {"9,6 kg", 9.6, 9.6},
                {"9.6", 9.6, 4.354486752},
                {"1,200 g", 1.2, 1.2},
                {"1200 g", 1.2, 1.2},
                {"1200 grams", 1.2, 1.2},
                {"2 kilos", 2.0, 2.0},
                {"1,200 kg", none, none},
                {"1,200", none, none},
                {"0,250 kg", 0.25, 0.25},
                {"1,25 kg", 1.25, 1.25},
                {"1,2,3 kg", none, none},
                {"8oz", 0.226796185, 0.226796185},
                {"12 stone", none, none},
                {"", none, none},
                {"kg", none, none},
                {"12 8", none, none},
                {"1 kg 200", none, none}},
               [](const char* text, Bare bare) {
                   const auto weight = units::weightWritten(text, bare);
                   return weight ? std::optional(weight->inKilograms()) : std::nullopt;
               });
}

TEST(Written, LengthsAndThoseOfFish) {
    expectRows({{"12", 12.0, 3.6576},
                {"12ft 6", 3.81, 3.81},
                {"12' 6\"", 3.81, 3.81},
                {"12′ 6″", 3.81, 3.81},
                {"12' 13", none, none},
                {"-1 ft 6 in", -0.4572, -0.4572},
                {"−0.35 m", -0.35, -0.35},
                {"1,200 m", none, none},
                {"1,200 mm", 1.2, 1.2},
                {"2m-4m", none, none},
                {"3 m 20", none, none}},
               [](const char* text, Bare bare) {
                   const auto length = units::lengthWritten(text, bare);
                   return length ? std::optional(length->inMetres()) : std::nullopt;
               });
    expectRows({{"78 cm", 0.78, 0.78},
                {"78", 0.78, 1.9812},
                {"31 in", 0.7874, 0.7874},
                {"0.78 m", 0.78, 0.78},
                {"1,050 mm", 1.05, 1.05}},
               [](const char* text, Bare bare) {
                   const auto length = units::fishLengthWritten(text, bare);
                   return length ? std::optional(length->inMetres()) : std::nullopt;
               });
}

TEST(Written, WindsFromSixteenPointsOrDegrees) {
    const auto degrees = [](const char* text) {
        const auto bearing = units::bearingWritten(text);
        return bearing ? bearing->inDegrees() : -1.0;
    };
    EXPECT_EQ(degrees("SW"), 225.0);
    EXPECT_EQ(degrees("ssw"), 202.5);
    EXPECT_EQ(degrees(" N "), 0.0);
    EXPECT_EQ(degrees("nnw"), 337.5);
    EXPECT_EQ(degrees("230"), 230.0);
    EXPECT_EQ(degrees("230°"), 230.0);
    EXPECT_EQ(degrees("361"), -1.0);
    EXPECT_EQ(degrees("-10"), -1.0);
    EXPECT_EQ(degrees("sws"), -1.0);
    EXPECT_NEAR(units::speedWritten("12 kn", Bare::metric)->inKnots(), 12.0, 1e-12);
}

TEST(Written, TimesOfTheDay) {
    const auto minutes = [](const char* text) {
        const auto time = units::timeWritten(text);
        return time ? std::chrono::duration_cast<std::chrono::minutes>(*time).count() : -1;
    };
    EXPECT_EQ(minutes("0630"), 390);
    EXPECT_EQ(minutes("6.30"), 390);
    EXPECT_EQ(minutes("06:30"), 390);
    EXPECT_EQ(minutes("6:30"), 390);
    EXPECT_EQ(minutes("630"), 390);
    EXPECT_EQ(minutes("5pm"), 17 * 60);
    EXPECT_EQ(minutes("5.30 PM"), 17 * 60 + 30);
    EXPECT_EQ(minutes("12 am"), 0);
    EXPECT_EQ(minutes("12pm"), 12 * 60);
    EXPECT_EQ(minutes("2359"), 23 * 60 + 59);
    for (const char* text :
         {"2400", "2460", "17", "6.3", "13pm", "0pm", "pm", "", "6:61", "660", "six"}) {
        EXPECT_EQ(minutes(text), -1) << text;
    }
}

TEST(Written, DaysWithTimes) {
    const auto london = units::Clock::inZone("Europe/London").value();
    const auto near = units::momentFrom("2026-10-03T12:00:00Z", london).value();
    const auto iso = [&](const char* text) {
        const auto moment = units::momentWritten(text, near, london);
        return moment ? units::isoText(*moment) : std::string("none");
    };
    EXPECT_EQ(iso("25/11/26 7:40"), "2026-11-25T07:40:00Z");
    EXPECT_EQ(iso("25.11.2026 0740"), "2026-11-25T07:40:00Z");
    EXPECT_EQ(iso("3/7/26 5pm"), "2026-07-03T16:00:00Z") << "the day comes first, by summer time";
    EXPECT_EQ(iso("2026-11-25 07:40"), "2026-11-25T07:40:00Z");
    EXPECT_EQ(iso("7.40"), "2026-10-03T06:40:00Z") << "on the day that is near";
    for (const char* text :
         {"11/25/26 7:40", "31/2/26 7:40", "25/11 7:40", "25/11/26", "25/11/126 7:40"}) {
        EXPECT_EQ(iso(text), "none") << text;
    }
}

TEST(SpanWritten, IsHoursAndMinutesAsPeopleWriteThem) {
    using std::chrono::minutes;
    for (const auto& [text, expected] : {std::pair("1:30", 90),
                                         {"0:45", 45},
                                         {"1 h 30", 90},
                                         {"1h30", 90},
                                         {"1 h 05 min", 65},
                                         {"90 min", 90},
                                         {"45min", 45},
                                         {"1.5 h", 90},
                                         {"1,5", 90},
                                         {"2", 120},
                                         {"2 hours", 120},
                                         {" 3 HRS ", 180},
                                         {"24", 1440}}) {
        EXPECT_EQ(units::spanWritten(text), std::optional<std::chrono::seconds>(minutes(expected)))
            << text;
    }
}

TEST(SpanWritten, IsNothingForWhatIsNone) {
    for (const char* text : {"", "h", "min", "0", "-1", "1:60", "1:5", "1 h 60", "25", "soon",
                             "1 h h", "1:30 h", "nan"}) {
        EXPECT_FALSE(units::spanWritten(text)) << text;
    }
}

} // namespace
