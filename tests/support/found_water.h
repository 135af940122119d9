// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/marks/told_marks.h"
#include "core/water/document/derived.h"
#include "core/water/document/water.h"
#include "tests/support/made_up_water.h"

#include <cmath>
#include <memory>

namespace support {

/// A small made-up water with one of everything that is kept or given away: what the user has, what
/// was found in it, and a mark.
struct FoundWater {
    MadeUpWater made = madeUpWater(
        {{{{-400.0, -210.0}, {430.0, -190.0}, {390.0, 200.0}, {-410.0, 220.0}},
          {{{10.0, 10.0}, {40.0, 90.0}, {95.0, 15.0}}}}},
        [](geo::WaterPoint p) { return 6.0 + 0.004 * p.x_m - 0.003 * p.y_m; }, 4.0);
    water::Water water;
    water::Derived found;
    std::vector<marks::Mark> marks;

    FoundWater() {
        fillWater();
        fillSurvey();
        fillDrawing();
        fillForm();
        fillZonesAndSections();
        fillMarks();
    }

    [[nodiscard]] geo::LonLat at(double x_m, double y_m) const {
        return made.frame.toEarth(geo::WaterPoint{x_m, y_m});
    }

    /// The marks, each with the same reason.
    [[nodiscard]] marks::ToldMarks told() const {
        return {marks, [](const auto&) { return "58 m of drop-off < 9 m & deep"; }};
    }

private:
    [[nodiscard]] static geo::Piece box(double west_m, double south_m, double east_m,
                                        double north_m) {
        return {{{west_m, south_m}, {east_m, south_m}, {east_m, north_m}, {west_m, north_m}}, {}};
    }

