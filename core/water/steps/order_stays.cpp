// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/order_stays.h"

#include "core/marks/order_day.h"
#include "core/water/document/known_marks.h"
#include "core/water/steps/day_distances.h"
#include "core/water/steps/hour_weight.h"
#include "core/water/steps/stay_winds.h"

#include <algorithm>
#include <limits>
#include <utility>

namespace water {

namespace {

/// What of the day the user himself laid down; an order of other marks does not hold.
void takeHand(const DayByHand& hand, const std::vector<marks::Mark>& marks,
              marks::DayInput& input) {
    if (isOrderOf(hand, marks)) {
        input.byHand.resize(marks.size());
    }
    for (std::size_t k = 0; k < marks.size(); ++k) {
        if (!input.byHand.empty()) {
            input.byHand[*turnOf(hand, marks[k].lonLat)] = k;
        }
        input.stops[k].stay = stayWantedAt(hand, marks[k].lonLat);
    }
}

base::Result<marks::DayInput> inputOf(const Water& water, const geo::Outline& outline,
                                      const marks::MarkInput& asked, const PlannedDay& planned,
                                      const std::optional<marks::LearnedCatch>& learned) {
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
    takeHand(water.dayByHand, planned.marks, input);
    input.hourWeight = hourWeightOf(learned, water.clock);
    input.stopWeight = stopWeightOf(asked, planned, water.clock);
    input.light = planned.light;
    return input;
}

/// The stop with no way to it from anywhere, and no score to begin the day with.
void bar(marks::DayInput& input, int rank) {
    constexpr double noWay_m = std::numeric_limits<double>::infinity();
    const auto stop = std::ranges::find(input.stops, rank, &marks::DayInput::Stop::rank);
    const auto k = static_cast<std::size_t>(stop - input.stops.begin());
    stop->score = 0.0;
    for (std::size_t other = 0; other < input.stops.size(); ++other) {
        input.between_m[k][other] = noWay_m;
        input.between_m[other][k] = noWay_m;
    }
    if (!input.fromLaunch_m.empty()) {
        input.fromLaunch_m[k] = noWay_m;
    }
}

} // namespace

base::Result<marks::DayPlan> orderStays(const Water& water, const geo::Outline& outline,
                                        const marks::MarkInput& input, const PlannedDay& planned,
                                        const std::optional<marks::LearnedCatch>& learned,
                                        base::Progress& progress) {
    auto day = inputOf(water, outline, input, planned, learned);
    if (!day) {
        return std::unexpected(day.error());
    }
    std::vector<int> barred;
    while (true) {
        auto ordered = marks::orderDay(*day, {}, progress);
        if (!ordered) {
            return ordered;
        }
        const auto rough = roughStays(planned, *ordered, water.clock);
        if (rough.empty()) {
            std::ranges::sort(barred);
            ordered->tooRough = barred;
            return ordered;
        }
        if (barred.size() + 1 == day->stops.size()) {
            // Nothing else is left: a day without a stop.
            marks::DayPlan none;
            for (const marks::DayInput::Stop& stop : day->stops) {
                none.leftOut.push_back(stop.rank);
            }
            std::ranges::sort(none.leftOut);
            none.tooRough = none.leftOut;
            none.leastStay = ordered->leastStay;
            return none;
        }
        bar(*day, rough.front());
        barred.push_back(rough.front());
    }
}

} // namespace water
