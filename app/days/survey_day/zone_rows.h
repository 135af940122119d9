// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/words.h"
#include "core/structure/zone.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace days::survey_day {

/// The heads of the columns of zoneRows().
[[nodiscard]] QStringList zoneColumns();
/// Name, depths, size and mean trust of each zone, in the map's order. The size is the length of
/// the edge where there is one to lay a bait on, and the area elsewhere.
[[nodiscard]] std::vector<QStringList> zoneRows(const structure::ZoneMap& map,
                                                const wording::Words& words);
/// What a row has no room for: "Drop-off 3: 5.2 ha (12.8 ac); edge 840 m, of it 310 m along the
/// bank." \param number of the map; empty where it holds no such zone.
[[nodiscard]] QString zoneCard(const structure::ZoneMap& map, int number,
                               const wording::Words& words);
/// What such a zone is, in a sentence. \param number of the map; empty where it holds no such zone.
[[nodiscard]] QString zoneHelp(const structure::ZoneMap& map, int number);

} // namespace days::survey_day
