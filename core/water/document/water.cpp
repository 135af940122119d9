// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/document/water.h"

#include <algorithm>

namespace water {

std::int64_t freshId(const Water& water) {
    std::int64_t highest = 0;
    const auto take = [&highest](auto id) { highest = std::max(highest, id.number()); };
    for (const auto& day : water.days) {
        take(day.id);
    }
    for (const auto& sounding : water.leadLine) {
        take(sounding.id);
    }
    for (const auto& note : water.weedNotes) {
        take(note.id);
    }
    return std::max(highest, logbook::greatestIdIn(water.log)) + 1;
}

bool planFromTomorrow(Water& water, units::Moment now) {
    const auto today = std::chrono::sys_days(water.clock.dayOf(now));
    if (std::chrono::sys_days(water.plan.day.day) >= today) {
        return false;
    }
    water.plan.day.day = units::Day(today + std::chrono::days(1));
    water.plan.day.wind = {};
    water.plan.day.windLater.reset();
    return true;
}

base::Result<void> layFrame(Water& water) {
    if (water.frame) {
        return {};
    }
    std::vector<geo::LonLat> places;
    for (const geo::LonLatPiece& piece : water.shoreline) {
        places.insert(places.end(), piece.outer.begin(), piece.outer.end());
    }
    if (places.empty()) {
        for (const soundings::SurveyDay& day : water.days) {
            for (const soundings::Sounding& sounding : day.soundings) {
                places.push_back(sounding.place);
            }
        }
    }
    auto frame = geo::WaterFrame::around(places);
    if (!frame) {
        return std::unexpected(frame.error());
    }
    water.frame = *frame;
    return {};
}

} // namespace water
