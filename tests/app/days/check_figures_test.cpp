// SPDX-License-Identifier: GPL-3.0-or-later
// What the survey day says of days against each other, of crossings, of a trip and of zones: whole
// sentences, each figure another, so that none can stand in another's place.
#include "app/days/survey_day/check_view.h"
#include "app/days/survey_day/crossings_view.h"
#include "app/days/survey_day/next_view.h"
#include "app/days/survey_day/sounding_view.h"
#include "app/days/survey_day/zone_rows.h"

#include <gtest/gtest.h>

namespace survey_day = days::survey_day;

namespace {

using preferences::UnitSystem;
using units::Length;

const wording::Words metric(UnitSystem::metric);
const wording::Words imperial(UnitSystem::imperial);

/// Five days: held, tied, out of reach of the others, agreeing, and one that something was agreed
/// for.
struct FiveDays {
    FiveDays() {
        for (int d = 0; d < 5; ++d) {
            soundings::SurveyDay day;
            day.id = soundings::SurveyDayId(d + 1);
            day.name = std::string("day ") + static_cast<char>('A' + d);
            water.days.push_back(day);
        }
        water.days[4].agreedOffset = Length::metres(-0.25);
        auto& tie = checked.tie;
        tie.offsets = {Length(), Length::metres(-0.31), Length(), Length::metres(0.029), Length()};
        tie.offsetErrors = {Length(), Length::metres(0.04), Length(), Length::metres(0.01),
                            Length()};
        tie.isHeld = {true, false, false, false, false};
        tie.isTied = {true, true, false, true, true};
        tie.crossingsWithOthers = {7, 1234, 1, 9, 3};
        tie.before.rms_m = 0.35;
        tie.after.rms_m = 0.14;
        checked.survey.days.resize(5);
    }
    survey_day::CheckView view(const wording::Words& words) {
        derived.checked = std::make_shared<const water::CheckedSurvey>(checked);
        return survey_day::checkViewOf({water, derived, words, {}});
    }
    water::Water water;
    water::CheckedSurvey checked;
    water::Derived derived;
};

TEST(CheckFigures, AnOfferIsTheDaysOwnAndNothingIsOfferedBelowThreeCentimetres) {
    FiveDays five;
    const auto view = five.view(metric);
    ASSERT_EQ(view.offers.size(), 5U);
    EXPECT_EQ(view.offers[0].words, "day A: held, the others are tied to it");
    EXPECT_EQ(view.offers[1].words,
              QStringLiteral("day B: add −0.31 m (±0.08 m), from 1,234 crossings"));
    EXPECT_EQ(view.offers[1].offset, Length::metres(-0.31));
    EXPECT_EQ(view.offers[2].words, "day C: too few crossings with other days");
    EXPECT_EQ(view.offers[3].words, "day D: agrees with the others");
    EXPECT_EQ(view.offers[4].words, QStringLiteral("day E: −0.25 m added, as agreed"));
    EXPECT_EQ(view.offers[4].offset, Length::metres(-0.25));
    for (std::size_t d = 0; d < 5; ++d) {
        EXPECT_EQ(view.offers[d].isOffered, d == 1) << d;
        EXPECT_EQ(view.offers[d].isAgreed, d == 4) << d;
        EXPECT_EQ(view.offers[d].day, five.water.days[d].id);
    }
    EXPECT_EQ(view.gain, "With all of it, crossings would differ by 0.14 m instead of 0.35 m.");
    five.checked.tie.offsets[3] = Length::metres(-0.03);
    EXPECT_TRUE(five.view(metric).offers[3].isOffered);
    EXPECT_EQ(five.view(imperial).offers[1].words,
              QStringLiteral("day B: add −1.0 ft (±0.26 ft), from 1,234 crossings"));
}

TEST(CheckFigures, ADelaySaysHowLateAndWhatItWouldBring) {
    FiveDays five;
    five.checked.delays = {{true, -1.5, 0.2, 88, 0.41, 0.17}};
    const auto view = five.view(metric);
    ASSERT_EQ(view.delays.size(), 1U);
    EXPECT_EQ(view.delays[0].words,
              QStringLiteral("day A: positions 1.5 s early (±0.4 s), from 88 crossings on slopes; "
                             "without, passes would differ by 0.17 m instead of 0.41 m"));
    EXPECT_EQ(view.delays[0].delay_s, -1.5);
    EXPECT_EQ(view.delays[0].day, five.water.days[0].id);
    five.water.days[0].agreedDelay_s = 0.8;
    EXPECT_EQ(five.view(metric).delays.at(0).words, "day A: positions 0.8 s late, as agreed");
    EXPECT_EQ(five.view(metric).delays.at(0).delay_s, 0.8);
}

TEST(CheckFigures, OneDayAloneHasNothingToBeTiedTo) {
    FiveDays five;
    five.water.days.resize(1);
    EXPECT_TRUE(five.view(metric).offers.empty());
    EXPECT_EQ(survey_day::checkViewOf({five.water, {}, metric, {}}).state,
              "nothing to look over yet");
}

TEST(CrossingFigures, TheSummaryHasEachFigureInItsOwnRow) {
    FiveDays five;
    five.checked.check = {.count = 1061,
                          .mean_m = 0.05,
                          .rms_m = 0.22,
                          .p95_m = 0.47,
                          .withinOrder1b = 0.61,
                          .withinOrder2 = 0.83};
    five.derived.checked = std::make_shared<const water::CheckedSurvey>(five.checked);
    EXPECT_EQ(survey_day::crossingsViewOf({five.water, five.derived, metric, {}}).summary,
              (std::vector<QStringList>{{"crossings", "1,061"},
                                        {"mean difference, later less earlier", "+0.05 m"},
                                        {"root mean square difference", "0.22 m"},
                                        {"95 of 100 within", "0.47 m"},
                                        {"within IHO S-44 order 1b", "61 %"},
                                        {"within IHO S-44 order 2", "83 %"}}));
}

TEST(TripFigures, SayHowLongHowFarAndWhatItBrings) {
    surface::SurveyTrip trip;
    trip.lines = {{.start = {0.0, 0.0},
                   .end = {0.0, -200.0},
                   .length = Length::metres(210.0),
                   .gain_m3 = 300.0,
                   .duration = std::chrono::seconds(331)},
                  {.start = {0.0, 200.0},
                   .end = {-100.0, 200.0},
                   .length = Length::metres(110.0),
                   .gain_m3 = 500.0,
                   .duration = std::chrono::seconds(29)}};
    trip.duration = std::chrono::minutes(47);
    trip.distance = Length::metres(1500.0);
    trip.meanHalfWidthBefore = Length::metres(0.81);
    trip.meanHalfWidthAfter = Length::metres(0.62);
    const auto view = survey_day::nextViewOf(&trip, std::nullopt, metric, 1);
    EXPECT_EQ(view.rows,
              (std::vector<QStringList>{{"line 1", "210 m", QStringLiteral("180°"), "6", "38 %"},
                                        {"line 2", "110 m", QStringLiteral("270°"), "1", "63 %"}}));
    EXPECT_EQ(view.trip,
              QStringLiteral("47 min and 1.5 km of sailing, from the launch and back, "
                             "bring the trust from ±0.81 m to ±0.62 m on average where you fish."));
    EXPECT_EQ(view.state, "2 lines, 47 min");
    const auto frame = geo::WaterFrame::centredOn({3.1, 55.2}).value();
    EXPECT_TRUE(survey_day::nextViewOf(&trip, frame, metric, 1).line.startsWith("Line 2: From "));
    EXPECT_TRUE(survey_day::nextViewOf(&trip, frame, metric, 2).line.isEmpty());
    trip.lines.pop_back();
    EXPECT_EQ(survey_day::nextViewOf(&trip, std::nullopt, metric).state, "1 line, 47 min");
}

TEST(ZoneFigures, ARowHasNameDepthsSizeAndTrustAndACardTheBankOnly) {
    structure::ZoneMap map;
    map.zones.resize(1);
    structure::Zone& zone = map.zones[0];
    zone.name = "Drop-off 3";
    zone.area = units::Area::hectares(2.0);
    zone.shallowest = units::Depth::metres(2.0);
    zone.deepest = units::Depth::metres(9.0);
    zone.edgeLength = Length::metres(300.0);
    zone.shoreTops = {{{0.0, 0.0}, {0.0, 0.9}}};
    zone.meanTrust_m = 0.7;
    EXPECT_EQ(survey_day::zoneColumns(), (QStringList{"Zone", "Depths", "Size", "Trust"}));
    EXPECT_EQ(survey_day::zoneRows(map, metric)[0],
              (QStringList{"Drop-off 3", "2 to 9 m", "300 m", QStringLiteral("±0.7 m")}));
    EXPECT_EQ(survey_day::zoneRows(map, imperial)[0][2], "984 ft");
    EXPECT_EQ(survey_day::zoneCard(map, 0, metric),
              QStringLiteral("Drop-off 3: 2.0 ha (4.9 ac); edge 300 m; depths on average within "
                             "±0.7 m."))
        << "less than a metre of bank is not worth a word";
}

TEST(SoundingFigures, ASoundingIsToldWithItsTimeOnTheWatersClockAndItsTemperature) {
    FiveDays five;
    soundings::SurveyDay& day = five.water.days[1];
    soundings::Sounding sounding;
    sounding.place = {3.1, 55.2};
    sounding.time = std::chrono::sys_days(std::chrono::year(2026) / 10 / 3) +
                    std::chrono::hours(8) + std::chrono::minutes(10) + std::chrono::seconds(5);
    day.soundings = {sounding, sounding};
    day.waterTemperature = units::Temperature::celsius(12.5);
    five.checked.survey.days[1].verdicts = {soundings::Verdict::kept, soundings::Verdict::kept};
    five.derived.checked = std::make_shared<const water::CheckedSurvey>(five.checked);
    const auto view =
        survey_day::soundingViewOf({five.water, five.derived, metric, {}}, {1, 0}).value();
    EXPECT_TRUE(view.title.startsWith("day B, ")) << view.title.toStdString();
    EXPECT_TRUE(view.title.endsWith(":10:05")) << view.title.toStdString();
    EXPECT_EQ(view.title.size(), QStringLiteral("day B, 08:10:05").size());
    EXPECT_EQ(view.place, "55.20000 N  3.10000 E");
    EXPECT_EQ(view.verdict, "kept");
    EXPECT_TRUE(view.terms[1][0].startsWith("speed of sound at 12.5"));
    EXPECT_EQ(view.terms[3][0], "water level: gauge not read");
    EXPECT_EQ(view.terms[4][0], "nothing agreed for this day");
    day.sounder.measuresBySound = false;
    EXPECT_EQ(survey_day::soundingViewOf({five.water, five.derived, metric, {}}, {1, 0})
                  .value()
                  .terms[1][0],
              "speed of sound: not by sound");
}

} // namespace
