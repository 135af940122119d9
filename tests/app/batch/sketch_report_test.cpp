// SPDX-License-Identifier: GPL-3.0-or-later
// The whole report of a made-up water of which no two figures are alike, held against the report
// as it has to be: a figure under a wrong key, or in a wrong unit, has nowhere to hide.
#include "app/batch/sketch_report.h"

#include "core/base/result.h"
#include "tests/support/found_water.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace {

using Json = nlohmann::json;
using units::Area;
using units::Depth;
using units::Length;
using units::Volume;
using water::Step;

reduction::PositionDelay delayOf(bool isKnown, double delay_s) {
    reduction::PositionDelay delay;
    delay.isKnown = isKnown;
    delay.delay_s = delay_s;
    return delay;
}

/// Two days: one with everything, one of which nothing is known.
void fillDays(water::Water& water) {
    water.chartLevel = units::WaterLevel::metresOnGauge(-1.2344);
    soundings::SurveyDay& day = water.days.front();
    day.name = "2026-09-05";
    day.source = "first.nmea";
    day.sounder.draft = Depth::metres(0.3254);
    day.sounder.assumedSoundSpeed = units::Speed::metresPerSecond(1480.257);
    day.gauge = soundings::Gauge::constant(units::WaterLevel::metresOnGauge(0.4567));
    // Marczak 1997, J. Acoust. Soc. Am. 102, 2776: 1482.380 m/s at 20 degrees.
    day.waterTemperature = units::Temperature::celsius(20.0);
    day.agreedOffset = Length::metres(-0.1234);
    day.agreedDelay_s = 1.256;
    soundings::SurveyDay bare;
    bare.name = "2026-09-12";
    bare.source = "second.gpx";
    bare.soundings = {{{3.1, 55.2}, Depth::metres(2.0), std::nullopt}};
    water.days.push_back(bare);
}

void fillChecked(water::Derived& found) {
    water::CheckedSurvey checked = *found.checked;
    checked.survey.days[0].verdicts[9] = soundings::Verdict::spike;
    reduction::ReducedDay bare;
    bare.depth_m = {2.0};
    bare.points = {{0.0, 0.0}};
    bare.verdicts = {soundings::Verdict::outsideShore};
    checked.survey.days.push_back(bare);
    checked.check = {321, -0.0126, 0.2344, 0.4567, 0.98765, 0.99994};
    checked.tie.offsets = {Length::metres(0.0), Length::metres(0.1046)};
    checked.tie.after.rms_m = 0.1234;
    checked.delays = {delayOf(true, -0.756), delayOf(false, 9.0)};
    checked.setAsideSeconds = 0.25;
    found.checked = std::make_shared<const water::CheckedSurvey>(std::move(checked));
}

void fillForm(water::Derived& found) {
    water::WaterForm form = *found.form;
    surface::Hypsography& h = form.hypsography;
    h.area = Area::squareMetres(70685.83);
    h.volume = Volume::cubicMetres(282743.34);
    h.meanDepth = Depth::metres(4.00012);
    h.maxDepth = Depth::metres(2.5);
    h.shoreLength = Length::metres(942.478);
    h.shoreDevelopment = 1.04567;
    h.steps = {{Depth(), Area::squareMetres(5000.0), Volume::cubicMetres(6250.0)},
               {Depth::metres(1.0), Area::squareMetres(3000.0), Volume::cubicMetres(2250.0)},
               {Depth::metres(2.0), Area::squareMetres(1000.0), Volume::cubicMetres(250.0)}};
    form.bandMeasures = {
        {Depth(), Depth::metres(2.0), Area::squareMetres(111.14), Volume::cubicMetres(222.26)},
        {Depth::metres(2.0), std::nullopt, Area::squareMetres(333.38),
         Volume::cubicMetres(444.44)}};
    found.form = std::make_shared<const water::WaterForm>(form);
    form.hypsography.area = Area::squareMetres(1.0); // Today's is not what is reported.
    found.today = std::make_shared<const water::WaterForm>(form);
}

