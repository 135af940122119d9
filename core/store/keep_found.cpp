// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/keep_found.h"

#include "core/store/geopackage.h"
#include "core/store/reduction_rows.h"
#include "core/store/results/keep_results.h"
#include "core/store/statement.h"

#include <bit>

#include <fmt/format.h>

namespace store {

namespace {

std::vector<geo::LonLatPiece> onEarth(const std::vector<geo::Piece>& pieces,
                                      const geo::WaterFrame& frame) {
    std::vector<geo::LonLatPiece> made;
    for (const geo::Piece& piece : pieces) {
        made.push_back(geo::toEarth(piece, frame));
    }
    return made;
}

/// The fid of each of the day's soundings, in their order.
std::vector<std::int64_t> fidsOf(Connection& connection, std::int64_t day) {
    std::vector<std::int64_t> fids;
    Statement rows(connection, "SELECT fid FROM soundings WHERE day_id=? ORDER BY fid");
    rows.ask(day);
    while (rows.next()) {
        fids.push_back(rows.wholeNumber(0));
    }
    return fids;
}

void keepReducedDay(Connection& connection, std::int64_t id, const reduction::ReducedDay& day,
                    base::Progress& progress) {
    const std::int64_t stamp = reductionStampOf(day);
    Statement kept(connection, "SELECT reduction_stamp FROM survey_days WHERE id=?");
    kept.ask(id);
    if (!kept.next() || (!kept.isEmpty(0) && kept.wholeNumber(0) == stamp)) {
        return;
    }
    kept.reset();
    const std::vector<std::int64_t> fids = fidsOf(connection, id);
    if (fids.size() != day.depth_m.size() || fids.size() != day.verdicts.size()) {
        return; // Reduced from other soundings than the file holds.
    }
    Statement update(connection, "UPDATE soundings SET reduced_depth_m=?, set_aside=? WHERE fid=?");
    for (std::size_t i = 0; i < fids.size(); ++i) {
        const ReductionRow row = reductionRowOf(day, i);
        update.run(row.depth_m, row.setAside, fids[i]);
        if (progress.stopAsked()) {
            connection.fail(base::cancelled());
        }
    }
    Statement note(connection, "UPDATE survey_days SET reduction_stamp=? WHERE id=?");
    note.run(stamp, id);
}

void keepReduced(Connection& connection, const water::Water& water, const water::Derived& found,
                 base::Progress& progress) {
    if (!found.checked || found.checked->survey.days.size() != water.days.size()) {
        return;
    }
    for (std::size_t i = 0; i < water.days.size(); ++i) {
        progress.tell(static_cast<double>(i) / static_cast<double>(water.days.size()));
        keepReducedDay(connection, water.days[i].id.number(), found.checked->survey.days[i],
                       progress);
    }
}

void keepContours(Connection& connection, const water::WaterForm& form,
                  const geo::WaterFrame& frame) {
    Statement insert(connection, "INSERT INTO contours (geom, depth_m) VALUES (?,?)");
    LonLatBox box;
    for (const contours::Contour& contour : form.contours) {
        const std::vector<geo::LonLat> line = frame.toEarth(std::span(contour.line));
        box.take(std::span(line));
        insert.run(Blob(blobOf(std::span(line))), contour.depth.inMetres());
    }
    setExtent(connection, "contours", box);
}

void keepBands(Connection& connection, const water::WaterForm& form, const geo::WaterFrame& frame) {
    Statement insert(connection, "INSERT INTO bands (geom, from_m, to_m) VALUES (?,?,?)");
    LonLatBox box;
    for (const contours::BandPolygons& band : form.bandPolygons) {
        const auto pieces = onEarth(band.pieces, frame);
        box.take(std::span(pieces));
        const auto to_m = band.to ? std::optional(band.to->inMetres()) : std::nullopt;
        insert.run(Blob(blobOf(std::span(pieces))), band.from.inMetres(), to_m);
    }
    setExtent(connection, "bands", box);
}

void keepZones(Connection& connection, const water::Derived& found, const geo::WaterFrame& frame) {
    Statement insert(connection, "INSERT INTO zones (geom, kind, name, area_m2, shallowest_m, "
                                 "deepest_m) VALUES (?,?,?,?,?,?)");
    LonLatBox box;
    const auto keepAll = [&](const structure::ZoneMap& map) {
        for (const structure::Zone& zone : map.zones) {
            const auto pieces = onEarth(zone.pieces, frame);
            box.take(std::span(pieces));
            insert.run(Blob(blobOf(std::span(pieces))), structure::nameOf(zone.kind), zone.name,
                       zone.area.inSquareMetres(), zone.shallowest.inMetres(),
                       zone.deepest.inMetres());
        }
    };
    if (found.structure) {
        keepAll(*found.structure);
    }
    if (found.weed) {
        keepAll(found.weed->zones);
    }
    setExtent(connection, "zones", box);
}

void keepSections(Connection& connection, const sections::SectionMap& map,
                  const geo::WaterFrame& frame) {
    Statement insert(connection,
                     "INSERT INTO sections (geom, name, area_m2, mean_depth_m, max_depth_m, "
                     "shoreline_m, weed_share, drop_off_m, number) VALUES (?,?,?,?,?,?,?,?,?)");
    LonLatBox box;
    for (const sections::Section& section : map.sections) {
        const auto pieces = onEarth(section.pieces, frame);
        box.take(std::span(pieces));
        insert.run(Blob(blobOf(std::span(pieces))), section.name, section.area.inSquareMetres(),
                   section.meanDepth.inMetres(), section.maxDepth.inMetres(),
                   section.shore.inMetres(), section.weedShare, section.dropOff.inMetres(),
                   section.number);
    }
    setExtent(connection, "sections", box);
}

std::optional<double> metresIfAny(const std::optional<units::Length>& length) {
    return length ? std::optional(length->inMetres()) : std::nullopt;
}

void keepMarks(Connection& connection, const marks::ToldMarks& told) {
    Statement insert(connection, "INSERT INTO marks (geom, rank, depth_m, trust_m, section, score, "
                                 "fetch_m, wave_height_m, reasons) VALUES (?,?,?,?,?,?,?,?,?)");
    LonLatBox box;
    for (const marks::Mark& mark : told.marks) {
        box.take(mark.lonLat);
        insert.run(Blob(blobOf(mark.lonLat)), mark.rank, mark.depth.inMetres(),
                   mark.trust.inMetres(), mark.sectionName, mark.score, metresIfAny(mark.fetch),
                   metresIfAny(mark.waveHeight), told.reasonsOf(mark.factors));
    }
    setExtent(connection, "marks", box);
}

} // namespace

std::int64_t reductionStampOf(const reduction::ReducedDay& day) {
    water::Stamp stamp;
    stamp.take(std::as_bytes(std::span(day.depth_m)));
    stamp.take(std::as_bytes(std::span(day.verdicts)));
    return std::bit_cast<std::int64_t>(stamp.value());
}

void keepFound(Connection& connection, const water::Water& water, const water::Derived& found,
               const marks::ToldMarks& told, base::Progress& progress) {
    if (!water.frame) {
        return;
    }
    keepReduced(connection, water, found, progress);
    keepResults(connection, found);
    connection.execute("DELETE FROM contours; DELETE FROM bands; DELETE FROM zones;"
                       "DELETE FROM sections; DELETE FROM marks");
    const water::WaterForm noForm;
    keepContours(connection, found.form ? *found.form : noForm, *water.frame);
    keepBands(connection, found.form ? *found.form : noForm, *water.frame);
    keepZones(connection, found, *water.frame);
    keepSections(connection, found.sections ? *found.sections : sections::SectionMap(),
                 *water.frame);
    keepMarks(connection, told);
}

} // namespace store
