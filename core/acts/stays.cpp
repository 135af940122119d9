// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acts/stays.h"

#include "core/water/steps/known_stays.h"

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
        logbook::putInOrder(after.log, std::move(fresh));
    }
    return after;
}

Result<Water> changeStay(const Water& water, StayId id,
                         const std::function<void(Stay&)>& changeOne) {
    const auto position = logbook::positionOf(water.log, id);
    if (!position) {
        return noSuchStay();
    }
    const Stay& known = water.log[*position];
    Stay stay = known;
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
    if (stay != known) {
        logbook::replace(after.log, *position, std::move(stay));
    }
    return after;
}

Result<Water> removeStay(const Water& water, StayId id) {
    const auto position = logbook::positionOf(water.log, id);
    if (!position) {
        return noSuchStay();
    }
    Water after = water;
    after.log.erase(*position);
    return after;
}

} // namespace acts