void fillZones(water::Derived& found, const grid::GridFrame& cells) {
    structure::ZoneMap map = *found.structure;
    structure::Zone second = map.zones[0];
    second.area = Area::squareMetres(500.26);
    structure::Zone hump = second;
    hump.kind = structure::ZoneKind::hump;
    hump.area = Area::squareMetres(77.0);
    map.zones = {map.zones[0], second, hump};
    map.zoneOfCell = grid::Grid<structure::ZoneNumber>(cells, structure::noZone);
    map.zoneOfCell[1] = 0;
    map.zoneOfCell[2] = 1;
    map.zoneOfCell[3] = 2;
    found.structure = std::make_shared<const structure::ZoneMap>(map);
}

/// Two sections that a stay lies in one of.
void fillSections(water::Derived& found, const grid::GridFrame& cells, geo::WaterPoint stay) {
    sections::SectionMap map;
    sections::Section section;
    section.name = "Heron Bay";
    section.number = 7;
    section.area = Area::squareMetres(43210.96);
    section.meanDepth = Depth::metres(6.346);
    section.maxDepth = Depth::metres(7.654);
    section.shore = Length::metres(321.04);
    section.dropOff = Length::metres(98.76);
    section.weedShare = 0.12344;
    section.trustShare = {0.51, 0.32, 0.17};
    section.cells = {0, 1, 2, 3, 4, 5, 6, 7};
    map.sections = {section, section};
    map.sections[1].name = "Section 2";
    map.sections[1].cells = {10, 11};
    map.sectionOfCell = grid::Grid<sections::SectionNumber>(cells, sections::noSection);
    map.sectionOfCell[cells.cellOf(stay)] = 0;
    map.refused = {{}};
    map.refused[0].why = {base::ErrorKind::wrongUse, "cannot be cut", "Heron Bay", "draw it anew"};
    found.sections = std::make_shared<const sections::SectionMap>(map);
}

void fillDrawn(water::Derived& found) {
    surface::DrawnWater drawn = *found.drawn;
    drawn.report.cell = Length::metres(4.0004);
    drawn.report.cells = 4321;
    drawn.report.stiffness = 0.75;
    drawn.report.contourStiffness = 12.5;
    drawn.report.soundingsUsed = 198;
    drawn.report.soundingsOutside = 55;
    drawn.report.spikes = {1, 2, 3};
    drawn.report.iterations = 77;
    drawn.report.heldOut = surface::HeldOutError{0.9, 0.1236, 66};
    drawn.report.trustSeconds = 0.125;
    found.drawn = std::make_shared<const surface::DrawnWater>(std::move(drawn));
}

struct Reported {
    support::FoundWater known;
    batch::SketchDone done;
    Reported() {
        fillDays(known.water);
        fillChecked(known.found);
        fillForm(known.found);
        fillZones(known.found, known.made.depth.frame());
        fillSections(known.found, known.made.depth.frame(), {120.0, -30.0});
        fillDrawn(known.found);
        known.found.seconds = {{Step::reduce, 1.0},  {Step::draw, 3.0},      {Step::bands, 4.5},
                               {Step::level, 99.0},  {Step::structure, 5.5}, {Step::weed, 6.5},
                               {Step::sections, 7.5}};
        known.found.notes = {"assumed something"};
        known.found.failures[Step::weed] = {base::ErrorKind::wrongUse, "no weed", "", "look"};
        done.files = {{"first.nmea", {}}, {"second.gpx", {}}};
        done.files[0].report.used = 200;
        done.files[0].report.read = 999;
        done.files[0].report.refused = {{"bad_checksum", {3, 17, "$SDDPT,4*00"}}};
        done.files[1].report.used = 1;
        done.files[1].report.refused = {{"bad_checksum", {4, 2, "other"}},
                                        {"no_depth", {1, 5, "here"}}};
        done.notes = {"asked for"};
        done.readSeconds = 0.5004;
        done.writeSeconds = 0.6255;
        surface::SurveyTrip trip;
        trip.lines = {{{10.0, 20.0}, {-30.0, 50.0}, Length::metres(50.04), 1234.56, 24.7, {}}};
        done.nextLines = trip;
    }
    Json report() const { return batch::sketchReport(known.water, known.found, done); }
};

