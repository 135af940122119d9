// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/questions/stay_doubts.h"

#include "core/logbook/anglers.h"
#include "core/logbook/stays_about.h"

#include <algorithm>

namespace water {

namespace {

using logbook::Stay;

/// A position by hand on a coarse chart, or a boat in the reeds. Our choice (no source).
constexpr units::Length besideTheShore = units::Length::metres(30.0);

/// The first other stay of the log that it overlaps by more than rough times do.
std::optional<StayDoubt> overOther(const Stay& stay, const logbook::KeptLog& log) {
    for (const std::size_t at : logbook::staysAbout(log, stay.start, stay.end)) {
        const Stay& other = log[at];
        const auto both = std::min(other.end, stay.end) - std::max(other.start, stay.start);
        if (other.id != stay.id && both > logbook::roughTime &&
            !logbook::areOtherAnglers(stay.who, other.who)) {
            return StayOverOther{other.start, other.end};
        }
    }
    return std::nullopt;
}

std::optional<StayDoubt> manyRods(const Stay& stay, const Water& water) {
    const auto& limit = water.houseRules.rodLimit;
    if (!stay.rods) {
        return std::nullopt;
    }
    if (limit && *stay.rods > *limit) {
        return StayOfManyRods{*stay.rods, *limit, true};
    }
    if (*stay.rods > water.plan.tackle.rods) {
        return StayOfManyRods{*stay.rods, water.plan.tackle.rods, false};
    }
    return std::nullopt;
}

std::optional<StayDoubt> offTheWater(const Stay& stay, const Water& water, const Derived& derived) {
    if (!water.frame || !derived.outline) {
        return std::nullopt;
    }
    const geo::WaterPoint at = water.frame->toWater(stay.place);
    const auto off = units::Length::metres(derived.outline->distanceToShore_m(at));
    if (derived.outline->contains(at) || off <= besideTheShore) {
        return std::nullopt;
    }
    return StayOffTheWater{off};
}

std::optional<StayDoubt> inClosedWater(const Stay& stay, const Water& water) {
    if (!water.frame) {
        return std::nullopt;
    }
    const geo::WaterPoint at = water.frame->toWater(stay.place);
    for (const logbook::ClosedWater& closed : water.houseRules.closed) {
        const auto outline = geo::Outline::make(closed.pieces, *water.frame);
        if (outline && outline->contains(at)) {
            return StayInClosedWater{closed.name};
        }
    }
    return std::nullopt;
}

} // namespace

std::vector<StayDoubt> doubtsAbout(const Stay& stay, const Water& water, const Derived& derived,
                                   units::Moment now) {
    std::vector<StayDoubt> doubts;
    const auto take = [&doubts](const std::optional<StayDoubt>& doubt) {
        if (doubt) {
            doubts.push_back(*doubt);
        }
    };
    // The boat may still lie there.
    if (stay.end > now + logbook::roughTime) {
        doubts.emplace_back(StayInTheFuture{});
    }
    if (stay.end - stay.start > logbook::longestStay) {
        doubts.emplace_back(
            StayOverADay{std::chrono::duration_cast<std::chrono::hours>(stay.end - stay.start)});
    }
    const auto& season = water.houseRules.season;
    if (season && !season->holds(water.clock.dayOf(stay.start))) {
        doubts.emplace_back(StayOutOfSeason{});
    }
    take(manyRods(stay, water));
    const auto beside = std::ranges::count_if(stay.runs, [&](const logbook::Fish& run) {
        return run.time && (*run.time < stay.start || *run.time > stay.end);
    });
    if (beside > 0) {
        doubts.emplace_back(FishBesideStay{static_cast<std::size_t>(beside)});
    }
    take(offTheWater(stay, water, derived));
    take(inClosedWater(stay, water));
    take(overOther(stay, water.log));
    return doubts;
}

} // namespace water
