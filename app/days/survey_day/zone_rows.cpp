// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/zone_rows.h"

namespace days::survey_day {

std::vector<QStringList> zoneRows(const structure::ZoneMap& map, const wording::Words& words) {
    std::vector<QStringList> rows;
    rows.reserve(map.zones.size());
    for (const structure::Zone& zone : map.zones) {
        rows.push_back({QString::fromStdString(zone.name),
                        words.depthRange(zone.shallowest, zone.deepest), words.area(zone.area)});
    }
    return rows;
}

} // namespace days::survey_day