    void fillWater() {
        water.name = "Ashmere & <Little> Øvre";
        water.clock = units::Clock::inZone("Europe/London").value();
        water.frame = made.frame;
        for (const geo::Piece& piece : made.outline.pieces()) {
            water.shoreline.edit().push_back(geo::toEarth(piece, made.frame));
        }
        soundings::SurveyDay day;
        day.id = soundings::SurveyDayId(1);
        day.name = "2026-09-05, \"windy\"";
        day.gauge = soundings::Gauge::table({{units::Moment(std::chrono::seconds(1'788'600'000)),
                                              units::WaterLevel::metresOnGauge(12.3)}});
        for (int i = 0; i < 200; ++i) {
            const double x_m = -300.0 + 3.0 * i;
            day.soundings.edit().push_back(
                {at(x_m, -80.0), units::Depth::metres(6.24 + 0.004 * x_m),
                 units::Moment(std::chrono::milliseconds(1'788'600'000'000 + 1'250L * i))});
        }
        day.soundings.edit()[5].time.reset();
        day.passStarts = {0, 90};
        day.setAsideByHand = {7};
        water.days = {day};
        water.leadLine = {{soundings::LeadLineId(2), at(0.0, -40.0), units::Depth::metres(6.1),
                           soundings::Bottom::gravel}};
        water.weedNotes = {{weed::WeedNoteId(3), at(-200.0, 90.0), weed::Growth::thick,
                            units::Length::metres(0.6)}};
        water.places = {{"jetty", at(-390.0, 0.0)}};
        water.sectionNames = {{at(200.0, 0.0), "Heron Bay"}};
        water.pinnedMarks = {{"old faithful", at(100.0, 100.0)}};
        water.houseRules.rodLimit = 4;
        water.houseRules.closed = {
            {"reeds", {geo::toEarth(box(-380, 100, -300, 180), made.frame)}}};
        water.houseRules.notes = {"wear a life jacket"};
        water.plan.launch = at(-390.0, 0.0);
        fillLog();
    }
    void fillLog() {
        logbook::Stay stay;
        stay.id = logbook::StayId(1);
        stay.start = units::Moment(std::chrono::seconds(1'790'500'000));
        stay.end = stay.start + std::chrono::hours(2);
        stay.place = at(120.0, -30.0);
        stay.rods = 3;
        stay.bait = "roach, \"dead\"";
        stay.conditions.windFrom = units::Bearing::degrees(230.0);
        stay.note = "two\nlines";
        logbook::Fish fish;
        fish.id = logbook::FishId(4);
        fish.time = stay.start + std::chrono::minutes(37);
        fish.species = "pike";
        fish.weight = units::Weight::pounds(11.5);
        fish.length = units::Length::metres(0.83);
        fish.baitDepth = units::Depth::feet(14.0);
        logbook::Fish run;
        run.id = logbook::FishId(5);
        run.time = stay.start + std::chrono::minutes(61);
        run.landed = false;
        stay.runs = {fish, run};
        water.log = {stay};
        stay.id = logbook::StayId(6);
        stay.start += std::chrono::hours(3);
        stay.end += std::chrono::hours(3);
        stay.runs.clear();
        stay.conditions = {};
        water.log.push_back(stay);
    }
    void fillSurvey() {
        water::CheckedSurvey checked;
        reduction::ReducedDay day;
        for (const soundings::Sounding& sounding : water.days.front().soundings) {
            day.points.push_back(made.frame.toWater(sounding.place));
            day.depth_m.push_back(sounding.shown.inMetres() + 0.25);
            day.verdicts.push_back(soundings::Verdict::kept);
        }
        day.verdicts[7] = soundings::Verdict::byHand;
        day.verdicts[8] = soundings::Verdict::spike;
        checked.survey.days = {day};
        found.checked = std::make_shared<const water::CheckedSurvey>(std::move(checked));
    }
    void fillDrawing() {
        grid::Grid<float> halfWidth_m(made.depth.frame(), NAN);
        grid::Grid<surface::TrustName> names(made.depth.frame(), surface::TrustName::inferred);
        for (std::size_t i = 0; i < halfWidth_m.size(); ++i) {
            if (made.depth.has(i)) {
                halfWidth_m[i] = 0.3F;
            }
        }
        found.outline = std::make_shared<const geo::Outline>(made.outline);
        found.drawn = std::make_shared<const surface::DrawnWater>(
            surface::DrawnWater{made.mask,
                                made.depth,
                                surface::TrustGrid(std::move(halfWidth_m), std::move(names)),
                                {}});
        found.stamps[water::Step::draw] = water::Stamp(42);
    }
    void fillForm() {
        water::WaterForm form;
        form.contours = {
            {units::Depth::metres(6.0), {{-300.0, -150.0}, {0.0, 5.0}, {20.0, 170.0}}, false},
            {units::Depth::metres(4.5),
             {{-300.0, -50.0}, {-250.0, -50.0}, {-250.0, 20.0}, {-300.0, -50.0}},
             true}};
        geo::Piece ring = box(-350.0, -180.0, 350.0, 180.0);
        ring.islands.push_back({{0.0, -20.0}, {0.0, 100.0}, {100.0, 100.0}, {100.0, -20.0}});
        form.bandPolygons = {
            {units::Depth::metres(0.0), units::Depth::metres(6.0), {ring}},
            {units::Depth::metres(6.0), std::nullopt, {box(0.0, -20.0, 100.0, 100.0)}}};
        found.form = std::make_shared<const water::WaterForm>(std::move(form));
    }
    void fillZonesAndSections() {
        structure::Zone zone;
        zone.kind = structure::ZoneKind::dropOff;
        zone.name = "Drop-off 1";
        zone.pieces = {box(-100.0, -100.0, -60.0, 100.0), box(-50.0, -100.0, -40.0, 100.0)};
        zone.shallowest = units::Depth::metres(4.0);
        zone.deepest = units::Depth::metres(7.5);
        zone.area = units::Area::squareMetres(10'000.0);
        structure::ZoneMap map;
        map.zones = {zone};
        found.structure = std::make_shared<const structure::ZoneMap>(map);
        weed::WeedMap weedMap;
        zone.kind = structure::ZoneKind::weedBed;
        zone.name = "Weed bed 1";
        weedMap.zones.zones = {zone};
        found.weed = std::make_shared<const weed::WeedMap>(weedMap);
        sections::SectionMap sectionMap;
        sections::Section section;
        section.name = "Heron Bay";
        section.pieces = {box(100.0, -100.0, 350.0, 100.0)};
        section.area = units::Area::squareMetres(50'000.0);
        section.meanDepth = units::Depth::metres(6.3);
        section.maxDepth = units::Depth::metres(7.7);
        sectionMap.sections = {section};
        found.sections = std::make_shared<const sections::SectionMap>(sectionMap);
    }
    void fillMarks() {
        marks::Mark mark;
        mark.rank = 1;
        mark.place = {150.0, -20.0};
        mark.lonLat = made.frame.toEarth(mark.place);
        mark.depth = units::Depth::metres(6.66);
        mark.trust = units::Depth::metres(0.3);
        mark.sectionName = "Heron Bay";
        mark.score = 0.7;
        mark.anchors.bow.place = {150.0, 10.0};
        mark.anchors.stern.emplace().place = {150.0, -40.0};
        marks.push_back(mark);
    }
};

} // namespace support
