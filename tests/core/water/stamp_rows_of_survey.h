// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/core/water/stamp_rows.h"
#include "tests/support/full_water.h"

#include <array>

namespace water {

using namespace std::chrono_literals;

/// The days' soundings and what was true that day.
inline constexpr std::array dayRows{
    StampRow{"day.id", [](Water& w) { w.days[0].id = soundings::SurveyDayId(77); }, noStep},
    StampRow{"day.name", [](Water& w) { w.days[0].name = "other"; }, noStep},
    StampRow{"day.source", [](Water& w) { w.days[0].source = "other.csv"; }, noStep},
    StampRow{"sounder.draft", [](Water& w) { w.days[1].sounder.draft = units::Depth::metres(0.4); },
             fromReduce},
    StampRow{"sounder.assumedSoundSpeed",
             [](Water& w) {
                 w.days[1].sounder.assumedSoundSpeed = units::Speed::metresPerSecond(1450.0);
             },
             fromReduce},
    StampRow{"sounder.measuresBySound", [](Water& w) { w.days[1].sounder.measuresBySound = false; },
             fromReduce},
    StampRow{"gauge, constant",
             [](Water& w) {
                 w.days[0].gauge =
                     soundings::Gauge::constant(units::WaterLevel::metresOnGauge(10.15));
             },
             fromReduce},
    StampRow{"gauge, unknown", [](Water& w) { w.days[0].gauge = {}; }, fromReduce},
    StampRow{"gauge, level of a reading",
             [](Water& w) {
                 auto readings = w.days[1].gauge.readings();
                 readings[1].level = units::WaterLevel::metresOnGauge(10.4);
                 w.days[1].gauge = soundings::Gauge::table(readings);
             },
             fromReduce},
    StampRow{"gauge, time of a reading",
             [](Water& w) {
                 auto readings = w.days[1].gauge.readings();
                 readings[1].time += 30min;
                 w.days[1].gauge = soundings::Gauge::table(readings);
             },
             fromReduce},
    StampRow{
        "gauge, one reading more",
        [](Water& w) {
            auto readings = w.days[1].gauge.readings();
            readings.push_back({readings[0].time + 10min, units::WaterLevel::metresOnGauge(10.9)});
            w.days[1].gauge = soundings::Gauge::table(readings);
        },
        fromReduce},
    StampRow{"day.waterTemperature",
             [](Water& w) { w.days[1].waterTemperature = units::Temperature::celsius(9.0); },
             fromReduce},
    StampRow{"day.waterTemperature, absent", [](Water& w) { w.days[1].waterTemperature.reset(); },
             fromReduce},
    StampRow{"day.agreedOffset",
             [](Water& w) { w.days[1].agreedOffset = units::Length::metres(-0.05); }, fromReduce},
    StampRow{"day.agreedOffset, absent", [](Water& w) { w.days[1].agreedOffset.reset(); },
             fromReduce},
    StampRow{"day.agreedDelay_s", [](Water& w) { w.days[1].agreedDelay_s = -1.0; }, fromReduce},
    StampRow{"day.agreedDelay_s, absent", [](Water& w) { w.days[1].agreedDelay_s.reset(); },
             fromReduce},
    StampRow{"day.passStarts",
             [](Water& w) {
                 w.days[1].passStarts = {0, 30};
             },
             fromReduce},
    StampRow{"day.setAsideByHand", [](Water& w) { w.days[1].setAsideByHand = {6}; }, fromReduce},
    StampRow{"day.keptByHand", [](Water& w) { w.days[1].keptByHand = {41}; }, fromReduce},
    StampRow{"kept instead of set aside",
             [](Water& w) {
                 w.days[1].keptByHand = {5, 40};
                 w.days[1].setAsideByHand.edit().clear();
             },
             fromReduce},
    StampRow{"sounding.place.lon_deg",
             [](Water& w) { w.days[1].soundings.edit()[10].place.lon_deg += 1e-5; }, fromReduce},
    StampRow{"sounding.place.lat_deg",
             [](Water& w) { w.days[1].soundings.edit()[10].place.lat_deg += 1e-5; }, fromReduce},
    StampRow{"sounding.shown",
             [](Water& w) { w.days[1].soundings.edit()[89].shown += units::Depth::metres(0.01); },
             fromReduce},
    StampRow{"sounding.time", [](Water& w) { *w.days[1].soundings.edit()[70].time += 1ms; },
             fromReduce},
    StampRow{"sounding.time, absent", [](Water& w) { w.days[1].soundings.edit()[70].time.reset(); },
             fromReduce},
    StampRow{"one sounding less", [](Water& w) { w.days[0].soundings.edit().pop_back(); },
             fromReduce},
    StampRow{"one day less", [](Water& w) { w.days.pop_back(); }, fromReduce},
    StampRow{"one day more",
             [](Water& w) {
                 w.days.push_back(w.days[0]);
                 w.days[2].id = soundings::SurveyDayId(3);
             },
             fromReduce},
    StampRow{"days in another order", [](Water& w) { std::swap(w.days[0], w.days[1]); },
             fromReduce}};

/// Facts and shoreline.
inline constexpr std::array factRows{
    StampRow{"name", [](Water& w) { w.name = "Other"; }, noStep},
    StampRow{"clock", [](Water& w) { w.clock = units::Clock(); }, onlyPlan},
    StampRow{"chartLevel", [](Water& w) { w.chartLevel = units::WaterLevel::metresOnGauge(9.7); },
             fromReduce},
    StampRow{"frame, east",
             [](Water& w) {
                 w.frame = geo::WaterFrame::centredOn({3.11, 55.2}).value();
             },
             fromReduce},
    StampRow{"frame, north",
             [](Water& w) {
                 w.frame = geo::WaterFrame::centredOn({3.1, 55.21}).value();
             },
             fromReduce},
    StampRow{"shoreline, longitude of a corner",
             [](Water& w) { w.shoreline.edit()[0].outer[1].lon_deg += 3e-4; }, fromReduce},
    StampRow{"shoreline, latitude of a corner",
             [](Water& w) { w.shoreline.edit()[0].outer[2].lat_deg += 3e-4; }, fromReduce},
    StampRow{"shoreline, longitude on an island",
             [](Water& w) { w.shoreline.edit()[0].islands[0][1].lon_deg += 3e-4; }, fromReduce},
    StampRow{"shoreline, latitude on an island",
             [](Water& w) { w.shoreline.edit()[0].islands[0][2].lat_deg += 3e-4; }, fromReduce},
    StampRow{"shoreline, no island", [](Water& w) { w.shoreline.edit()[0].islands.clear(); },
             fromReduce},
    StampRow{"shoreline, one corner more",
             [](Water& w) {
                 w.shoreline.edit()[0].outer.push_back({3.0955, 55.2});
             },
             fromReduce},
    StampRow{
        "shoreline, one piece more",
        [](Water& w) {
            w.shoreline.edit().push_back({{{3.105, 55.2}, {3.106, 55.2}, {3.106, 55.201}}, {}});
        },
        fromReduce},
    StampRow{"places", [](Water& w) { w.places[0].place.lon_deg += 0.001; }, onlyPlan},
    StampRow{"place.name", [](Water& w) { w.places[0].name = "slip"; }, onlyPlan},
    StampRow{"one place more", [](Water& w) { w.places.push_back(w.places[0]); }, onlyPlan},
    StampRow{"pinnedMark.name", [](Water& w) { w.pinnedMarks[0].name = "yours"; }, onlyPlan},
    StampRow{"pinnedMark.place", [](Water& w) { w.pinnedMarks[0].place.lat_deg += 1e-4; },
             onlyPlan},
    StampRow{"no pinned mark", [](Water& w) { w.pinnedMarks.clear(); }, onlyPlan},
    StampRow{"banned.name", [](Water& w) { w.banned[0].name = "roots"; }, onlyPlan},
    StampRow{"banned.ring, east", [](Water& w) { w.banned[0].ring[1].lon_deg += 1e-4; }, onlyPlan},
    StampRow{"banned.ring, north", [](Water& w) { w.banned[0].ring[2].lat_deg += 1e-4; }, onlyPlan},
    StampRow{"one banned water more",
             [](Water& w) {
                 w.banned.push_back({"", {{3.0990, 55.1997}, {3.0994, 55.1997}, {3.0994, 55.2}}});
             },
             onlyPlan},
    StampRow{"no banned water", [](Water& w) { w.banned.clear(); }, onlyPlan},
    StampRow{"profile.name", [](Water& w) { w.beliefProfiles[0].name = "spring"; }, noStep},
    StampRow{"profile.weights",
             [](Water& w) { w.beliefProfiles[0].weights.set(marks::FactorKind::depth, 2.0); },
             noStep},
    StampRow{"numbering.number", [](Water& w) { w.numbering.waters.edit()[0].number = 12; },
             noStep},
    StampRow{"numbering.isOnMap", [](Water& w) { w.numbering.waters.edit()[0].isOnMap = false; },
             noStep},
    StampRow{"numbering.pieces", [](Water& w) { w.numbering.waters.edit()[0].pieces.clear(); },
             noStep},
    StampRow{"numbering.parts",
             [](Water& w) { w.numbering.parts.edit().push_back(w.numbering.waters[0].pieces); },
             noStep},
    StampRow{"numbering.wantedArea",
             [](Water& w) { w.numbering.wantedArea = units::Area::hectares(9.0); }, noStep},
    StampRow{"no profile", [](Water& w) { w.beliefProfiles.clear(); }, noStep},
    StampRow{"sheet.day", [](Water& w) { w.sheets[0].day += std::chrono::years(1); }, noStep},
    StampRow{"sheet.stop", [](Water& w) { w.sheets[0].stops[0].called = "spit"; }, noStep},
    StampRow{"no sheet", [](Water& w) { w.sheets.clear(); }, noStep},
    StampRow{"pinnedMark.laid.bow", [](Water& w) { w.pinnedMarks[0].laid.bow->lat_deg += 4e-5; },
             onlyPlan},
    StampRow{"pinnedMark.laid.bow, absent", [](Water& w) { w.pinnedMarks[0].laid.bow.reset(); },
             onlyPlan},
    StampRow{"pinnedMark.laid.stern",
             [](Water& w) {
                 w.pinnedMarks[0].laid.stern = geo::LonLat{3.0998, 55.2003};
             },
             onlyPlan},
    StampRow{"pinnedMark.laid.baits",
             [](Water& w) { w.pinnedMarks[0].laid.baits[0].lat_deg += 4e-5; }, onlyPlan},
    StampRow{"pinnedMark.laid.windFrom",
             [](Water& w) { w.pinnedMarks[0].laid.windFrom = units::Bearing::degrees(300.0); },
             onlyPlan},
    StampRow{"dayByHand.order",
             [](Water& w) { std::swap(w.dayByHand.order[0], w.dayByHand.order[1]); }, onlyPlan},
    StampRow{"dayByHand.order, none", [](Water& w) { w.dayByHand.order.clear(); }, onlyPlan},
    StampRow{"dayByHand.stay.place", [](Water& w) { w.dayByHand.stays[0].place.lon_deg += 1e-3; },
             onlyPlan},
    StampRow{"dayByHand.stay.length",
             [](Water& w) { w.dayByHand.stays[0].length = std::chrono::minutes(41); }, onlyPlan},
    StampRow{"dayByHand.stays, none", [](Water& w) { w.dayByHand.stays.clear(); }, onlyPlan}};

} // namespace water
