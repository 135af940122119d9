// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/geopackage.h"
#include "core/store/keep_parts.h"
#include "core/store/kept_values.h"

#include <fmt/format.h>

namespace store {

namespace {

/// What stands in the place of a number where it is a part of the division before the user changed
/// it.
constexpr int ofThePartsBefore = 0;

} // namespace

void keepNumbering(Connection& connection, const water::Water& water) {
    connection.execute("DELETE FROM numbered_water; DELETE FROM division");
    Statement insert(connection,
                     "INSERT INTO numbered_water (geom, number, is_on_map) VALUES (?,?,?)");
    LonLatBox box;
    for (const sections::NumberedWater& numbered : water.numbering.waters) {
        box.take(std::span(numbered.pieces));
        insert.run(Blob(blobOf(std::span(numbered.pieces))), numbered.number, numbered.isOnMap);
    }
    for (const std::vector<geo::LonLatPiece>& part : water.numbering.parts) {
        box.take(std::span(part));
        insert.run(Blob(blobOf(std::span(part))), ofThePartsBefore, false);
    }
    setExtent(connection, "numbered_water", box);
    Statement size(connection, "INSERT INTO division (id, wanted_area_m2) VALUES (1,?)");
    size.run(water.numbering.wantedArea.inSquareMetres());
    setChanged(connection, "division");
}

void recallNumbering(Connection& connection, water::Water& water) {
    Statement size(connection, "SELECT wanted_area_m2 FROM division");
    size.ask();
    if (size.next()) {
        water.numbering.wantedArea = units::Area::squareMetres(size.number(0));
    }
    Statement rows(connection, "SELECT geom, number, is_on_map FROM numbered_water ORDER BY fid");
    rows.ask();
    while (rows.next()) {
        const int number = intAt(connection, rows, 1);
        std::vector<geo::LonLatPiece> pieces = piecesAt(connection, rows, 0);
        if (!connection.isRowWhole()) {
            continue;
        }
        const auto& known = water.numbering.waters;
        if (number == ofThePartsBefore) {
            water.numbering.parts.edit().push_back(std::move(pieces));
        } else if (number > (known.empty() ? ofThePartsBefore : known.back().number)) {
            water.numbering.waters.edit().push_back(
                {number, rows.wholeNumber(2) != 0, std::move(pieces)});
        } else {
            connection.failDamaged(fmt::format("two sections numbered {}", number));
        }
    }
}

} // namespace store
