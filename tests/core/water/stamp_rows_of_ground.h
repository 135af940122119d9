// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/core/water/stamp_rows.h"

#include <array>

namespace water {

/// Lead line, weed notes, house rules.
inline constexpr std::array noteRows{
    StampRow{"leadLine.id", [](Water& w) { w.leadLine.edit()[0].id = soundings::LeadLineId(78); },
             noStep},
    StampRow{"leadLine.place.lon_deg", [](Water& w) { w.leadLine.edit()[0].place.lon_deg += 2e-4; },
             fromDraw},
    StampRow{"leadLine.place.lat_deg", [](Water& w) { w.leadLine.edit()[0].place.lat_deg += 2e-4; },
             fromDraw},
    StampRow{"leadLine.depth",
             [](Water& w) { w.leadLine.edit()[1].depth = units::Depth::metres(5.0); }, fromDraw},
    StampRow{"one lead line sounding less", [](Water& w) { w.leadLine.edit().pop_back(); },
             fromDraw},
    StampRow{"leadLine.bottom",
             [](Water& w) { w.leadLine.edit()[0].bottom = soundings::Bottom::rock; }, fromWeed},
    StampRow{"leadLine.bottom, absent", [](Water& w) { w.leadLine.edit()[0].bottom.reset(); },
             fromWeed},
    StampRow{"weedNote.id", [](Water& w) { w.weedNotes.edit()[0].id = weed::WeedNoteId(79); },
             noStep},
    StampRow{"weedNote.place.lon_deg",
             [](Water& w) { w.weedNotes.edit()[0].place.lon_deg += 3e-4; }, fromWeed},
    StampRow{"weedNote.place.lat_deg",
             [](Water& w) { w.weedNotes.edit()[0].place.lat_deg += 3e-4; }, fromWeed},
    StampRow{"weedNote.growth", [](Water& w) { w.weedNotes.edit()[0].growth = weed::Growth::none; },
             fromWeed},
    StampRow{"weedNote.height",
             [](Water& w) { w.weedNotes.edit()[0].height = units::Length::metres(0.5); }, fromWeed},
    StampRow{"weedNote.height, absent", [](Water& w) { w.weedNotes.edit()[0].height.reset(); },
             fromWeed},
    StampRow{"weedNote.seen, in another year",
             [](Water& w) { w.weedNotes.edit()[0].seen = units::dayFrom("2019-08-20"); }, fromWeed},
    StampRow{"weedNote.seen, absent", [](Water& w) { w.weedNotes.edit()[0].seen.reset(); },
             fromWeed},
    StampRow{"weedNote.extent", [](Water& w) { w.weedNotes.edit()[1].extent = weed::Extent::area; },
             fromWeed},
    StampRow{"weedNote.corners", [](Water& w) { w.weedNotes.edit()[1].corners[1].lon_deg += 1e-4; },
             fromWeed},
    StampRow{"one weed note less", [](Water& w) { w.weedNotes.edit().pop_back(); }, fromWeed},
    StampRow{"houseRules.rodLimit", [](Water& w) { w.houseRules.rodLimit = 2; }, onlyPlan},
    StampRow{"closed.name", [](Water& w) { w.houseRules.closed[0].name = "hatchery"; }, onlyPlan},
    StampRow{"closed.pieces, outer",
             [](Water& w) { w.houseRules.closed[0].pieces[0].outer[1].lon_deg += 1e-3; },
             fromSections},
    StampRow{"closed.pieces, outer north",
             [](Water& w) { w.houseRules.closed[0].pieces[0].outer[2].lat_deg -= 2.5e-4; },
             fromSections},
    StampRow{"closed.pieces, no island",
             [](Water& w) { w.houseRules.closed[0].pieces[0].islands.clear(); }, fromSections},
    StampRow{"closed.pieces, one more",
             [](Water& w) {
                 w.houseRules.closed[0].pieces.push_back(
                     {{{3.1020, 55.2010}, {3.1036, 55.2010}, {3.1036, 55.2019}}, {}});
             },
             fromSections},
    StampRow{"one closed water more",
             [](Water& w) {
                 w.houseRules.closed.push_back(
                     {"dam", {{{{3.1020, 55.1983}, {3.1036, 55.1983}, {3.1036, 55.1989}}, {}}}});
             },
             fromSections},
    StampRow{"no closed water", [](Water& w) { w.houseRules.closed.clear(); }, fromSections},
    StampRow{"houseRules.season", [](Water& w) { w.houseRules.season.reset(); }, onlyPlan},
    StampRow{"houseRules.notes", [](Water& w) { w.houseRules.notes.emplace_back("no dogs"); },
             onlyPlan}};

/// Settings and sections.
inline constexpr std::array settingRows{
    StampRow{"settings.cell", [](Water& w) { w.settings.cell = units::Length::metres(15.0); },
             fromDraw},
    StampRow{"settings.cell, absent", [](Water& w) { w.settings.cell.reset(); }, fromDraw},
    StampRow{"bands.edges",
             [](Water& w) {
                 w.settings.bands =
                     contours::Bands::make({units::Depth::metres(2.5), units::Depth::metres(5.0)},
                                           units::Depth::metres(7.0))
                         .value();
             },
             fromBands},
    StampRow{"bands.edges, one less",
             [](Water& w) {
                 w.settings.bands =
                     contours::Bands::make({units::Depth::metres(2.0)}, units::Depth::metres(7.0))
                         .value();
             },
             fromBands},
    StampRow{"bands.limit",
             [](Water& w) {
                 w.settings.bands =
                     contours::Bands::make({units::Depth::metres(2.0), units::Depth::metres(5.0)},
                                           units::Depth::metres(6.0))
                         .value();
             },
             fromBands},
    StampRow{"bands, absent", [](Water& w) { w.settings.bands.reset(); }, fromBands},
    StampRow{"settings.limit",
             [](Water& w) {
                 w.settings.bands.reset();
                 w.settings.limit = units::Depth::metres(4.0);
             },
             fromBands},
    StampRow{"settings.countsIn", [](Water& w) { w.settings.countsIn = contours::CountsIn::feet; },
             fromBands},
    StampRow{"settings.sectionArea, absent", [](Water& w) { w.settings.sectionArea.reset(); },
             fromSections},
    StampRow{"settings.sectionArea",
             [](Water& w) { w.settings.sectionArea = units::Area::hectares(6.0); }, fromSections},
    StampRow{"settings.secchi", [](Water& w) { w.settings.secchi = units::Depth::metres(3.0); },
             fromWeed},
    StampRow{"settings.secchi, absent", [](Water& w) { w.settings.secchi.reset(); }, fromWeed},
    StampRow{"settings.weedLeft", [](Water& w) { w.settings.weedLeft = 0.5; }, fromWeed},
    StampRow{"structure.fineScale",
             [](Water& w) { w.settings.structure.fineScale = units::Length::metres(50.0); },
             fromStructure},
    StampRow{"structure.fineScale, absent",
             [](Water& w) { w.settings.structure.fineScale.reset(); }, fromStructure},
    StampRow{"structure.broadScale",
             [](Water& w) { w.settings.structure.broadScale = units::Length::metres(300.0); },
             fromStructure},
    StampRow{"structure.dropOffFrom_percent",
             [](Water& w) { w.settings.structure.dropOffFrom_percent = 60.0; }, fromStructure},
    StampRow{"structure.dropOffFrom_percent, absent",
             [](Water& w) { w.settings.structure.dropOffFrom_percent.reset(); }, fromStructure},
    StampRow{"structure.highGround",
             [](Water& w) { w.settings.structure.highGround = units::Length::metres(2.0); },
             fromStructure},
    StampRow{"structure.leastArea",
             [](Water& w) { w.settings.structure.leastArea = units::Area::hectares(2.0); },
             fromStructure},
    StampRow{"sectionName.seed",
             [](Water& w) {
                 w.sectionNames[0].seed = {3.1020, 55.2010};
             },
             fromSections},
    StampRow{"sectionName.name", [](Water& w) { w.sectionNames[0].name = "Hole"; }, fromSections},
    StampRow{"sectionName.number", [](Water& w) { w.sectionNames[0].number = 9; }, fromSections},
    StampRow{"no section name", [](Water& w) { w.sectionNames.clear(); }, fromSections},
    StampRow{"sectionChange.kind",
             [](Water& w) { w.sectionChanges[0].kind = sections::SectionChange::Kind::join; },
             fromSections},
    StampRow{"sectionChange.places",
             [](Water& w) { w.sectionChanges[1].places[0].lat_deg += 2e-3; }, fromSections},
    StampRow{"sectionChange.line", [](Water& w) { w.sectionChanges[0].line[1].lat_deg -= 1e-3; },
             fromSections},
    StampRow{"section changes in another order",
             [](Water& w) { std::swap(w.sectionChanges[0], w.sectionChanges[1]); }, fromSections},
    StampRow{"one section change less",
             [](Water& w) { w.sectionChanges.erase(w.sectionChanges.begin()); }, fromSections}};

} // namespace water
