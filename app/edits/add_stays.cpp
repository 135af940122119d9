// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/add_stays.h"

#include "app/edits/change_water.h"

namespace edits {

logbook::StayId addStays(open_water::OpenWater& open, const QString& name, logbook::Log stays) {
    if (stays.empty()) {
        return {};
    }
    std::int64_t id = water::freshId(*open.water());
    for (logbook::Stay& stay : stays) {
        stay.id = logbook::StayId(id++);
        for (logbook::Fish& run : stay.runs) {
            run.id = logbook::FishId(id++);
        }
    }
    const logbook::StayId first = stays.front().id;
    change(open, name, {water::Part::log}, [&](water::Water& water) {
        water.log.edit().insert(water.log.end(), stays.begin(), stays.end());
        logbook::sortByTime(water.log.edit());
    });
    return first;
}

} // namespace edits
