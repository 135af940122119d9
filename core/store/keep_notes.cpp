// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/geopackage.h"
#include "core/store/keep_parts.h"
#include "core/store/kept_values.h"

#include <algorithm>

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

namespace {

GeometryBlob blobOfExtent(const weed::WeedNote& note) {
    return note.extent == weed::Extent::area ? blobOf(geo::LonLatPiece{note.corners, {}})
                                             : blobOf(std::span(note.corners));
}

/// Lines and areas that were noted, each in the layer of its own kind of geometry.
void keepExtents(Connection& connection, const water::Water& water) {
    connection.execute("DELETE FROM weed_lines");
    connection.execute("DELETE FROM weed_areas");
    Statement line(connection, "INSERT INTO weed_lines (geom, note) VALUES (?,?)");
    Statement area(connection, "INSERT INTO weed_areas (geom, note) VALUES (?,?)");
    LonLatBox lines;
    LonLatBox areas;
    std::int64_t row = 0; // notes have the rows 1, 2, ...: the table has just been emptied
    for (const weed::WeedNote& note : water.weedNotes) {
        ++row;
        if (note.extent == weed::Extent::place) {
            continue;
        }
        const bool isArea = note.extent == weed::Extent::area;
        (isArea ? areas : lines).take(std::span(note.corners));
        (isArea ? area : line).run(Blob(blobOfExtent(note)), row);
    }
    setExtent(connection, "weed_lines", lines);
    setExtent(connection, "weed_areas", areas);
}

/// \param fids of the notes, in their order.
void recallExtents(Connection& connection, std::span<const std::int64_t> fids,
                   std::vector<weed::WeedNote>& notes) {
    const auto take = [&](std::int64_t fid, weed::Extent extent, std::vector<geo::LonLat> corners) {
        const auto at = std::ranges::lower_bound(fids, fid);
        const bool hasNote = at != fids.end() && *at == fid;
        weed::WeedNote shape = weed::noteOver(extent, std::move(corners));
        if (!hasNote) {
            connection.failDamaged("a line or an area of weed belongs to no note");
        } else if (shape.extent != extent) {
            connection.failDamaged("a line or an area of weed has too few corners");
        }
        if (connection.isRowWhole() && hasNote) {
            weed::WeedNote& note = notes[static_cast<std::size_t>(at - fids.begin())];
            note.extent = shape.extent;
            note.corners = std::move(shape.corners);
        }
    };
    Statement lines(connection, "SELECT geom, note FROM weed_lines ORDER BY fid");
    lines.ask();
    while (lines.next()) {
        take(lines.wholeNumber(1), weed::Extent::line, lineAt(connection, lines, 0));
    }
    Statement areas(connection, "SELECT geom, note FROM weed_areas ORDER BY fid");
    areas.ask();
    while (areas.next()) {
        take(areas.wholeNumber(1), weed::Extent::area, pieceAt(connection, areas, 0).outer);
    }
}

} // namespace

void keepWeedNotes(Connection& connection, const water::Water& water) {
    connection.execute("DELETE FROM weed_notes");
    Statement insert(connection, "INSERT INTO weed_notes (fid, geom, number, growth, height_m, "
                                 "seen) VALUES (?,?,?,?,?,?)");
    LonLatBox box;
    std::int64_t row = 0;
    for (const weed::WeedNote& note : water.weedNotes) {
        box.take(note.place);
        std::optional<double> height_m;
        if (note.height) {
            height_m = note.height->inMetres();
        }
        std::optional<std::string> seen;
        if (note.seen) {
            seen = units::isoText(*note.seen);
        }
        insert.run(++row, Blob(blobOf(note.place)), note.id.number(), weed::nameOf(note.growth),
                   kept(connection, "height_m", height_m), seen);
    }
    setExtent(connection, "weed_notes", box);
    keepExtents(connection, water);
}

void recallWeedNotes(Connection& connection, water::Water& water) {
    Statement rows(connection,
                   "SELECT geom, number, growth, height_m, seen, fid FROM weed_notes ORDER BY fid");
    rows.ask();
    std::vector<weed::WeedNote>& notes = water.weedNotes.edit();
    std::vector<std::int64_t> fids;
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
        if (const auto seen = rows.textIfAny(4)) {
            note.seen = units::dayFrom(*seen);
            if (!note.seen) {
                connection.failDamaged("'" + *seen + "' is no day");
            }
        }
        const std::int64_t fid = rows.wholeNumber(5);
        takeRow(connection, notes, note);
        if (notes.size() > fids.size()) { // it was not left out
            fids.push_back(fid);
        }
    }
    recallExtents(connection, fids, notes);
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
