// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wind/fetch.h"

#include <cmath>

namespace wind {

namespace {

constexpr int radialsEachWay = 7;
constexpr double radialStep_deg = 6.0;
constexpr int radialsAllRound = 60;

/// Calls `take(turn_deg, weight)` for the 15 radials; weights sum to 1.
template <class Take>
void forRadials(Take take) {
    double sum = 0.0;
    const auto weightOf = [](int k) { return units::Bearing::degrees(k * radialStep_deg).north(); };
    for (int k = -radialsEachWay; k <= radialsEachWay; ++k) {
        sum += weightOf(k);
    }
    for (int k = -radialsEachWay; k <= radialsEachWay; ++k) {
        take(k * radialStep_deg, weightOf(k) / sum);
    }
}

} // namespace

Fetch fetchAt(const geo::Outline& outline, geo::WaterPoint place, units::Bearing windFrom) {
    Fetch fetch;
    if (!outline.contains(place)) {
        return fetch;
    }
    const auto radial = [&](double turn_deg) {
        return units::Length::metres(
            outline.firstShoreAhead_m(place, windFrom.turnedBy(turn_deg)).value_or(0.0));
    };
    forRadials([&](double turn_deg, double weight) {
        const units::Length length = radial(turn_deg);
        fetch.effective += weight * length;
        if (turn_deg == 0.0) {
            fetch.straight = length;
        }
    });
    return fetch;
}

std::vector<FetchFrom> fetchAllRound(const geo::Outline& outline, geo::WaterPoint place) {
    std::vector<FetchFrom> all;
    if (!outline.contains(place)) {
        return all;
    }
    for (int k = 0; k < radialsAllRound; ++k) {
        const auto side = units::Bearing::degrees(k * radialStep_deg);
        all.push_back(
            {side,
             {units::Length::metres(outline.firstShoreAhead_m(place, side).value_or(0.0)), {}}});
    }
    for (int k = 0; k < radialsAllRound; ++k) {
        forRadials([&](double turn_deg, double weight) {
            const int turned = k + static_cast<int>(std::lround(turn_deg / radialStep_deg));
            const auto at = static_cast<std::size_t>((turned + radialsAllRound) % radialsAllRound);
            all[static_cast<std::size_t>(k)].fetch.effective += weight * all[at].fetch.straight;
        });
    }
    return all;
}

} // namespace wind