TEST(SketchReport, OfSoundingsSumsTheFilesAndQuotesTheFirstOfEachReason) {
    EXPECT_EQ(Reported().report()["soundings"], Json::parse(R"({
        "read": 201, "kept": 197, "set_aside": {"by_hand": 1, "outside_shore": 1, "spike": 2},
        "bad_rows": {"bad_checksum": 7, "no_depth": 1},
        "first_bad_rows": {
            "bad_checksum": {"file": "first.nmea", "line": 17, "text": "$SDDPT,4*00"},
            "no_depth": {"file": "second.gpx", "line": 5, "text": "here"}}})"));
}

TEST(SketchReport, OfTheReductionHasWhatWasTrueOnEachDay) {
    EXPECT_EQ(Reported().report()["reduction"], Json::parse(R"({
        "chart_level_m": -1.234, "draft_m": 0.325, "level_m": 0.457, "water_temperature_c": 20.0,
        "assumed_sound_speed_m_s": 1480.26, "sound_speed_m_s": 1482.38,
        "survey_days": [
            {"survey_day": "2026-09-05", "file": "first.nmea", "soundings": 200, "draft_m": 0.325,
             "assumed_sound_speed_m_s": 1480.26, "level_m": 0.457, "water_temperature_c": 20.0,
             "sound_speed_m_s": 1482.38, "agreed_offset_m": -0.123, "agreed_delay_s": 1.26},
            {"survey_day": "2026-09-12", "file": "second.gpx", "soundings": 1, "draft_m": 0.0,
             "assumed_sound_speed_m_s": 1500.0, "level_m": null, "water_temperature_c": null,
             "sound_speed_m_s": null, "agreed_offset_m": null, "agreed_delay_s": null}]})"));
}

TEST(SketchReport, OfCrossingsHasTheOffsetAndTheDelayOfEachDay) {
    EXPECT_EQ(Reported().report()["crossings"], Json::parse(R"({
        "count": 321, "mean_m": -0.013, "rms_m": 0.234, "p95_m": 0.457, "within_order_1b": 0.9877,
        "within_order_2": 0.9999, "rms_if_tied_m": 0.123,
        "day_offsets_m": {"2026-09-05": 0.0, "2026-09-12": 0.105},
        "delays_s": {"2026-09-05": -0.76, "2026-09-12": null}})"));
}

TEST(SketchReport, OfTheFormIsThatAtChartLevel) {
    const Json report = Reported().report();
    EXPECT_EQ(report["water"], Json::parse(R"({
        "area_m2": 70685.8, "volume_m3": 282743.3, "mean_depth_m": 4.0, "max_depth_m": 2.5,
        "shoreline_m": 942.5, "shoreline_development": 1.0457})"));
    EXPECT_EQ(report["hypsography"], Json::parse(R"([
        {"depth_m": 0.0, "area_m2": 5000.0, "volume_m3": 6250.0},
        {"depth_m": 1.0, "area_m2": 3000.0, "volume_m3": 2250.0},
        {"depth_m": 2.0, "area_m2": 1000.0, "volume_m3": 250.0}])"));
    EXPECT_EQ(report["bands"], Json::parse(R"([
        {"from_m": 0.0, "to_m": 2.0, "area_m2": 111.1, "volume_m3": 222.3},
        {"from_m": 2.0, "to_m": null, "area_m2": 333.4, "volume_m3": 444.4}])"));
}

TEST(SketchReport, OfZonesCountsAndSumsEachKindOfStructureAndWeed) {
    EXPECT_EQ(Reported().report()["zones"], Json::parse(R"([
        {"kind": "drop-off", "count": 2, "area_m2": 10500.3},
        {"kind": "hump", "count": 1, "area_m2": 77.0},
        {"kind": "weed bed", "count": 1, "area_m2": 10000.0}])"));
}

