// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/questions/stay_doubts.h"

#include <algorithm>
#include <ranges>

namespace water {

namespace {

using logbook::Stay;

constexpr auto longest = std::chrono::hours(24);
/// Times are noted roughly, and the boat may still lie there.
constexpr auto roughly = std::chrono::minutes(15);
/// A position by hand on a coarse chart, or a boat in the reeds. Our choice (no source).
constexpr units::Length besideTheShore = units::Length::metres(30.0);

/// The first other stay of the log that it overlaps by more than rough times do.
std::optional<StayDoubt> overOther(const Stay& stay, const logbook::KeptLog& log) {
    const auto positions = std::views::iota(std::size_t(0), log.size());
    const auto from = std::ranges::partition_point(
        positions, [&](std::size_t i) { return log[i].start < stay.start - longest; });
    for (auto at = from; at != positions.end() && log[*at].start < stay.end; ++at) {
        const Stay& other = log[*at];
        if (other.id != stay.id &&
            std::min(other.end, stay.end) - std::max(other.start, stay.start) > roughly) {
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

} // namespace

std::vector<StayDoubt> doubtsAbout(const Stay& stay, const Water& water, const Derived& derived,
                                   units::Moment now) {
    std::vector<StayDoubt> doubts;
    const auto take = [&doubts](const std::optional<StayDoubt>& doubt) {
        if (doubt) {
            doubts.push_back(*doubt);
        }
    };
    if (stay.end > now + roughly) {
        doubts.emplace_back(StayInTheFuture{});
    }
    if (stay.end - stay.start > longest) {
        doubts.emplace_back(
            StayOverADay{std::chrono::duration_cast<std::chrono::hours>(stay.end - stay.start)});
    }
    const auto& season = water.houseRules.season;
    if (season && !season->holds(water.clock.dayOf(stay.start))) {
        doubts.emplace_back(StayOutOfSeason{});
    }
    take(manyRods(stay, water));
    const auto beside = std::ranges::count_if(stay.runs, [&](const logbook::Fish& run) {
        return run.time < stay.start || run.time > stay.end;
    });
    if (beside > 0) {
        doubts.emplace_back(FishBesideStay{static_cast<std::size_t>(beside)});
    }
    take(offTheWater(stay, water, derived));
    take(overOther(stay, water.log));
    return doubts;
}

} // namespace water
