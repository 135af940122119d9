// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/geopackage.h"
#include "core/store/keep_parts.h"
#include "core/store/kept_values.h"

#include <algorithm>

namespace store {

namespace {

using sections::SectionChange;

constexpr std::array<std::string_view, 3> kindNames{"join", "split", "border"};

} // namespace

void keepSectionChanges(Connection& connection, const water::Water& water) {
    connection.execute("DELETE FROM section_changes; DELETE FROM section_change_points");
    Statement change(connection, "INSERT INTO section_changes (id, kind) VALUES (?,?)");
    Statement point(connection, "INSERT INTO section_change_points (geom, change_id, is_on_line) "
                                "VALUES (?,?,?)");
    LonLatBox box;
    std::int64_t id = 0;
    for (const SectionChange& made : water.sectionChanges) {
        change.run(++id, kindNames.at(static_cast<std::size_t>(made.kind)));
        for (const auto* points : {&made.places, &made.line}) {
            box.take(std::span(*points));
            for (const geo::LonLat& p : *points) {
                point.run(Blob(blobOf(p)), id, points == &made.line);
            }
        }
    }
    setChanged(connection, "section_changes");
    setExtent(connection, "section_change_points", box);
}

void recallSectionChanges(Connection& connection, water::Water& water) {
    Statement changes(connection, "SELECT id, kind FROM section_changes ORDER BY id");
    Statement points(connection, "SELECT geom, is_on_line FROM section_change_points "
                                 "WHERE change_id=? ORDER BY fid");
    changes.ask();
    while (changes.next()) {
        const std::string kind = changes.text(1);
        const auto* const known = std::find(kindNames.begin(), kindNames.end(), kind);
        if (known == kindNames.end()) {
            connection.failDamaged("there is no change of sections named '" + kind + "'");
            continue;
        }
        SectionChange change;
        change.kind = static_cast<SectionChange::Kind>(known - kindNames.begin());
        points.ask(changes.wholeNumber(0));
        while (points.next()) {
            takeRow(connection, points.wholeNumber(1) != 0 ? change.line : change.places,
                    placeAt(connection, points, 0));
        }
        water.sectionChanges.push_back(std::move(change));
    }
}

} // namespace store
