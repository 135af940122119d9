// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/geopackage.h"
#include "core/store/schema/steps.h"

namespace store::schema {

namespace {

// What the steps after the soundings made, each with the stamp of what it was made from, so that a
// water that is opened need not be worked out anew.
constexpr const char* stepResults = R"sql(
CREATE TABLE step_results (step TEXT PRIMARY KEY NOT NULL, stamp INTEGER NOT NULL,
  content_sum INTEGER NOT NULL, content BLOB NOT NULL);
)sql";

} // namespace

void layStep6(Connection& connection) {
    connection.execute(stepResults);
    registerAttributes(connection, "step_results",
                       "results of the steps, in the program's own form; made again where missing");
}

} // namespace store::schema