TEST(SketchReport, OfSectionsHasTheirGroundAndTheirUse) {
    const Json rows = Reported().report()["sections"];
    ASSERT_EQ(rows.size(), 2U);
    // Eight cells: two of drop-off, one of hump. Both stays of the log lie in the first.
    EXPECT_EQ(rows[0], Json::parse(R"({
        "name": "Heron Bay", "number": 7, "area_m2": 43211.0, "mean_depth_m": 6.35, "max_depth_m": 7.65,
        "shoreline_m": 321.0, "weed_share": 0.1234, "drop_off_m": 98.8,
        "trust_share": {"sounded": 0.51, "inferred": 0.32, "guess": 0.17},
        "structure_share": {"drop-off": 0.25, "hump": 0.125}, "stays": 2, "never_fished": false})"));
    EXPECT_EQ(rows[1]["name"], "Section 2");
    EXPECT_EQ(rows[1]["structure_share"], Json::object());
    EXPECT_EQ(rows[1]["stays"], 0);
    EXPECT_EQ(rows[1]["never_fished"], true);
}

TEST(SketchReport, OfLinesRunsFromTheirStartToTheirEnd) {
    const Reported given;
    const Json lines = given.report()["next_lines"];
    ASSERT_EQ(lines.size(), 1U);
    EXPECT_EQ(lines[0]["length_m"], 50.0);
    EXPECT_EQ(lines[0]["gain"], 1234.6);
    const auto expectAt = [&](const char* key, double x_m, double y_m) {
        const geo::LonLat place = given.known.at(x_m, y_m);
        ASSERT_EQ(lines[0][key].size(), 2U);
        EXPECT_NEAR(lines[0][key][0], place.lon_deg, 0.51e-7) << "longitude first";
        EXPECT_NEAR(lines[0][key][1], place.lat_deg, 0.51e-7);
    };
    expectAt("from", 10.0, 20.0);
    expectAt("to", -30.0, 50.0);
}

TEST(SketchReport, OfTheDrawingSaysHowItWasMadeAndWhatItCost) {
    const Json report = Reported().report();
    EXPECT_EQ(report["drawing"], Json::parse(R"({
        "cell_m": 4.0, "cells": 4321, "stiffness": 0.75, "contour_stiffness": 12.5,
        "soundings_used": 198, "spikes_left_out": 3, "iterations": 77,
        "held_out_mean_error_m": 0.124})"));
    // Setting aside is part of the first step, the trust part of the drawing: each second once.
    EXPECT_EQ(report["timing_s"], Json::parse(R"({
        "read": 0.5, "reduce": 0.75, "set_aside": 0.25, "draw": 2.875, "trust": 0.125,
        "contours": 4.5, "structure": 5.5, "weed": 6.5, "sections": 7.5, "write": 0.626})"));
}

TEST(SketchReport, TellsEveryNoteFailureAndRefusedChange) {
    EXPECT_EQ(Reported().report()["notes"], (Json{"asked for", "assumed something", "no weed; look",
                                                  "Heron Bay: cannot be cut; draw it anew"}));
}

TEST(SketchReport, OfAWaterOfWhichNothingIsDrawnHasItsKeysAllTheSame) {
    const Json report = batch::sketchReport({}, {}, {});
    EXPECT_EQ(report, Json::parse(R"({
        "soundings": {"read": 0, "kept": 0, "set_aside": {}, "bad_rows": {}, "first_bad_rows": {}},
        "reduction": {"chart_level_m": 0.0, "survey_days": []}, "crossings": {}, "zones": [],
        "sections": [], "next_lines": [], "notes": [],
        "timing_s": {"read": 0.0, "reduce": 0.0, "set_aside": 0.0, "draw": 0.0, "trust": 0.0,
                     "contours": 0.0, "structure": 0.0, "weed": 0.0, "sections": 0.0,
                     "write": 0.0}})"));
    Reported without;
    surface::DrawnWater drawn = *without.known.found.drawn;
    drawn.report.heldOut.reset();
    without.known.found.drawn = std::make_shared<const surface::DrawnWater>(std::move(drawn));
    EXPECT_TRUE(without.report()["drawing"]["held_out_mean_error_m"].is_null());
}

} // namespace
