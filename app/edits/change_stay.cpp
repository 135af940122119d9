// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/change_stay.h"

#include "app/edits/change_water.h"

#include <algorithm>

namespace edits {

void changeStay(open_water::OpenWater& open, const QString& name, logbook::StayId id,
                const std::function<void(logbook::Stay&)>& changeOne) {
    const std::int64_t fresh = water::freshId(*open.water());
    change(open, name, {water::Part::log}, [&](water::Water& water) {
        std::int64_t next = fresh;
        for (logbook::Stay& stay : water.log.edit()) {
            if (stay.id != id) {
                continue;
            }
            changeOne(stay);
            for (logbook::Fish& run : stay.runs) {
                if (!run.id.isGiven()) {
                    run.id = logbook::FishId(next++);
                }
            }
            std::ranges::stable_sort(stay.runs, {}, &logbook::Fish::time);
        }
        logbook::sortByTime(water.log.edit());
    });
}

} // namespace edits
