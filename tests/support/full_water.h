// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/water/document/water.h"

#include "tests/support/bowl.h"

#include <chrono>

namespace support {

inline units::Moment fullWaterMorning() {
    return std::chrono::sys_days(std::chrono::year(2026) / 9 / 5) + std::chrono::hours(8);
}

/// A second day over the bowl: three lines from south to north with times, by a table of the gauge.
inline soundings::SurveyDay timedBowlDay() {
    soundings::SurveyDay day;
    day.id = soundings::SurveyDayId(2);
    day.name = "2026-09-05";
    day.source = "second.nmea";
    day.gauge = soundings::Gauge::table(
        {{fullWaterMorning(), units::WaterLevel::metresOnGauge(10.2)},
         {fullWaterMorning() + std::chrono::hours(1), units::WaterLevel::metresOnGauge(10.3)}});
    day.sounder.draft = units::Depth::metres(0.3);
    day.waterTemperature = units::Temperature::celsius(18.0);
    day.agreedOffset = units::Length::metres(0.05);
    day.agreedDelay_s = 1.0;
    day.passStarts = {0, 30, 60};
    for (int i = 0; i < 90; ++i) {
        const double x = -0.5 + 0.5 * (i / 30);
        const double y = -0.9 + 1.8 * (i % 30) / 29.0;
        day.soundings.edit().push_back(
            {{3.1 + 0.0038 * x, 55.2 + 0.0019 * y},
             units::Depth::metres(7.9 - 4.0 * std::hypot(x, y)),
             fullWaterMorning() + std::chrono::seconds(4 * i + 600 * (i / 30))});
    }
    day.setAsideByHand = {5};
    day.keptByHand = {40};
    return day;
}

inline logbook::Stay fullStay() {
    logbook::Stay stay;
    stay.id = logbook::StayId(31);
    stay.start = fullWaterMorning();
    stay.end = fullWaterMorning() + std::chrono::hours(2);
    stay.place = {3.1, 55.2};
    stay.rods = 2;
    stay.bait = "worm";
    stay.conditions = {units::Bearing::degrees(225.0), units::Speed::metresPerSecond(4.0),
                       units::Temperature::celsius(14.0), units::WaterLevel::metresOnGauge(9.75),
                       "overcast"};
    stay.note = "calm";
    stay.who = "Anna";
    stay.baitPlace = geo::LonLat{3.1003, 55.2001};
    stay.photograph = "photographs/morning.jpg";
    stay.others = {{"moon", "full"}};
    stay.runs = {{logbook::FishId(32),
                  fullWaterMorning() + std::chrono::minutes(40),
                  true,
                  "bream",
                  "corn",
                  units::Weight::pounds(5.0),
                  units::Length::metres(0.5),
                  units::Depth::metres(4.0),
                  "dark",
                  "Ben",
                  "lip",
                  true,
                  geo::LonLat{3.1004, 55.2002},
                  "photographs/bream.jpg",
                  {{"moon", "full"}}}};
    return stay;
}

/// A water in which no member is as it comes: what a test changes in it is seen.
inline water::Water fullWater() {
    water::Water full;
    full.name = "Bowl";
    full.clock = units::Clock::inZone("Europe/London").value();
    full.chartLevel = units::WaterLevel::metresOnGauge(10.0);
    full.frame = geo::WaterFrame::centredOn({3.1, 55.2}).value();
    full.shoreline = bowlShore();
    full.shoreline.edit()[0].islands = {
        {{3.1020, 55.1990}, {3.1025, 55.1990}, {3.1025, 55.1993}, {3.1020, 55.1993}}};
    soundings::SurveyDay first = bowlDay();
    first.id = soundings::SurveyDayId(1);
    first.name = "first";
    first.source = "first.csv";
    first.gauge = soundings::Gauge::constant(units::WaterLevel::metresOnGauge(10.1));
    first.passStarts = {0, 450};
    full.days = {first, timedBowlDay()};
    full.leadLine = {{soundings::LeadLineId(11),
                      {3.0990, 55.2004},
                      units::Depth::metres(6.9),
                      soundings::Bottom::weed},
                     {soundings::LeadLineId(12), {3.1012, 55.2009}, units::Depth::metres(5.5), {}}};
    full.weedNotes = {{weed::WeedNoteId(21),
                       {3.0972, 55.1992},
                       weed::Growth::thick,
                       units::Length::metres(1.5),
                       units::dayFrom("2025-08-20")},
                      {weed::WeedNoteId(22),
                       {3.0975, 55.2008},
                       weed::Growth::thin,
                       {},
                       {},
                       weed::Extent::line,
                       {{3.0975, 55.2008}, {3.0979, 55.2010}, {3.0984, 55.2009}}}};
    full.places = {{"jetty", {3.0961, 55.2}}};
    full.houseRules.rodLimit = 4;
    full.houseRules.closed = {
        {"nursery",
         {{{{3.0962, 55.2010}, {3.0980, 55.2010}, {3.0980, 55.2019}, {3.0962, 55.2019}},
           {{{3.0968, 55.2013}, {3.0974, 55.2013}, {3.0974, 55.2016}, {3.0968, 55.2016}}}}}}};
    full.houseRules.season = logbook::Season{std::chrono::June / 16, std::chrono::March / 14};
    full.houseRules.notes = {"no lights"};
    full.settings.cell = units::Length::metres(14.0);
    full.settings.bands =
        contours::Bands::make({units::Depth::metres(2.0), units::Depth::metres(5.0)},
                              units::Depth::metres(7.0))
            .value();
    full.settings.sectionArea = units::Area::hectares(3.0);
    full.settings.secchi = units::Depth::metres(1.5);
    full.settings.weedLeft = 0.9;
    full.settings.structure = {units::Length::metres(43.0), units::Length::metres(130.0), 2.5,
                               units::Length::metres(0.2), units::Area::squareMetres(600.0)};
    full.sectionNames = {{{3.0985, 55.1990}, "Rushes", 2}};
    full.numbering.waters = {{7, true, {{{{3.2, 55.3}, {3.21, 55.3}, {3.2, 55.31}}, {}}}}};
    full.numbering.wantedArea = units::Area::hectares(3.0);
    full.sectionChanges = {
        {sections::SectionChange::Kind::split, {}, {{3.0950, 55.2003}, {3.1050, 55.2003}}},
        {sections::SectionChange::Kind::border,
         {{3.0985, 55.1995}, {3.1015, 55.1995}},
         {{3.1, 55.1970}, {3.1, 55.2030}}}};
    full.pinnedMarks = {{"mine",
                         {3.0995, 55.2002},
                         {geo::LonLat{3.0993, 55.20013},
                          std::nullopt,
                          {{3.0995, 55.2004}},
                          units::Bearing::degrees(240.0)}}};
    full.banned = {{"snags", {{3.1005, 55.2003}, {3.1009, 55.2003}, {3.1009, 55.2006}}}};
    full.beliefProfiles = {{"autumn", {}}};
    full.beliefProfiles[0].weights.set(marks::FactorKind::shelter, 1.5);
    full.sheets = {{units::dayFrom("2026-10-02").value(),
                    {{2, "reef", {3.104, 55.201}, {}, units::Moment(std::chrono::hours(2))}}}};
    full.dayByHand = {{{3.0995, 55.2002}, {3.1, 55.2}},
                      {{{3.0995, 55.2002}, std::chrono::minutes(40)}}};
    full.plan.day = {
        std::chrono::year(2026) / 10 / 3,
        std::chrono::hours(7),
        std::chrono::hours(15),
        {units::Bearing::degrees(240.0), units::Speed::metresPerSecond(5.0)},
        marks::LaterWind{std::chrono::hours(12),
                         {units::Bearing::degrees(200.0), units::Speed::metresPerSecond(7.0)}},
        units::Length::metres(-0.4),
        units::Temperature::celsius(12.0),
        std::chrono::minutes(100)};
    full.plan.launch = geo::LonLat{3.0961, 55.2};
    full.log = {fullStay()};
    return full;
}

} // namespace support
