// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acts/plan.h"

#include "core/water/document/known_marks.h"

#include <algorithm>

namespace acts {

using base::Result;
using water::PinnedMark;
using water::Water;

Result<Water> setPlan(const Water& water, const marks::Plan& plan) {
    Water after = water;
    after.plan = plan;
    return after;
}

namespace {

void put(Water& water, geo::LonLat from, const PinnedMark& mark) {
    const auto known = std::ranges::find(water.pinnedMarks, from, &PinnedMark::place);
    if (known == water.pinnedMarks.end()) {
        water.pinnedMarks.push_back(mark);
    } else {
        *known = mark;
    }
}

/// Where the mark goes, its turn and its stay go along.
void take(water::DayByHand& day, geo::LonLat from, geo::LonLat to) {
    for (geo::LonLat& place : day.order) {
        place = water::isOneMark(place, from) ? to : place;
    }
    for (water::DayByHand::Stay& stay : day.stays) {
        stay.place = water::isOneMark(stay.place, from) ? to : stay.place;
    }
}

/// Everything as far and the same way as the mark.
water::LaidByHand moved(water::LaidByHand laid, geo::LonLat from, geo::LonLat to) {
    const auto move = [&](geo::LonLat& place) {
        place.lon_deg += to.lon_deg - from.lon_deg;
        place.lat_deg += to.lat_deg - from.lat_deg;
    };
    for (std::optional<geo::LonLat>* anchor : {&laid.bow, &laid.stern}) {
        if (*anchor) {
            move(**anchor);
        }
    }
    std::ranges::for_each(laid.baits, move);
    return laid;
}

} // namespace

Result<Water> pinMark(const Water& water, geo::LonLat from, const PinnedMark& mark) {
    Water after = water;
    PinnedMark pinned = mark;
    const auto known = std::ranges::find(after.pinnedMarks, from, &PinnedMark::place);
    if (known != after.pinnedMarks.end() && !mark.laid.isAny()) {
        pinned.laid = moved(known->laid, from, mark.place);
    }
    put(after, from, pinned);
    take(after.dayByHand, from, mark.place);
    return after;
}

Result<Water> layByHand(const Water& water, geo::LonLat from, const PinnedMark& mark) {
    if (!mark.laid.isAny()) {
        return base::fail(base::ErrorKind::wrongUse, "nothing is laid by hand there", "marks",
                          "lay an anchor or a bait");
    }
    Water after = water;
    put(after, from, mark);
    take(after.dayByHand, from, mark.place);
    return after;
}

Result<Water> freeLie(const Water& water, geo::LonLat place) {
    Water after = water;
    const auto known = std::ranges::find(after.pinnedMarks, place, &PinnedMark::place);
    if (known == after.pinnedMarks.end() || !known->laid.isAny()) {
        return base::fail(base::ErrorKind::wrongUse, "nothing is laid by hand there", "marks",
                          "choose a mark of which you laid anchors or baits");
    }
    known->laid = {};
    return after;
}

Result<Water> unpinMark(const Water& water, geo::LonLat place) {
    Water after = water;
    const auto isThere = [place](const PinnedMark& mark) { return mark.place == place; };
    if (std::erase_if(after.pinnedMarks, isThere) == 0) {
        return base::fail(base::ErrorKind::wrongUse, "no mark is pinned there", "marks",
                          "choose one of your own marks");
    }
    return after;
}

} // namespace acts
