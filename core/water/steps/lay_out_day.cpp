// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/lay_out_day.h"

#include "core/water/steps/day_cautions.h"
#include "core/water/steps/day_ways.h"
#include "core/water/steps/near_place.h"
#include "core/water/steps/order_stays.h"
#include "core/water/steps/stay_winds.h"

namespace water {

using base::Progress;
using base::Result;

Result<void> layOutDay(const Water& water, const DayGround& ground, const marks::MarkInput& input,
                       const std::optional<marks::LearnedCatch>& learned,
                       const marks::RodsFor& rodsFor, PlannedDay& planned, Progress& progress) {
    const std::optional<geo::LonLat>& launch = planned.plan.launch;
    for (marks::Mark& mark : planned.marks) {
        mark.near = nearestNamedPlace(water, mark.place);
    }
    planned.light = light::sunTimesOn(planned.plan.day.day, launch.value_or(water.frame->centre()),
                                      water.clock);
    auto day = orderStays(water, ground.outline(), input, planned, learned, progress);
    if (!day) {
        return std::unexpected(day.error());
    }
    planned.day = std::move(*day);
    planned.isOrderOfOtherMarks = !water.dayByHand.order.empty() && !planned.day.isOrderByHand;
    if (auto laid = layForStays(planned, water.clock, rodsFor); !laid) {
        return laid;
    }
    layWays(planned.day, planned.marks, openWaterOf(ground.today(), ground.closed()),
            launch ? std::optional(water.frame->toWater(*launch)) : std::nullopt);
    planned.cautions = dayCautions(planned);
    planned.rules = rulesOfTheDay(water, planned);
    planned.fishCare = fishCare(planned);
    return {};
}

} // namespace water
