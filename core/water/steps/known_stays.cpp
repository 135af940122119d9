// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/known_stays.h"

#include "core/logbook/anglers.h"
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

template <class T>
bool canBeOne(const std::optional<T>& a, const std::optional<T>& b) {
    return !a || !b || *a == *b;
}

bool canBeOne(const std::string& a, const std::string& b) {
    return a.empty() || b.empty() || a == b;
}

/// By its minute; where one of the two has no time, by what both say of the fish.
bool isSameRun(const Fish& a, const Fish& b) {
    if (a.landed != b.landed || !canBeOne(a.species, b.species)) {
        return false;
    }
    if (a.time && b.time) {
        return std::chrono::abs(*a.time - *b.time) < oneMinute;
    }
    return canBeOne(a.weight, b.weight) && canBeOne(a.length, b.length);
}

/// As two logs have it: each may say that it was its own angler's.
bool isSameRunOfTwo(const Fish& a, const Fish& b) {
    return isSameRun(a, b) && a.time && b.time && a.weight && b.weight && *a.weight == *b.weight &&
           canBeOne(a.length, b.length);
}

void tellWhose(Stay& stay, const std::string& who) {
    for (Fish& run : stay.runs) {
        run.who = run.who.empty() ? who : run.who;
    }
}

bool haveTimes(const Fish& a, const Fish& b) {
    return a.time && b.time;
}

void updateOthers(std::vector<logbook::OtherField>& known,
                  const std::vector<logbook::OtherField>& more) {
    for (const logbook::OtherField& field : more) {
        const auto same = std::ranges::find(known, field.column, &logbook::OtherField::column);
        if (same == known.end()) {
            known.push_back(field);
        } else {
            update(same->text, field.text);
        }
    }
    std::ranges::sort(known, {}, &logbook::OtherField::column);
}

void update(Fish& known, const Fish& more) {
    update(known.time, more.time);
    update(known.species, more.species);
    update(known.bait, more.bait);
    update(known.weight, more.weight);
    update(known.length, more.length);
    update(known.baitDepth, more.baitDepth);
    updateNote(known.note, more.note);
    update(known.who, more.who);
    update(known.hooked, more.hooked);
    update(known.returned, more.returned);
    update(known.baitPlace, more.baitPlace);
    update(known.photograph, more.photograph);
    updateOthers(known.others, more.others);
}

template <class IsSame>
void updateRuns(std::vector<Fish>& known, const std::vector<Fish>& more, const IsSame& isSame) {
    const std::size_t before = known.size();
    std::vector<bool> isMet(before, false);
    // One whose time is known on both sides is surely the same; others come after it.
    const auto metBy = [&](const Fish& run, bool byTime) {
        std::size_t at = 0;
        while (at < before &&
               (isMet[at] || haveTimes(known[at], run) != byTime || !isSame(known[at], run))) {
            ++at;
        }
        return at;
    };
    for (const Fish& run : more) {
        std::size_t at = metBy(run, true);
        at = at < before ? at : metBy(run, false);
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

KnownStays::KnownStays(const Water& water, Sharing sharing)
    : log_(water.log), frame_(water.frame), cast_(water.plan.tackle.cast), sharing_(sharing) {
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

bool KnownStays::meet(const Stay& one, const Stay& stay, StayStanding& standing) const {
    const auto found = replaced_.find(one.id);
    const Stay& now = found == replaced_.end() ? one : found->second;
    // Two of no length at one moment meet as well: a stay that was noted twice without an end.
    const milliseconds both = overlapOf(now, stay);
    const bool isApart =
        both < milliseconds(0) || (both == milliseconds(0) && now.start != stay.start);
    if (isApart || now.end - now.start > logbook::longestStay) {
        return false;
    }
    const bool isHere = isNear(now.place, stay.place);
    const bool isUnnamed = sharing_.isUnnamedOther && now.who.empty() && !stay.who.empty();
    const bool isOther = isUnnamed || logbook::areOtherAnglers(now.who, stay.who);
    if (isOther && (!isHere || sharing_.other == OtherAngler::separateRods)) {
        return false; // in another boat, or with rods of their own
    }
    const bool isOne = isHere && isSameTime(now, stay);
    if (isOne && !(isOther && sharing_.other == OtherAngler::ask)) {
        const bool saysNoMore = updatedBy(now, stay) == now;
        standing = {saysNoMore ? StayStanding::Is::known : StayStanding::Is::update, now.id};
        return !isOther; // one of the same angler goes before
    }
    if (both > logbook::roughTime || isSameTime(now, stay)) {
        standing = {StayStanding::Is::doubtful, now.id};
    }
    return false;
}

StayStanding KnownStays::standingOf(const Stay& stay) const {
    StayStanding standing;
    if (stay.end - stay.start > logbook::longestStay) {
        return standing;
    }
    // The first one at the same place decides; one elsewhere only where there is none.
    for (const std::size_t at : logbook::staysAbout(log_, stay.start, stay.end)) {
        if (meet(log_[at], stay, standing)) {
            return standing;
        }
    }
    for (auto at = taken_.lower_bound(stay.start - logbook::longestStay);
         at != taken_.end() && at->first <= stay.end; ++at) {
        if (meet(at->second, stay, standing)) {
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
        if (run.time && known.start <= *run.time && *run.time <= known.end) {
            first = std::min(first, *run.time);
            last = std::max(last, *run.time);
        }
    }
    known.start = first;
    known.end = last;
    known.place = more.place;
    const bool isOther = logbook::areOtherAnglers(known.who, more.who);
    if (!isOther || !known.rods) {
        update(known.rods, more.rods);
    }
    update(known.bait, more.bait);
    update(known.conditions.windFrom, more.conditions.windFrom);
    update(known.conditions.windSpeed, more.conditions.windSpeed);
    update(known.conditions.waterTemperature, more.conditions.waterTemperature);
    update(known.conditions.level, more.conditions.level);
    update(known.conditions.sky, more.conditions.sky);
    update(known.baitPlace, more.baitPlace);
    update(known.photograph, more.photograph);
    updateOthers(known.others, more.others);
    updateNote(known.note, more.note);
    if (!isOther) {
        update(known.who, more.who);
        updateRuns(known.runs, more.runs, isSameRun);
        return known;
    }
    tellWhose(known, known.who);
    updateRuns(known.runs, more.runs, isSameRunOfTwo);
    tellWhose(known, more.who); // those that came with it
    known.who = logbook::allAnglers(known.who, more.who);
    return known;
}

} // namespace water
