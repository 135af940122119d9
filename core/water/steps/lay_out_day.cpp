// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/lay_out_day.h"

#include "core/marks/order_day.h"
#include "core/water/steps/day_cautions.h"
#include "core/water/steps/day_distances.h"
#include "core/water/steps/day_ways.h"
#include "core/water/steps/hour_weight.h"
#include "core/water/steps/near_place.h"

#include <algorithm>
#include <utility>

namespace water {

using base::Progress;
using base::Result;

namespace {

/// Marks that the user knew by their places, and those of now: the same but for rounding.
constexpr double samePlace_m = 1.0;

/// The position of the mark at a place among all; nothing where there is none.
std::optional<std::size_t> markAt(const std::vector<marks::Mark>& marks, geo::WaterPoint place) {
    const auto found = std::ranges::find_if(marks, [place](const marks::Mark& mark) {
        return geo::distance_m(mark.place, place) < samePlace_m;
    });
    return found == marks.end() ? std::nullopt
                                : std::optional(static_cast<std::size_t>(found - marks.begin()));
}

/// The user's order as positions of the marks; nothing where it is of other marks.
std::optional<std::vector<std::size_t>> orderByHand(const Water& water,
                                                    const std::vector<marks::Mark>& marks) {
    std::vector<std::size_t> order;
    for (const geo::LonLat& place : water.dayByHand.order) {
        const auto position = markAt(marks, water.frame->toWater(place));
        if (!position || std::ranges::find(order, *position) != order.end()) {
            return std::nullopt;
        }
        order.push_back(*position);
    }
    return order.size() == marks.size() ? std::optional(std::move(order)) : std::nullopt;
}

/// What of the day the user himself laid down.
void takeHand(const Water& water, const PlannedDay& planned, marks::DayInput& input) {
    if (auto order = orderByHand(water, planned.marks)) {
        input.byHand = std::move(*order);
    }
    for (const DayByHand::Stay& stay : water.dayByHand.stays) {
        if (const auto at = markAt(planned.marks, water.frame->toWater(stay.place))) {
            input.stops[*at].stay = stay.length;
        }
    }
}

Result<marks::DayPlan> orderOf(const Water& water, const geo::Outline& outline,
                               const PlannedDay& planned,
                               const std::optional<marks::LearnedCatch>& learned,
                               Progress& progress) {
    const marks::Plan& plan = planned.plan;
    marks::DayInput input;
    std::vector<geo::WaterPoint> places;
    for (const marks::Mark& mark : planned.marks) {
        input.stops.push_back({mark.rank, mark.score});
        places.push_back(mark.place);
    }
    auto distances = dayDistances(water, outline, places,
                                  plan.launch ? std::optional(water.frame->toWater(*plan.launch))
                                              : std::nullopt);
    if (!distances) {
        return std::unexpected(distances.error());
    }
    input.between_m = std::move(distances->between_m);
    input.fromLaunch_m = std::move(distances->fromLaunch_m);
    input.start = water.clock.at(plan.day.day, plan.day.start);
    input.end = water.clock.at(plan.day.day, plan.day.end);
    input.boatSpeed = plan.tackle.boatSpeed;
    input.stay = plan.day.stay;
    takeHand(water, planned, input);
    input.hourWeight = hourWeightOf(learned, water.clock);
    input.light = planned.light;
    return marks::orderDay(input, {}, progress);
}

} // namespace

Result<void> layOutDay(const Water& water, const DayGround& ground,
                       const std::optional<marks::LearnedCatch>& learned, PlannedDay& planned,
                       Progress& progress) {
    const std::optional<geo::LonLat>& launch = planned.plan.launch;
    for (marks::Mark& mark : planned.marks) {
        mark.near = nearestNamedPlace(water, mark.place);
    }
    planned.light = light::sunTimesOn(planned.plan.day.day, launch.value_or(water.frame->centre()),
                                      water.clock);
    auto day = orderOf(water, ground.outline(), planned, learned, progress);
    if (!day) {
        return std::unexpected(day.error());
    }
    planned.day = std::move(*day);
    planned.isOrderOfOtherMarks = !water.dayByHand.order.empty() && !planned.day.isOrderByHand;
    layWays(planned.day, planned.marks, openWaterOf(ground.today(), ground.closed()),
            launch ? std::optional(water.frame->toWater(*launch)) : std::nullopt);
    planned.cautions = dayCautions(planned);
    planned.rules = rulesOfTheDay(water, planned);
    planned.fishCare = fishCare(planned);
    return {};
}

} // namespace water
