// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/zone_rows.h"

#include "app/wording/tongue.h"
#include "app/wording/zone_words.h"
#include "core/geo/path.h"

namespace days::survey_day {

namespace {

units::Length lengthOf(const std::vector<geo::Path>& lines) {
    units::Length sum;
    for (const geo::Path& line : lines) {
        sum = sum + geo::lengthOf(line);
    }
    return sum;
}

bool hasEdge(const structure::Zone& zone) {
    return zone.edgeLength.inMetres() > 0.0;
}

} // namespace

QStringList zoneColumns() {
    return {wording::Tongue::tr("Zone"), wording::Tongue::tr("Depths"), wording::Tongue::tr("Size"),
            wording::Tongue::tr("Trust")};
}

std::vector<QStringList> zoneRows(const structure::ZoneMap& map, const wording::Words& words) {
    std::vector<QStringList> rows;
    rows.reserve(map.zones.size());
    for (const structure::Zone& zone : map.zones) {
        rows.push_back({QString::fromStdString(zone.name),
                        words.depthRange(zone.shallowest, zone.deepest),
                        hasEdge(zone) ? words.length(zone.edgeLength) : words.area(zone.area),
                        words.plusMinus(units::Depth::metres(zone.meanTrust_m))});
    }
    return rows;
}

QString zoneCard(const structure::ZoneMap& map, int number, const wording::Words& words) {
    if (number < 0 || static_cast<std::size_t>(number) >= map.zones.size()) {
        return {};
    }
    const structure::Zone& zone = map.zones[static_cast<std::size_t>(number)];
    QString text = QStringLiteral("%1: %2").arg(QString::fromStdString(zone.name),
                                                words.areaInBoth(zone.area));
    if (hasEdge(zone)) {
        text += wording::Tongue::tr("; edge %1").arg(words.length(zone.edgeLength));
        const units::Length atBank = lengthOf(zone.shoreTops);
        if (atBank / zone.edgeLength > 0.99) {
            text += wording::Tongue::tr(", all along the bank");
        } else if (atBank.inMetres() >= 1.0) {
            text += wording::Tongue::tr(", of it %1 along the bank").arg(words.length(atBank));
        }
    }
    return text + wording::Tongue::tr("; depths on average within %1.")
                      .arg(words.plusMinus(units::Depth::metres(zone.meanTrust_m)));
}

QString zoneHelp(const structure::ZoneMap& map, int number) {
    return number < 0 || static_cast<std::size_t>(number) >= map.zones.size()
               ? QString()
               : wording::meaningOf(map.zones[static_cast<std::size_t>(number)].kind);
}

} // namespace days::survey_day
