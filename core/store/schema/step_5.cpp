// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/geopackage.h"
#include "core/store/schema/steps.h"

namespace store::schema {

namespace {

// Where the user himself put anchors and baits of his own marks: `mark` counts the pinned marks
// from 1, `part` is bow, stern or bait.
constexpr const char* whatIsLaidByHand = R"sql(
CREATE TABLE laid_by_hand (fid INTEGER PRIMARY KEY NOT NULL, geom POINT NOT NULL,
  mark INTEGER NOT NULL, part TEXT NOT NULL, wind_from_deg DOUBLE);
)sql";

} // namespace

void layStep5(Connection& connection) {
    connection.execute(whatIsLaidByHand);
    registerFeatures(connection, "laid_by_hand", "POINT",
                     "anchors and baits where the user laid them, by pinned mark");
}

} // namespace store::schema
