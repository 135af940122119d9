// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/geopackage.h"
#include "core/store/keep_parts.h"
#include "core/store/kept_values.h"

namespace store {

void keepSheets(Connection& connection, const water::Water& water) {
    connection.execute("DELETE FROM sheet_stops");
    Statement insert(connection, "INSERT INTO sheet_stops (geom, day, rank, called, from_time, "
                                 "to_time) VALUES (?,?,?,?,?,?)");
    LonLatBox box;
    for (const water::BoatSheet& sheet : water.sheets) {
        for (const water::BoatSheet::Stop& stop : sheet.stops) {
            box.take(stop.place);
            insert.run(Blob(blobOf(stop.place)), units::isoText(sheet.day), stop.rank, stop.called,
                       keptTime(stop.from), keptTime(stop.to));
        }
    }
    setExtent(connection, "sheet_stops", box);
}

void recallSheets(Connection& connection, water::Water& water) {
    Statement rows(connection, "SELECT geom, day, rank, called, from_time, to_time FROM "
                               "sheet_stops ORDER BY day, fid");
    rows.ask();
    while (rows.next()) {
        const std::string text = rows.text(1);
        const auto day = units::dayFrom(text);
        if (!day) {
            connection.failDamaged("the sheet's day '" + text + "' is no day");
            continue;
        }
        if (water.sheets.empty() || water.sheets.back().day != *day) {
            water.sheets.push_back({*day, {}});
        }
        takeRow(connection, water.sheets.back().stops,
                {intAt(connection, rows, 2), rows.text(3), placeAt(connection, rows, 0),
                 momentAt(connection, rows, 4), momentAt(connection, rows, 5)});
    }
}

} // namespace store
