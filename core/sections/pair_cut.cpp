// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sections/pair_cut.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sections {

namespace {

constexpr SizeLimits limits;

} // namespace

std::optional<PairCut> PairCutter::cheapest(const std::vector<std::int32_t>& nodes, double below) {
    constexpr int directions = 4;
    PairCut best;
    best.cost = below;
    Order order(nodes.size());
    for (int k = 0; k < directions; ++k) {
        const double angle = std::numbers::pi * k / directions;
        const double east = std::cos(angle);
        const double north = std::sin(angle);
        std::transform(nodes.begin(), nodes.end(), order.begin(), [&](std::int32_t n) {
            const geo::WaterPoint p = node(n).middle();
            return std::pair(east * p.x_m + north * p.y_m, n);
        });
        sweep(order, best);
    }
    Order along = alongWater(nodes);
    for (const std::int32_t n : nodes) {
        side(n) = other;
    }
    sweep(std::move(along), best);
    if (cost_.depth > 0.0) {
        std::transform(nodes.begin(), nodes.end(), order.begin(), [&](std::int32_t n) {
            return std::pair(node(n).sums.depth_m3 / node(n).sums.area_m2, n);
        });
        sweep(order, best);
    }
    return best.order.empty() ? std::nullopt : std::optional(std::move(best));
}

/// The nodes in the order in which they are met over water from one end: the one that is met last
/// from the first node. Empty where they do not all hang together.
PairCutter::Order PairCutter::alongWater(const std::vector<std::int32_t>& nodes) {
    Order order;
    std::int32_t start = nodes.front();
    for (int way = 0; way < 2; ++way) {
        for (const std::int32_t n : nodes) {
            side(n) = secondSide;
        }
        const std::vector<std::int32_t> found = metFrom(start, secondSide);
        order.clear();
        if (found.size() != nodes.size()) {
            return order;
        }
        start = found.back();
        for (std::size_t k = 0; k < found.size(); ++k) {
            order.emplace_back(static_cast<double>(k), found[k]);
        }
    }
    return order;
}

/// Goes through the nodes in the order of their value and keeps the cheapest place to cut, if it is
/// cheaper than the best.
void PairCutter::sweep(Order order, PairCut& best) {
    std::sort(order.begin(), order.end());
    for (const auto& [unused, n] : order) {
        side(n) = secondSide;
    }
    std::vector<std::pair<double, std::size_t>> places;
    PartSums first;
    PartSums second = wholeOf(order);
    for (std::size_t k = 0; k + 1 < order.size(); ++k) {
        shift(order[k].second, first, second);
        if (allows(first) && allows(second)) {
            if (const double cost = cost_.of(first) + cost_.of(second); cost < best.cost) {
                places.emplace_back(cost, k + 1);
            }
        }
    }
    // The cheapest place may leave a scrap behind a corner; then one of the next will do.
    constexpr std::size_t mostTried = 4;
    const std::size_t tried = std::min(mostTried, places.size());
    std::partial_sort(places.begin(), places.begin() + static_cast<std::ptrdiff_t>(tried),
                      places.end());
    for (std::size_t k = 0; k < tried; ++k) {
        if (hangTogether(order, places[k].second)) {
            take(order, places[k], best);
            break;
        }
    }
    for (const auto& [unused, n] : order) {
        side(n) = other;
    }
}

void PairCutter::take(const Order& order, std::pair<double, std::size_t> place, PairCut& best) {
    best = {place.first, {}, place.second, {}, {}};
    for (const auto& [unused, n] : order) {
        best.order.push_back(n);
        side(n) = secondSide;
    }
    best.second = wholeOf(order);
    for (std::size_t k = 0; k < best.at; ++k) {
        shift(best.order[k], best.first, best.second);
    }
}

PartSums PairCutter::wholeOf(const Order& order) {
    PartSums whole;
    for (const auto& [unused, n] : order) {
        whole.add(node(n).sums);
        whole.border_m += node(n).sums.border_m;
        for (const WaterStep& step : node(n).steps) {
            whole.border_m += side(step.to) == other ? static_cast<double>(step.border_m) : 0.0;
        }
    }
    return whole;
}

/// Takes a node from the second side over to the first.
void PairCutter::shift(std::int32_t n, PartSums& first, PartSums& second) {
    side(n) = firstSide;
    first.add(node(n).sums);
    second.add(node(n).sums, -1.0);
    double outer_m = node(n).sums.border_m;
    double within_m = 0.0; // with the first side
    double beyond_m = 0.0; // with the second
    for (const WaterStep& step : node(n).steps) {
        const Side to = side(step.to);
        double& border_m = to == firstSide ? within_m : to == secondSide ? beyond_m : outer_m;
        border_m += static_cast<double>(step.border_m);
    }
    first.border_m += outer_m + beyond_m - within_m;
    second.border_m += beyond_m - outer_m - within_m;
}

bool PairCutter::allows(const PartSums& part) const {
    return part.area_m2 >= limits.least * cost_.wanted_m2 &&
           part.area_m2 <= limits.most * cost_.wanted_m2;
}

/// True where both sides of the cut hang together along sides.
bool PairCutter::hangTogether(const Order& order, std::size_t at) {
    for (std::size_t k = 0; k < order.size(); ++k) {
        side(order[k].second) = k < at ? firstSide : secondSide;
    }
    return metFrom(order.front().second, firstSide).size() == at &&
           metFrom(order.back().second, secondSide).size() == order.size() - at;
}

/// The nodes of one side that hang together with `from` along sides, in the order met; marks them.
std::vector<std::int32_t> PairCutter::metFrom(std::int32_t from, Side wanted) {
    std::vector<std::int32_t> nodes{from};
    side(from) = met;
    for (std::size_t k = 0; k < nodes.size(); ++k) {
        for (const WaterStep& step : node(nodes[k]).steps) {
            if (step.alongSide && side(step.to) == wanted) {
                side(step.to) = met;
                nodes.push_back(step.to);
            }
        }
    }
    return nodes;
}

} // namespace sections
