// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/day_cautions.h"

#include "core/anchoring/cautions.h"
#include "core/marks/winds_of_day.h"
#include "core/wind/beaufort.h"

#include <algorithm>

namespace water {

namespace {

/// Of the strongest wind of the hours planned, as far as it is said; nought where none is.
int greatestForce(const marks::ExpectedDay& day) {
    int force = 0;
    for (const marks::WindOfHours& part : marks::windsOf(day)) {
        force = std::max(force, part.wind.speed ? wind::beaufortForce(*part.wind.speed) : 0);
    }
    return force;
}

} // namespace

std::optional<StayAshore> ashoreCaution(const marks::ExpectedDay& day) {
    const int force = greatestForce(day);
    return force >= ashoreFrom_beaufort ? std::optional(StayAshore{force}) : std::nullopt;
}

std::optional<DayCaution> windCaution(const marks::ExpectedDay& day) {
    if (const auto ashore = ashoreCaution(day)) {
        return *ashore;
    }
    const auto winds = marks::windsOf(day);
    if (std::ranges::any_of(winds, [](const auto& part) { return !part.wind.speed; })) {
        return WindNotSaid{};
    }
    const int force = greatestForce(day);
    return force == ashoreFrom_beaufort - 1 ? std::optional<DayCaution>(WhiteHorses{force})
                                            : std::nullopt;
}

std::optional<ColdWater> coldCaution(const std::optional<units::Temperature>& water) {
    if (water && *water >= coldWater) {
        return std::nullopt;
    }
    return ColdWater{water.has_value()};
}

std::vector<DayCaution> dayCautions(const PlannedDay& planned) {
    std::vector<DayCaution> out;
    if (const auto wind = windCaution(planned.plan.day)) {
        out.push_back(*wind);
    }
    const auto& water = planned.plan.day.waterTemperature;
    out.emplace_back(FallingIn{coldCaution(water), !water || *water < nearIce});
    out.emplace_back(Thunder{});
    if (planned.day.dark.areAny()) {
        out.emplace_back(planned.day.dark);
    }
    if (planned.plan.tackle.toOneAnchor) {
        out.emplace_back(SwingsToOneAnchor{});
    } else {
        out.emplace_back(WindOnTheBeam{});
    }
    const double scope = planned.plan.tackle.scope;
    out.emplace_back(
        Ropes{scope < anchoring::seamanlikeScope ? std::optional(scope) : std::nullopt});
    out.emplace_back(TellSomebody{});
    return out;
}

std::vector<DayRule> rulesOfTheDay(const Water& water, const PlannedDay& planned) {
    std::vector<DayRule> out;
    const logbook::HouseRules& rules = water.houseRules;
    if (rules.season && !rules.season->holds(planned.plan.day.day)) {
        out.emplace_back(OutsideSeason{});
    }
    if (rules.rodLimit) {
        out.emplace_back(RodLimit{*rules.rodLimit});
    }
    for (const logbook::ClosedWater& closed : rules.closed) {
        out.emplace_back(ClosedPart{closed.name});
    }
    for (const std::string& note : rules.notes) {
        out.emplace_back(HouseNote{note});
    }
    out.emplace_back(LocalRulesFirst{});
    return out;
}

std::vector<FishCare> fishCare(const PlannedDay& planned) {
    std::vector<FishCare> out;
    const auto& water = planned.plan.day.waterTemperature;
    if (water && *water > warmForFish) {
        out.push_back(FishCare::warmWater);
    }
    out.push_back(FishCare::handling);
    return out;
}

} // namespace water
