// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/record_places.h"

#include "core/rates/count_rates.h"
#include "core/water/locate.h"
#include "core/water/log_groups.h"

#include <array>

namespace water {

std::optional<rates::Record> PlaceRecords::of(geo::WaterPoint place) const {
    const Located found = locate(water_, derived_, place);
    const std::string zone = zoneGroup(water_, derived_, place);
    std::array<std::optional<std::string_view>, 2> groups;
    if (found.section != nullptr) {
        groups[0] = found.section->name;
    }
    if (zone != elsewhere) {
        groups[1] = zone;
    }
    return book_.of(groups);
}

PlaceRecords recordsOf(const Water& water, const Derived& derived, base::Progress& progress) {
    rates::RateSettings settings;
    settings.clock = water.clock;
    std::vector<rates::RateTable> tables;
    for (const auto& stays : {bySection(water, derived), byZone(water, derived)}) {
        if (auto table = rates::countRates(stays, settings, progress)) {
            tables.push_back(std::move(*table));
        }
    }
    return {water, derived, rates::RecordBook(tables)};
}

} // namespace water
