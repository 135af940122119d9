// SPDX-License-Identifier: GPL-3.0-or-later
// One row for each member of a water: what is set there comes back from the file, belongs to the
// part that is said, and is gone from the file again when it is gone from the water.
#include "core/store/water_store.h"

#include "core/water/document/swap_parts.h"
#include "tests/support/random_water.h"
#include "tests/support/scratch_folder.h"

#include <algorithm>
#include <array>
#include <functional>

#include <gtest/gtest.h>

namespace {

using support::ScratchFolder;
using water::Part;
using water::Water;

base::Progress quiet;

units::Depth metres(double depth_m) {
    return units::Depth::metres(depth_m);
}
units::Length length(double length_m) {
    return units::Length::metres(length_m);
}
units::Moment moment(std::int64_t milliseconds) {
    return units::Moment(std::chrono::milliseconds(milliseconds));
}

/// One of each thing that there may be many of, nothing that may be absent.
Water plain() {
    Water water;
    water.frame = geo::WaterFrame::centredOn({3.1, 55.2}).value();
    water.shoreline = {{{{3.0, 55.0}, {3.2, 55.0}, {3.1, 55.3}}, {}}};
    water.days.resize(2);
    water.days[0].id = soundings::SurveyDayId(7);
    water.days[1].id = soundings::SurveyDayId(3);
    for (soundings::SurveyDay& day : water.days) {
        day.soundings.edit().assign(3, {{3.1, 55.2}, metres(4.0), std::nullopt});
    }
    water.leadLine.edit().resize(2);
    water.weedNotes.edit().resize(2);
    water.places.resize(2);
    water.houseRules.closed.resize(2);
    water.sectionNames.resize(2);
    const std::vector<geo::LonLatPiece> somewhere{{{{3.0, 55.0}, {3.2, 55.0}, {3.1, 55.3}}, {}}};
    water.numbering = {
        {{1, true, somewhere}, {2, true, somewhere}}, {somewhere}, units::Area::hectares(4.0)};
    water.sectionChanges.resize(2);
    water.pinnedMarks.resize(2);
    water.banned.assign(2, {{}, {{3.1, 55.2}, {3.11, 55.2}, {3.1, 55.21}}});
    water.beliefProfiles = {{"autumn", {}}, {"spring", {}}};
    water.dayByHand.order.resize(2);
    water.sheets = {{units::dayFrom("2026-10-02").value(), {{}, {}}},
                    {units::dayFrom("2026-10-03").value(), {{}}}};
    water.dayByHand.stays.assign(2, {{}, std::chrono::minutes(30)});
    water.log = logbook::Log(2);
    water.log.edit(1).runs.resize(2);
    return water;
}

struct Member {
    const char* name;
    Part part;
    std::function<void(Water&)> set;
};

const std::array factMembers{
    Member{"name", Part::facts, [](Water& w) { w.name = "Quernholt"; }},
    Member{"clock", Part::facts,
           [](Water& w) { w.clock = units::Clock::inZone("America/St_Johns").value(); }},
    Member{"chart level", Part::facts,
           [](Water& w) { w.chartLevel = units::WaterLevel::metresOnGauge(-1.237); }},
    Member{"no frame", Part::facts, [](Water& w) { w.frame.reset(); }},
    Member{"frame", Part::facts,
           [](Water& w) {
               w.frame = geo::WaterFrame::centredOn({-3.17, -55.29}).value();
           }},
    Member{"place's name", Part::facts, [](Water& w) { w.places[0].name = "jetty"; }},
    Member{"place", Part::facts,
           [](Water& w) {
               w.places[1].place = {3.1234567, -55.7654321};
           }},
    Member{"no places", Part::facts, [](Water& w) { w.places.clear(); }},
    Member{"cell", Part::facts, [](Water& w) { w.settings.cell = length(2.5); }},
    Member{"bands", Part::facts,
           [](Water& w) {
               w.settings.bands =
                   contours::Bands::make({metres(1.5), metres(3.25)}, metres(9.144)).value();
           }},
    Member{"limit", Part::facts,
           [](Water& w) {
               w.settings.bands =
                   contours::Bands::make(contours::Bands().edges(), metres(7.001)).value();
           }},
    Member{"limit alone", Part::facts, [](Water& w) { w.settings.limit = metres(6.25); }},
    Member{"counts in feet", Part::facts,
           [](Water& w) { w.settings.countsIn = contours::CountsIn::feet; }},
    Member{"section area", Part::facts,
           [](Water& w) { w.settings.sectionArea = units::Area::hectares(2.5); }},
    Member{"secchi", Part::facts, [](Water& w) { w.settings.secchi = metres(3.2); }},
    Member{"weed left", Part::facts, [](Water& w) { w.settings.weedLeft = 0.25; }},
    Member{"fine scale", Part::facts,
           [](Water& w) { w.settings.structure.fineScale = length(5.5); }},
    Member{"broad scale", Part::facts,
           [](Water& w) { w.settings.structure.broadScale = length(55.0); }},
    Member{"drop-off from", Part::facts,
           [](Water& w) { w.settings.structure.dropOffFrom_percent = 17.0; }},
    Member{"high ground", Part::facts,
           [](Water& w) { w.settings.structure.highGround = length(0.75); }},
    Member{"least area", Part::facts,
           [](Water& w) { w.settings.structure.leastArea = units::Area::squareMetres(321.0); }},
};

const std::array dayMembers{
    Member{"order of days", Part::days, [](Water& w) { std::swap(w.days[0], w.days[1]); }},
    Member{"a day less", Part::days, [](Water& w) { w.days.erase(w.days.begin()); }},
    Member{"id", Part::days, [](Water& w) { w.days[1].id = soundings::SurveyDayId(1LL << 40U); }},
    Member{"day's name", Part::days, [](Water& w) { w.days[0].name = "2026-09-05"; }},
    Member{"source", Part::days, [](Water& w) { w.days[1].source = "a.nmea"; }},
    Member{"draft", Part::days, [](Water& w) { w.days[0].sounder.draft = metres(0.35); }},
    Member{"sound speed", Part::days,
           [](Water& w) {
               w.days[0].sounder.assumedSoundSpeed = units::Speed::metresPerSecond(1463.0);
           }},
    Member{"by sound", Part::days, [](Water& w) { w.days[0].sounder.measuresBySound = false; }},
    Member{"level", Part::days,
           [](Water& w) {
               w.days[1].gauge =
                   soundings::Gauge::constant(units::WaterLevel::metresOnGauge(-0.12));
           }},
    Member{"table of levels", Part::days,
           [](Water& w) {
               w.days[0].gauge =
                   soundings::Gauge::table({{moment(1), units::WaterLevel::metresOnGauge(1.25)},
                                            {moment(2), units::WaterLevel::metresOnGauge(1.5)}});
           }},
    Member{"temperature", Part::days,
           [](Water& w) { w.days[1].waterTemperature = units::Temperature::celsius(11.5); }},
    Member{"offset", Part::days, [](Water& w) { w.days[0].agreedOffset = length(-0.08); }},
    Member{"delay", Part::days, [](Water& w) { w.days[0].agreedDelay_s = -1.75; }},
    Member{"no soundings", Part::days, [](Water& w) { w.days[0].soundings.edit().clear(); }},
    Member{"sounding's place", Part::days,
           [](Water& w) { w.days[0].soundings.edit()[2].place.lon_deg += 1e-7; }},
    Member{"sounding's latitude", Part::days,
           [](Water& w) { w.days[0].soundings.edit()[0].place.lat_deg -= 1e-7; }},
    Member{"sounding's depth", Part::days,
           [](Water& w) { w.days[1].soundings.edit()[1].shown = metres(4.001); }},
    Member{"sounding's time", Part::days,
           [](Water& w) { w.days[1].soundings.edit()[1].time = moment(1'788'600'000'250); }},
    Member{"sounding's early time", Part::days,
           [](Water& w) { w.days[1].soundings.edit()[0].time = moment(-1); }},
    Member{"passes", Part::days,
           [](Water& w) {
               w.days[1].passStarts = {0, 2};
           }},
    Member{"set aside", Part::days,
           [](Water& w) {
               w.days[0].setAsideByHand = {1, 2};
           }},
    Member{"kept", Part::days,
           [](Water& w) {
               w.days[0].keptByHand = {0, 2};
           }},
};

const std::array noteMembers{
    Member{"no shore", Part::shoreline, [](Water& w) { w.shoreline.edit().clear(); }},
    Member{"shore", Part::shoreline,
           [](Water& w) { w.shoreline.edit()[0].outer[1].lat_deg = 55.1; }},
    Member{"island", Part::shoreline,
           [](Water& w) {
               w.shoreline.edit()[0].islands = {{{3.09, 55.1}, {3.11, 55.1}, {3.1, 55.11}}};
           }},
    Member{"second piece", Part::shoreline,
           [](Water& w) {
               w.shoreline.edit().push_back({{{4.0, 55.0}, {4.2, 55.0}, {4.1, 55.3}}, {}});
           }},
    Member{"lead line", Part::leadLine, [](Water& w) { w.leadLine.edit().pop_back(); }},
    Member{"lead's id", Part::leadLine,
           [](Water& w) { w.leadLine.edit()[0].id = soundings::LeadLineId(9); }},
    Member{"lead's place", Part::leadLine,
           [](Water& w) {
               w.leadLine.edit()[1].place = {3.1, -55.2};
           }},
    Member{"lead's depth", Part::leadLine,
           [](Water& w) { w.leadLine.edit()[0].depth = metres(6.1); }},
    Member{"soft bottom", Part::leadLine,
           [](Water& w) { w.leadLine.edit()[0].bottom = soundings::Bottom::soft; }},
    Member{"weed at the lead", Part::leadLine,
           [](Water& w) { w.leadLine.edit()[1].bottom = soundings::Bottom::weed; }},
    Member{"weed notes", Part::weedNotes, [](Water& w) { w.weedNotes.edit().pop_back(); }},
    Member{"weed's id", Part::weedNotes,
           [](Water& w) { w.weedNotes.edit()[1].id = weed::WeedNoteId(5); }},
    Member{"weed's place", Part::weedNotes,
           [](Water& w) {
               w.weedNotes.edit()[0].place = {-3.1, 55.2};
           }},
    Member{"thin weed", Part::weedNotes,
           [](Water& w) { w.weedNotes.edit()[0].growth = weed::Growth::thin; }},
    Member{"thick weed", Part::weedNotes,
           [](Water& w) { w.weedNotes.edit()[1].growth = weed::Growth::thick; }},
    Member{"weed's height", Part::weedNotes,
           [](Water& w) { w.weedNotes.edit()[0].height = length(0.4); }},
    Member{"weed's day", Part::weedNotes,
           [](Water& w) { w.weedNotes.edit()[1].seen = units::dayFrom("2024-02-29"); }},
    Member{"weed over an area", Part::weedNotes,
           [](Water& w) {
               w.weedNotes.edit()[0].extent = weed::Extent::area;
               w.weedNotes.edit()[0].corners = {{3.0, 55.0}, {3.1, 55.0}, {3.1, 55.1}};
           }},
    Member{"weed along a line", Part::weedNotes,
           [](Water& w) {
               w.weedNotes.edit()[1].extent = weed::Extent::line;
               w.weedNotes.edit()[1].corners = {{3.0, 55.0}, {3.1, 55.0}};
           }},
    Member{"rod limit", Part::houseRules, [](Water& w) { w.houseRules.rodLimit = 3; }},
    Member{"season", Part::houseRules,
           [](Water& w) {
               using std::chrono::day;
               using std::chrono::month;
               w.houseRules.season = logbook::Season{month(12) / day(31), month(3) / day(1)};
           }},
    Member{"rules' notes", Part::houseRules,
           [](Water& w) {
               for (int i = 0; i < 12; ++i) {
                   w.houseRules.notes.push_back("note " + std::to_string(i));
               }
           }},
    Member{"closed water", Part::houseRules, [](Water& w) { w.houseRules.closed.pop_back(); }},
    Member{"closed water's name", Part::houseRules,
           [](Water& w) { w.houseRules.closed[1].name = "reeds"; }},
    Member{"closed pieces", Part::houseRules,
           [](Water& w) {
               w.houseRules.closed[0].pieces = {{{{3.0, 55.0}, {3.2, 55.0}, {3.1, 55.3}},
                                                 {{{3.1, 55.1}, {3.11, 55.1}, {3.1, 55.12}}}},
                                                {{{4.0, 55.0}, {4.2, 55.0}, {4.1, 55.3}}, {}}};
           }},
    Member{"section's name", Part::sections, [](Water& w) { w.sectionNames[0].name = "Bay"; }},
    Member{"section's seed", Part::sections,
           [](Water& w) {
               w.sectionNames[1].seed = {3.1, 55.0};
           }},
    Member{"section name's number", Part::sections, [](Water& w) { w.sectionNames[1].number = 7; }},
    Member{"number", Part::numbering,
           [](Water& w) { w.numbering.waters.edit()[1].number = 1'000'000; }},
    Member{"number off the map", Part::numbering,
           [](Water& w) { w.numbering.waters.edit()[0].isOnMap = false; }},
    Member{"number's water", Part::numbering,
           [](Water& w) {
               w.numbering.waters.edit()[1].pieces = {
                   {{{3.0, 55.0}, {3.2, 55.0}, {3.1, 55.3}},
                    {{{3.1, 55.1}, {3.11, 55.1}, {3.1, 55.12}}}},
                   {{{4.0, 55.0}, {4.2, 55.0}, {4.1, 55.3}}, {}}};
           }},
    Member{"no parts before", Part::numbering, [](Water& w) { w.numbering.parts = {}; }},
    Member{"another part before", Part::numbering,
           [](Water& w) { w.numbering.parts.edit().push_back(w.numbering.waters[0].pieces); }},
    Member{"divided for", Part::numbering,
           [](Water& w) { w.numbering.wantedArea = units::Area::hectares(7.5); }},
    Member{"no numbering", Part::numbering, [](Water& w) { w.numbering = {}; }},
    Member{"no section names", Part::sections, [](Water& w) { w.sectionNames.clear(); }},
    Member{"changes", Part::sections, [](Water& w) { w.sectionChanges.pop_back(); }},
    Member{"split", Part::sections,
           [](Water& w) {
               w.sectionChanges[0].kind = sections::SectionChange::Kind::split;
               w.sectionChanges[0].line = {{3.1, 55.2}, {3.2, 55.1}, {3.0, 55.0}};
           }},
    Member{"border", Part::sections,
           [](Water& w) {
               w.sectionChanges[1] = {sections::SectionChange::Kind::border,
                                      {{3.1, 55.2}, {3.2, 55.1}},
                                      {{3.0, 55.0}, {3.3, 55.4}}};
           }},
};

const std::array planMembers{
    Member{"day", Part::plan,
           [](Water& w) { w.plan.day.day = units::dayFrom("2027-02-28").value(); }},
    Member{"start", Part::plan,
           [](Water& w) { w.plan.day.start = std::chrono::seconds(6 * 3600 + 61); }},
    Member{"end", Part::plan, [](Water& w) { w.plan.day.end = std::chrono::hours(21); }},
    Member{"wind from", Part::plan,
           [](Water& w) { w.plan.day.wind.from = units::Bearing::degrees(237.5); }},
    Member{"wind speed", Part::plan,
           [](Water& w) { w.plan.day.wind.speed = units::Speed::metresPerSecond(6.25); }},
    Member{"calm", Part::plan, [](Water& w) { w.plan.day.wind.speed = units::Speed(); }},
    Member{"later wind", Part::plan,
           [](Water& w) {
               w.plan.day.windLater = marks::LaterWind{
                   std::chrono::seconds(13 * 3600 + 61),
                   {units::Bearing::degrees(12.5), units::Speed::metresPerSecond(3.75)}};
           }},
    Member{"later wind that nobody knows", Part::plan,
           [](Water& w) {
               w.plan.day.windLater = marks::LaterWind{std::chrono::hours(13), {}};
           }},
    Member{"level", Part::plan, [](Water& w) { w.plan.day.levelChange = length(-0.35); }},
    Member{"water's temperature", Part::plan,
           [](Water& w) { w.plan.day.waterTemperature = units::Temperature::celsius(0.0); }},
    Member{"stay", Part::plan, [](Water& w) { w.plan.day.stay = std::chrono::minutes(85); }},
    Member{"boat speed", Part::plan,
           [](Water& w) { w.plan.tackle.boatSpeed = units::Speed::metresPerSecond(2.25); }},
    Member{"boat length", Part::plan, [](Water& w) { w.plan.tackle.boatLength = length(4.25); }},
    Member{"bow height", Part::plan, [](Water& w) { w.plan.tackle.bowHeight = length(0.75); }},
    Member{"bow rope", Part::plan, [](Water& w) { w.plan.tackle.bowRope = length(61.0); }},
    Member{"stern rope", Part::plan, [](Water& w) { w.plan.tackle.sternRope = length(43.0); }},
    Member{"scope", Part::plan, [](Water& w) { w.plan.tackle.scope = 4.5; }},
    Member{"rods", Part::plan, [](Water& w) { w.plan.tackle.rods = 2; }},
    Member{"cast", Part::plan, [](Water& w) { w.plan.tackle.cast = length(22.0); }},
    Member{"over-depth", Part::plan, [](Water& w) { w.plan.tackle.overDepth = length(0.6); }},
    Member{"launch", Part::plan,
           [](Water& w) {
               w.plan.launch = geo::LonLat{-3.05, 55.15};
           }},
    Member{"count", Part::plan, [](Water& w) { w.plan.count = 13; }},
    Member{"one anchor", Part::plan, [](Water& w) { w.plan.tackle.toOneAnchor = true; }},
    Member{"try new", Part::plan, [](Water& w) { w.plan.tryNew = 0.85; }},
    Member{"pinned name", Part::plan, [](Water& w) { w.pinnedMarks[1].name = "faithful"; }},
    Member{"pinned place", Part::plan,
           [](Water& w) {
               w.pinnedMarks[0].place = {3.1, 55.2};
           }},
    Member{"bow anchor by hand", Part::plan,
           [](Water& w) {
               w.pinnedMarks[1].laid.bow = geo::LonLat{3.1, 55.2};
           }},
    Member{"stern anchor by hand, and its wind", Part::plan,
           [](Water& w) {
               w.pinnedMarks[0].laid.stern = geo::LonLat{3.1, 55.2};
               w.pinnedMarks[0].laid.windFrom = units::Bearing::degrees(310.5);
           }},
    Member{"baits by hand", Part::plan,
           [](Water& w) {
               w.pinnedMarks[1].laid.baits = {{3.12, 55.2}, {3.1, 55.25}};
           }},
    Member{"no pinned mark", Part::plan, [](Water& w) { w.pinnedMarks.clear(); }},
    Member{"banned name", Part::plan, [](Water& w) { w.banned[1].name = "snags"; }},
    Member{"banned ring", Part::plan,
           [](Water& w) {
               w.banned[0].ring = {{3.1, 55.2}, {3.1234567, 55.2}, {3.1, 55.2111111}};
           }},
    Member{"no banned water", Part::plan, [](Water& w) { w.banned.clear(); }},
    Member{"profile's name", Part::plan, [](Water& w) { w.beliefProfiles[1].name = "autumn two"; }},
    Member{"profile's weight", Part::plan,
           [](Water& w) { w.beliefProfiles[0].weights.set(marks::FactorKind::trust, 1.75); }},
    Member{"profiles of one name", Part::plan,
           [](Water& w) { w.beliefProfiles[1].name = w.beliefProfiles[0].name; }},
    Member{"a profile less", Part::plan, [](Water& w) { w.beliefProfiles.pop_back(); }},
    Member{"order by hand", Part::plan,
           [](Water& w) {
               w.dayByHand.order[1] = {3.1, 55.2};
           }},
    Member{"sheet's day", Part::sheets,
           [](Water& w) { w.sheets[1].day = units::dayFrom("2027-02-28").value(); }},
    Member{"number on the sheet", Part::sheets, [](Water& w) { w.sheets[0].stops[1].rank = 7; }},
    Member{"name on the sheet", Part::sheets,
           [](Water& w) { w.sheets[0].stops[0].called = "Gannick Bar, 120 m NE"; }},
    Member{"place on the sheet", Part::sheets,
           [](Water& w) {
               w.sheets[1].stops[0].place = {3.1234567, 55.2};
           }},
    Member{"from", Part::sheets, [](Water& w) { w.sheets[0].stops[1].from = moment(60); }},
    Member{"to", Part::sheets, [](Water& w) { w.sheets[0].stops[1].to = moment(7'200); }},
    Member{"stops turned about", Part::sheets,
           [](Water& w) {
               w.sheets[0].stops[0].rank = 2;
               w.sheets[0].stops[1].rank = 1;
           }},
    Member{"a sheet less", Part::sheets, [](Water& w) { w.sheets.erase(w.sheets.begin()); }},
    Member{"no order by hand", Part::plan, [](Water& w) { w.dayByHand.order.clear(); }},
    Member{"stay's place by hand", Part::plan,
           [](Water& w) {
               w.dayByHand.stays[0].place = {3.1, 55.2};
           }},
    Member{"stay by hand", Part::plan,
           [](Water& w) { w.dayByHand.stays[1].length = std::chrono::seconds(5'401); }},
    Member{"no stay by hand", Part::plan, [](Water& w) { w.dayByHand.stays.clear(); }},
};

const std::array logMembers{
    Member{"a stay less", Part::log, [](Water& w) { w.log.erase(0); }},
    Member{"stay's id", Part::log, [](Water& w) { w.log.edit(0).id = logbook::StayId(4); }},
    Member{"start", Part::log, [](Water& w) { w.log.edit(1).start = moment(-86'400'001); }},
    Member{"end", Part::log, [](Water& w) { w.log.edit(0).end = moment(7'200'000); }},
    Member{"stay's place", Part::log,
           [](Water& w) {
               w.log.edit(0).place = {3.1, 55.2};
           }},
    Member{"rods", Part::log, [](Water& w) { w.log.edit(1).rods = 3; }},
    Member{"rods of another stay", Part::log, [](Water& w) { w.log.edit(0).rods = 1; }},
    Member{"bait", Part::log, [](Water& w) { w.log.edit(1).bait = "roach"; }},
    Member{"note", Part::log, [](Water& w) { w.log.edit(0).note = "two\nlines"; }},
    Member{"wind from", Part::log,
           [](Water& w) { w.log.edit(0).conditions.windFrom = units::Bearing::degrees(359.5); }},
    Member{
        "wind speed", Part::log,
        [](Water& w) { w.log.edit(0).conditions.windSpeed = units::Speed::metresPerSecond(4.0); }},
    Member{"temperature", Part::log,
           [](Water& w) {
               w.log.edit(0).conditions.waterTemperature = units::Temperature::celsius(9.5);
           }},
    Member{
        "level", Part::log,
        [](Water& w) { w.log.edit(1).conditions.level = units::WaterLevel::metresOnGauge(-0.35); }},
    Member{"sky", Part::log, [](Water& w) { w.log.edit(1).conditions.sky = "overcast"; }},
    Member{"who", Part::log, [](Water& w) { w.log.edit(0).who = "Anna, Ben"; }},
    Member{"where the baits lay", Part::log,
           [](Water& w) {
               w.log.edit(1).baitPlace = {3.1, 55.2};
           }},
    Member{"photograph", Part::log, [](Water& w) { w.log.edit(0).photograph = "a/b.jpg"; }},
    Member{"other fields", Part::log,
           [](Water& w) {
               w.log.edit(0).others = {{"Mond \"voll\"", "ja;\nnein"}, {"moon", "full"}};
           }},
    Member{"fish at the epoch", Part::log,
           [](Water& w) { w.log.edit(1).runs[0].time = moment(0); }},
    Member{"fish's angler", Part::log, [](Water& w) { w.log.edit(1).runs[0].who = "Ben"; }},
    Member{"hooked", Part::log, [](Water& w) { w.log.edit(1).runs[1].hooked = "scissors"; }},
    Member{"returned", Part::log, [](Water& w) { w.log.edit(1).runs[0].returned = true; }},
    Member{"not returned", Part::log, [](Water& w) { w.log.edit(1).runs[1].returned = false; }},
    Member{"where the bait lay", Part::log,
           [](Water& w) {
               w.log.edit(1).runs[1].baitPlace = {3.25, 55.25};
           }},
    Member{"fish's photograph", Part::log,
           [](Water& w) { w.log.edit(1).runs[0].photograph = "pike.jpg"; }},
    Member{"fish's other fields", Part::log,
           [](Water& w) {
               w.log.edit(1).runs[0].others = {{"moon", "new"}};
           }},
    Member{"a fish less", Part::log, [](Water& w) { w.log.edit(1).runs.pop_back(); }},
    Member{"a fish of the first stay", Part::log, [](Water& w) { w.log.edit(0).runs.resize(1); }},
    Member{"fish's id", Part::log, [](Water& w) { w.log.edit(1).runs[0].id = logbook::FishId(8); }},
    Member{"fish's time", Part::log, [](Water& w) { w.log.edit(1).runs[1].time = moment(60'500); }},
    Member{"lost run", Part::log,
           [](Water& w) { w.log.edit(1).runs[1].landed = !w.log[1].runs[1].landed; }},
    Member{"species", Part::log, [](Water& w) { w.log.edit(1).runs[0].species = "pike"; }},
    Member{"fish's bait", Part::log, [](Water& w) { w.log.edit(1).runs[0].bait = "smelt"; }},
    Member{"weight", Part::log,
           [](Water& w) { w.log.edit(1).runs[0].weight = units::Weight::pounds(11.5); }},
    Member{"length", Part::log, [](Water& w) { w.log.edit(1).runs[1].length = length(0.83); }},
    Member{"bait's depth", Part::log,
           [](Water& w) { w.log.edit(1).runs[1].baitDepth = metres(4.2); }},
    Member{"fish's note", Part::log, [](Water& w) { w.log.edit(1).runs[0].note = "barbless"; }},
};

std::vector<Member> allMembers() {
    std::vector<Member> all;
    const auto take = [&all](const auto& members) {
        all.insert(all.end(), members.begin(), members.end());
    };
    take(factMembers);
    take(dayMembers);
    take(noteMembers);
    take(planMembers);
    take(logMembers);
    for (const marks::FactorKind kind : marks::allFactorKinds) {
        all.push_back({"weight", Part::plan, [kind](Water& w) {
                           w.plan.weights.set(kind, 2.0 + static_cast<int>(kind));
                       }});
    }
    return all;
}

class KeptMembers : public testing::Test {
protected:
    void save(const Water& water, std::span<const Part> parts) {
        const auto saved = store_->save(water, parts, quiet);
        ASSERT_TRUE(saved.has_value()) << saved.error().sentence();
    }
    [[nodiscard]] bool holds(const Water& wanted) {
        const auto loaded = store_->load(quiet);
        EXPECT_TRUE(loaded.has_value()) << loaded.error().sentence();
        return loaded && *loaded == wanted;
    }

    const ScratchFolder folder_;
    const std::unique_ptr<store::WaterStore> store_ =
        store::create(folder_.path() / "water.gpkg").value();
};

TEST_F(KeptMembers, ComeBackWithTheirPartAndWithNoOther) {
    const Water before = plain();
    save(before, water::allParts);
    for (const Member& member : allMembers()) {
        SCOPED_TRACE(member.name);
        Water after = before;
        member.set(after);
        ASSERT_FALSE(after == before);
        std::vector<Part> others(water::allParts.begin(), water::allParts.end());
        std::erase(others, member.part);
        save(after, others);
        EXPECT_TRUE(holds(before)) << "kept with a part that it is none of";
        save(after, std::array{member.part});
        EXPECT_TRUE(holds(after)) << "not kept";
        save(before, std::array{member.part});
        EXPECT_TRUE(holds(before)) << "not taken away";
    }
}

TEST_F(KeptMembers, OfEachPartReplaceThoseOfThatPartAlone) {
    for (std::uint64_t seed = 1; seed <= 6; ++seed) {
        support::RandomWater random(seed);
        for (const Part part : water::allParts) {
            SCOPED_TRACE(std::to_string(seed) + ", part " + std::to_string(static_cast<int>(part)));
            Water expected = random.make(20);
            const Water after = random.make(20);
            save(expected, water::allParts);
            save(after, std::array{part});
            Water other = after;
            water::swapParts(expected, other, std::array{part});
            EXPECT_TRUE(holds(expected));
        }
    }
}

TEST_F(KeptMembers, OfTheGaugeAreOneLevelOrATableNeverBoth) {
    Water water = plain();
    water.days[0].gauge = soundings::Gauge::constant(units::WaterLevel::metresOnGauge(2.0));
    save(water, water::allParts);
    water.days[0].gauge =
        soundings::Gauge::table({{moment(5), units::WaterLevel::metresOnGauge(1.0)}});
    save(water, std::array{Part::days});
    EXPECT_TRUE(holds(water));
    water.days[0].gauge = soundings::Gauge::constant(units::WaterLevel::metresOnGauge(3.0));
    save(water, std::array{Part::days});
    EXPECT_TRUE(holds(water));
}

} // namespace
