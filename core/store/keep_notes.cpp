// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/geopackage.h"
#include "core/store/keep_parts.h"
#include "core/store/kept_values.h"

namespace store {

void keepShoreline(Connection& connection, const water::Water& water) {
    connection.execute("DELETE FROM shoreline");
    Statement insert(connection, "INSERT INTO shoreline (geom) VALUES (?)");
    for (const geo::LonLatPiece& piece : water.shoreline) {
        insert.run(Blob(blobOf(piece)));
    }
    LonLatBox box;
    box.take(std::span(water.shoreline));
    setExtent(connection, "shoreline", box);
}

void recallShoreline(Connection& connection, water::Water& water) {
    Statement rows(connection, "SELECT geom FROM shoreline ORDER BY fid");
    rows.ask();
    std::vector<geo::LonLatPiece>& pieces = water.shoreline.edit();
    while (rows.next()) {
        takeRow(connection, pieces, pieceAt(connection, rows, 0));
    }
}

void keepLeadLine(Connection& connection, const water::Water& water) {
    connection.execute("DELETE FROM lead_line");
    Statement insert(connection,
                     "INSERT INTO lead_line (geom, number, depth_m, bottom) VALUES (?,?,?,?)");
    LonLatBox box;
    for (const soundings::LeadLineSounding& sounding : water.leadLine) {
        box.take(sounding.place);
        std::optional<std::string_view> bottom;
        if (sounding.bottom) {
            bottom = soundings::nameOf(*sounding.bottom);
        }
        insert.run(Blob(blobOf(sounding.place)), sounding.id.number(),
                   kept(connection, "depth_m", sounding.depth.inMetres()), bottom);
    }
    setExtent(connection, "lead_line", box);
}

void recallLeadLine(Connection& connection, water::Water& water) {
    Statement rows(connection, "SELECT geom, number, depth_m, bottom FROM lead_line ORDER BY fid");
    rows.ask();
    std::vector<soundings::LeadLineSounding>& leadLine = water.leadLine.edit();
    while (rows.next()) {
        soundings::LeadLineSounding sounding;
        sounding.place = placeAt(connection, rows, 0);
        sounding.id = soundings::LeadLineId(rows.wholeNumber(1));
        sounding.depth = units::Depth::metres(rows.number(2));
        if (const auto name = rows.textIfAny(3)) {
            sounding.bottom = soundings::bottomNamed(*name);
            if (!sounding.bottom) {
                connection.failDamaged("there is no bottom named '" + *name + "'");
            }
        }
        takeRow(connection, leadLine, sounding);
    }
}

void keepWeedNotes(Connection& connection, const water::Water& water) {
    connection.execute("DELETE FROM weed_notes");
    Statement insert(connection,
                     "INSERT INTO weed_notes (geom, number, growth, height_m) VALUES (?,?,?,?)");
    LonLatBox box;
    for (const weed::WeedNote& note : water.weedNotes) {
        box.take(note.place);
        std::optional<double> height_m;
        if (note.height) {
            height_m = note.height->inMetres();
        }
        insert.run(Blob(blobOf(note.place)), note.id.number(), weed::nameOf(note.growth),
                   kept(connection, "height_m", height_m));
    }
    setExtent(connection, "weed_notes", box);
}

void recallWeedNotes(Connection& connection, water::Water& water) {
    Statement rows(connection,
                   "SELECT geom, number, growth, height_m FROM weed_notes ORDER BY fid");
    rows.ask();
    std::vector<weed::WeedNote>& notes = water.weedNotes.edit();
    while (rows.next()) {
        weed::WeedNote note;
        note.place = placeAt(connection, rows, 0);
        note.id = weed::WeedNoteId(rows.wholeNumber(1));
        const auto growth = weed::growthNamed(rows.text(2));
        if (!growth) {
            connection.failDamaged("there is no weed growth named '" + rows.text(2) + "'");
        }
        note.growth = growth.value_or(weed::Growth::none);
        if (const auto height_m = rows.numberIfAny(3)) {
            note.height = units::Length::metres(*height_m);
        }
        takeRow(connection, notes, note);
    }
}

void keepSectionNames(Connection& connection, const water::Water& water) {
    connection.execute("DELETE FROM section_names");
    Statement insert(connection, "INSERT INTO section_names (geom, name, number) VALUES (?,?,?)");
    LonLatBox box;
    for (const sections::SectionName& name : water.sectionNames) {
        box.take(name.seed);
        insert.run(Blob(blobOf(name.seed)), name.name, name.number);
    }
    setExtent(connection, "section_names", box);
}

void recallSectionNames(Connection& connection, water::Water& water) {
    Statement rows(connection, "SELECT geom, name, number FROM section_names ORDER BY fid");
    rows.ask();
    while (rows.next()) {
        takeRow(connection, water.sectionNames,
                {placeAt(connection, rows, 0), rows.text(1), intAt(connection, rows, 2)});
    }
}

} // namespace store
