// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/spatial_index.h"

#include "core/store/statement.h"

#include <fmt/format.h>

namespace store {

namespace {

bool isTable(Connection& connection, std::string_view name, std::string_view madeAs) {
    Statement rows(connection, "SELECT 1 FROM sqlite_master WHERE type='table' AND name=? AND sql "
                               "LIKE ?");
    rows.ask(name, madeAs);
    return rows.next();
}

} // namespace

void followChanges(Connection& connection) {
    const std::set<std::string> layers = connection.takeChanged();
    const bool areCounted = isTable(connection, "gpkg_ogr_contents", "create table%");
    for (const std::string& layer : layers) {
        const std::string index = "rtree_" + layer + "_geom";
        if (isTable(connection, index, "create virtual table%using rtree%")) {
            connection.execute(fmt::format(
                "DELETE FROM {0}; INSERT INTO {0} SELECT fid, ST_MinX(geom), ST_MaxX(geom), "
                "ST_MinY(geom), ST_MaxY(geom) FROM {1} WHERE NOT ST_IsEmpty(geom)",
                index, layer));
        }
        if (areCounted) {
            Statement(connection, "UPDATE gpkg_ogr_contents SET feature_count=NULL WHERE "
                                  "table_name=?")
                .run(layer);
        }
    }
}

} // namespace store
