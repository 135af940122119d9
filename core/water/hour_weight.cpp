// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/hour_weight.h"

#include "core/rates/count_hour_rates.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace water {

std::function<double(units::Moment)> hourWeightOf(const Water& water, base::Progress& progress) {
    const auto hours = rates::countHourRates(water.log, water.clock, {}, progress);
    if (!hours) {
        return {};
    }
    double sum = 0.0;
    int known = 0;
    for (const rates::HourRate& point : hours->points) {
        if (point.rate) {
            sum += point.rate->per10RodHours;
            ++known;
        }
    }
    if (known == 0 || sum <= 0.0) {
        return {};
    }
    std::vector<double> weights;
    for (const rates::HourRate& point : hours->points) {
        const double ratio = point.rate ? point.rate->per10RodHours / (sum / known) : 1.0;
        weights.push_back(std::clamp(0.5 * (1.0 + ratio), 0.5, 2.0));
    }
    return [weights, clock = water.clock](units::Moment moment) {
        const double at = clock.hourOfDay(moment) / 24.0 * static_cast<double>(weights.size());
        return weights[static_cast<std::size_t>(at) % weights.size()];
    };
}

} // namespace water
