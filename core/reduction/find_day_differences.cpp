// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reduction/find_day_differences.h"

#include "core/reduction/robust.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

namespace reduction {

std::vector<DayDifference> findDayDifferences(std::span<const Crossing> crossings,
                                              const DayDifferenceSettings& settings) {
    std::map<std::pair<int, int>, std::vector<double>> byPair_m;
    for (const Crossing& crossing : crossings) {
        if (crossing.dayA < crossing.dayB) {
            byPair_m[{crossing.dayA, crossing.dayB}].push_back(crossing.difference_m());
        } else if (crossing.dayA > crossing.dayB) {
            byPair_m[{crossing.dayB, crossing.dayA}].push_back(-crossing.difference_m());
        }
    }
    std::vector<DayDifference> found;
    for (auto& [pair, apart_m] : byPair_m) {
        if (apart_m.size() < settings.leastCrossings) {
            continue;
        }
        const double middle_m = medianOf(apart_m);
        const double error_m =
            1.253 * robustSigma(apart_m, middle_m) / std::sqrt(static_cast<double>(apart_m.size()));
        if (std::fabs(middle_m) >= settings.least.inMetres() &&
            std::fabs(middle_m) > settings.errors * error_m) {
            found.push_back({static_cast<std::size_t>(pair.first),
                             static_cast<std::size_t>(pair.second), units::Length::metres(middle_m),
                             apart_m.size()});
        }
    }
    std::ranges::stable_sort(found, std::greater<>(), [](const DayDifference& one) {
        return std::fabs(one.difference.inMetres());
    });
    return found;
}

} // namespace reduction
