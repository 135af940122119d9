// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/known_stays.h"

#include "core/logbook/stays_about.h"

#include <algorithm>

namespace water {

using logbook::Fish;
using logbook::Stay;
using std::chrono::milliseconds;

namespace {

constexpr auto oneMinute = std::chrono::minutes(1);

milliseconds overlapOf(const Stay& a, const Stay& b) {
    return std::min(a.end, b.end) - std::max(a.start, b.start);
}

/// At least half of the shorter lies in the other.
bool isSameTime(const Stay& a, const Stay& b) {
    return 2 * overlapOf(a, b) >= std::min(a.end - a.start, b.end - b.start);
}

template <class T>
void update(std::optional<T>& known, const std::optional<T>& more) {
    if (more) {
        known = more;
    }
}

void update(std::string& known, const std::string& more) {
    if (!more.empty()) {
        known = more;
    }
}

/// No word of a note is lost.
void updateNote(std::string& known, const std::string& more) {
    if (known.empty() || more.find(known) != std::string::npos) {
        update(known, more);
    } else if (known.find(more) == std::string::npos) {
        known += "; " + more;
    }
}

bool isSameRun(const Fish& a, const Fish& b) {
    const auto apart = a.time < b.time ? b.time - a.time : a.time - b.time;
    return apart < oneMinute && a.landed == b.landed &&
           (a.species.empty() || b.species.empty() || a.species == b.species);
}

void update(Fish& known, const Fish& more) {
    known.time = more.time;
    update(known.species, more.species);
    update(known.bait, more.bait);
    update(known.weight, more.weight);
    update(known.length, more.length);
    update(known.baitDepth, more.baitDepth);
    updateNote(known.note, more.note);
}

void updateRuns(std::vector<Fish>& known, const std::vector<Fish>& more) {
    const std::size_t before = known.size();
    std::vector<bool> isMet(before, false);
    for (const Fish& run : more) {
        std::size_t at = 0;
        while (at < before && (isMet[at] || !isSameRun(known[at], run))) {
            ++at;
        }
        if (at < before) {
            isMet[at] = true;
            update(known[at], run);
        } else {
            known.push_back(run);
            known.back().id = {};
        }
    }
    std::ranges::stable_sort(known, {}, &Fish::time);
}

} // namespace

KnownStays::KnownStays(const Water& water)
    : log_(water.log), frame_(water.frame), cast_(water.plan.tackle.cast) {
    if (!logbook::isInOrder(log_)) {
        logbook::putInOrder(log_, {});
    }
}

bool KnownStays::isNear(geo::LonLat a, geo::LonLat b) const {
    const auto frame = frame_ ? frame_ : [&]() -> std::optional<geo::WaterFrame> {
        auto round = geo::WaterFrame::centredOn(a);
        return round ? std::optional(*round) : std::nullopt;
    }();
    return frame ? geo::distance(frame->toWater(a), frame->toWater(b)) <= cast_ : a == b;
}

const Stay* KnownStays::find(logbook::StayId id) const {
    if (const auto found = replaced_.find(id); found != replaced_.end()) {
        return &found->second;
    }
    if (const auto found = takenById_.find(id); found != takenById_.end()) {
        return &found->second->second;
    }
    const auto position = logbook::positionOf(log_, id);
    return position ? &log_[*position] : nullptr;
}

void KnownStays::take(const Stay& stay) {
    if (logbook::positionOf(log_, stay.id)) {
        replaced_.insert_or_assign(stay.id, stay);
        return;
    }
    if (const auto found = takenById_.find(stay.id); found != takenById_.end()) {
        taken_.erase(found->second);
    }
    takenById_[stay.id] = taken_.emplace(stay.start, stay);
}

StayStanding KnownStays::standingOf(const Stay& stay) const {
    StayStanding standing;
    // The first one at the same place decides; one elsewhere only where there is none.
    const auto meet = [&](const Stay& one) {
        const Stay* now = &one;
        if (const auto found = replaced_.find(one.id); found != replaced_.end()) {
            now = &found->second;
        }
        // Two of no length at one moment meet as well: a stay that was noted twice without an end.
        const bool isApart = overlapOf(*now, stay) < milliseconds(0) ||
                             (overlapOf(*now, stay) == milliseconds(0) && now->start != stay.start);
        if (isApart || now->end - now->start > logbook::longestStay) {
            return false;
        }
        const bool isHere = isNear(now->place, stay.place);
        if (isHere && isSameTime(*now, stay)) {
            const bool saysNoMore = updatedBy(*now, stay) == *now;
            standing = {saysNoMore ? StayStanding::Is::known : StayStanding::Is::update, now->id};
            return true;
        }
        if (overlapOf(*now, stay) > logbook::roughTime || isSameTime(*now, stay)) {
            standing = {StayStanding::Is::doubtful, now->id};
        }
        return false;
    };
    if (stay.end - stay.start > logbook::longestStay) {
        return standing;
    }
    for (const std::size_t at : logbook::staysAbout(log_, stay.start, stay.end)) {
        if (meet(log_[at])) {
            return standing;
        }
    }
    for (auto at = taken_.lower_bound(stay.start - logbook::longestStay);
         at != taken_.end() && at->first <= stay.end; ++at) {
        if (meet(at->second)) {
            return standing;
        }
    }
    return standing;
}

Stay updatedBy(Stay known, const Stay& more) {
    auto first = more.start;
    auto last = more.end;
    // A fish that was in the stay stays in it, whatever its times are rounded to.
    for (const Fish& run : known.runs) {
        if (known.start <= run.time && run.time <= known.end) {
            first = std::min(first, run.time);
            last = std::max(last, run.time);
        }
    }
    known.start = first;
    known.end = last;
    known.place = more.place;
    update(known.rods, more.rods);
    update(known.bait, more.bait);
    update(known.conditions.windFrom, more.conditions.windFrom);
    update(known.conditions.windSpeed, more.conditions.windSpeed);
    update(known.conditions.waterTemperature, more.conditions.waterTemperature);
    updateNote(known.note, more.note);
    updateRuns(known.runs, more.runs);
    return known;
}

} // namespace water
