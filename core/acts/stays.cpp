// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acts/stays.h"

#include <algorithm>
#include <set>

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

void giveIdsToNew(Stay& stay, std::int64_t& next) {
    for (Fish& run : stay.runs) {
        if (!run.id.isGiven()) {
            run.id = logbook::FishId(next++);
        }
    }
}

/// The water with these stays, as `known` has them; what was updated may be fresh itself.
Water withStays(const Water& water, const water::KnownStays& known,
                const std::vector<StayId>& fresh, const std::set<StayId>& updated) {
    Water after = water;
    for (const StayId id : updated) {
        if (const auto position = logbook::positionOf(after.log, id)) {
            logbook::replace(after.log, *position, *known.find(id));
        }
    }
    Log added;
    for (const StayId id : fresh) {
        added.push_back(*known.find(id));
    }
    if (!added.empty()) {
        logbook::putInOrder(after.log, std::move(added));
    }
    return after;
}

} // namespace

Result<Water> addStays(const Water& water, Log stays, water::Sharing sharing) {
    using Is = water::StayStanding::Is;
    water::KnownStays known(water, sharing);
    std::int64_t next = water::freshId(water);
    for (const Stay& stay : stays) {
        next = std::max(next, stay.id.number() + 1);
    }
    std::vector<StayId> fresh;
    std::set<StayId> updated;
    for (Stay& stay : stays) {
        const water::StayStanding standing = known.standingOf(stay);
        if (standing.is == Is::known || standing.is == Is::doubtful) {
            continue;
        }
        if (standing.is == Is::fresh) {
            if (!stay.id.isGiven() || known.find(stay.id) != nullptr) {
                stay.id = StayId(next++);
            }
            std::ranges::for_each(stay.runs, [](Fish& run) { run.id = {}; });
            fresh.push_back(stay.id);
        } else {
            stay = water::updatedBy(*known.find(*standing.of), stay);
            updated.insert(stay.id);
        }
        giveIdsToNew(stay, next);
        known.take(stay);
    }
    return withStays(water, known, fresh, updated);
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
        giveIdsToNew(stay, next);
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

Result<Water> addPhotographs(const Water& water,
                             const std::vector<water::PlacedPhotograph>& photographs) {
    using Is = water::PlacedPhotograph::Is;
    Water after = water;
    for (const water::PlacedPhotograph& photograph : photographs) {
        const bool belongs = photograph.is == Is::ofFish || photograph.is == Is::ofStay;
        const auto position = logbook::positionOf(after.log, photograph.stay);
        if (!belongs || !position) {
            continue;
        }
        Stay stay = after.log[*position];
        const auto fish = std::ranges::find(stay.runs, photograph.fish, &Fish::id);
        if (photograph.is == Is::ofStay) {
            stay.photograph = photograph.path;
        } else if (fish != stay.runs.end()) {
            fish->photograph = photograph.path;
        }
        logbook::replace(after.log, *position, std::move(stay));
    }
    return after;
}

} // namespace acts
