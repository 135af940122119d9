// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reduction/crossing_check.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

namespace reduction {

double order1b_m(double depth_m) {
    return std::hypot(0.5, 0.013 * depth_m);
}

double order2_m(double depth_m) {
    return std::hypot(1.0, 0.023 * depth_m);
}

namespace {

bool isWithin(const Crossing& crossing, double (*limit_m)(double depth_m)) {
    const double depth_m = 0.5 * (crossing.depthA_m + crossing.depthB_m);
    return std::fabs(crossing.difference_m()) <= std::numbers::sqrt2 * limit_m(depth_m);
}

} // namespace

bool isWithinOrder1b(const Crossing& crossing) {
    return isWithin(crossing, order1b_m);
}

bool isWithinOrder2(const Crossing& crossing) {
    return isWithin(crossing, order2_m);
}

CrossingCheck checkOf(std::span<const Crossing> crossings) {
    CrossingCheck check;
    check.count = crossings.size();
    if (crossings.empty()) {
        return check;
    }
    std::vector<double> apart_m;
    double sum_m = 0.0;
    double squares_m2 = 0.0;
    std::size_t within1b = 0;
    std::size_t within2 = 0;
    for (const Crossing& crossing : crossings) {
        const double difference_m = crossing.difference_m();
        sum_m += difference_m;
        squares_m2 += difference_m * difference_m;
        apart_m.push_back(std::fabs(difference_m));
        within1b += isWithinOrder1b(crossing) ? 1U : 0U;
        within2 += isWithinOrder2(crossing) ? 1U : 0U;
    }
    const auto count = static_cast<double>(crossings.size());
    check.mean_m = sum_m / count;
    check.rms_m = std::sqrt(squares_m2 / count);
    check.withinOrder1b = static_cast<double>(within1b) / count;
    check.withinOrder2 = static_cast<double>(within2) / count;
    std::ranges::sort(apart_m);
    // The smallest difference that at least 95 % do not exceed.
    const auto rank = static_cast<std::size_t>(std::ceil(0.95 * count));
    check.p95_m = apart_m[rank - 1];
    return check;
}

} // namespace reduction
