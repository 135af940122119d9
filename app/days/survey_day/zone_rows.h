// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/words.h"
#include "core/structure/zone.h"

#include <QStringList>

#include <vector>

namespace days::survey_day {

/// Name, depths and area of each zone, in the map's order.
[[nodiscard]] std::vector<QStringList> zoneRows(const structure::ZoneMap& map,
                                                const wording::Words& words);

} // namespace days::survey_day
