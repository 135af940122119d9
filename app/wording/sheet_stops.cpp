// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/sheet_stops.h"

#include "app/wording/spoken_names.h"

#include <algorithm>

namespace wording {

water::BoatSheet boatSheetOf(const water::PlannedDay& planned, const Words& words) {
    // As the sheet shows them: what is ticked is what was seen.
    const auto minute = [](units::Moment moment) -> units::Moment {
        return std::chrono::round<std::chrono::minutes>(moment);
    };
    water::BoatSheet sheet{planned.plan.day.day, {}};
    for (const marks::DayStop& stop : planned.day.stops) {
        const auto mark = std::ranges::find(planned.marks, stop.rank, &marks::Mark::rank);
        if (mark != planned.marks.end()) {
            sheet.stops.push_back({stop.rank, calledBy(*mark, words).toStdString(), mark->lonLat,
                                   minute(stop.leave - stop.stay), minute(stop.leave)});
        }
    }
    return sheet;
}

} // namespace wording
