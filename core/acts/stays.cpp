// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acts/stays.h"

#include "core/water/known_stays.h"

#include <algorithm>

namespace acts {

using base::Result;
using logbook::Fish;
using logbook::Log;
using logbook::Stay;
using logbook::StayId;
using water::Water;

namespace {

std::unexpected<base::Error> noSuchStay() {
    return base::fail(base::ErrorKind::wrongUse, "the log has no such stay", "log",
                      "choose one of its stays");
}

/// Sorted, unless it is.
void sort(Log& log) {
    const auto order = [](const Stay& stay) { return std::pair(stay.start, stay.id); };
    if (!std::ranges::is_sorted(log, {}, order)) {
        logbook::sortByTime(log);
    }
}

} // namespace

Result<Water> addStays(const Water& water, Log stays) {
    water::KnownStays known(water.log);
    std::int64_t next = water::freshId(water);
    Log fresh;
    for (Stay& stay : stays) {
        if (known.holds(stay)) {
            continue;
        }
        stay.id = StayId(next++);
        for (Fish& run : stay.runs) {
            run.id = logbook::FishId(next++);
        }
        fresh.push_back(stay);
        known.take(fresh.back());
    }
    Water after = water;
    if (!fresh.empty()) {
        Log& log = after.log.edit();
        log.insert(log.end(), fresh.begin(), fresh.end());
        sort(log);
    }
    return after;
}

Result<Water> changeStay(const Water& water, StayId id,
                         const std::function<void(Stay&)>& changeOne) {
    const auto known = std::ranges::find(water.log, id, &Stay::id);
    if (known == water.log.end()) {
        return noSuchStay();
    }
    Stay stay = *known;
    changeOne(stay);
    stay.id = id;
    if (std::ranges::any_of(stay.runs, [](const Fish& run) { return !run.id.isGiven(); })) {
        std::int64_t next = water::freshId(water);
        for (Fish& run : stay.runs) {
            if (!run.id.isGiven()) {
                run.id = logbook::FishId(next++);
            }
        }
    }
    std::ranges::stable_sort(stay.runs, {}, &Fish::time);
    Water after = water;
    if (stay == *known) {
        return after;
    }
    const auto position = known - water.log.begin();
    Log& log = after.log.edit();
    log[static_cast<std::size_t>(position)] = std::move(stay);
    sort(log);
    return after;
}

Result<Water> removeStay(const Water& water, StayId id) {
    if (std::ranges::find(water.log, id, &Stay::id) == water.log.end()) {
        return noSuchStay();
    }
    Water after = water;
    std::erase_if(after.log.edit(), [id](const Stay& stay) { return stay.id == id; });
    return after;
}

} // namespace acts
