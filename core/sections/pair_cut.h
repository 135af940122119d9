// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sections/part_cost.h"
#include "core/sections/water_graph.h"

#include <limits>
#include <optional>
#include <vector>

namespace sections {

/// Sizes that no part may leave by giving or taking, as shares of the wanted size.
struct SizeLimits {
    double least = 0.6;
    double most = 1.45;
};

/// Two parts out of some nodes: those up to `at` in the order, and the rest.
struct PairCut {
    double cost = std::numeric_limits<double>::infinity(); ///< Of the two together.
    std::vector<std::int32_t> order;
    std::size_t at = 0;
    PartSums first;
    PartSums second;
};

/// Cuts some connected water in two: across straight lines of several directions, along the water
/// from end to end, and by depth.
class PairCutter {
public:
    /// All outlive this.
    PairCutter(const WaterGraph& graph, const PartCost& cost)
        : graph_(graph), cost_(cost), side_(graph.nodes.size(), other) {}

    /// The cheapest cut of allowed sizes that costs less than `below` and leaves two parts that
    /// hang together along sides; nothing where there is none. \param nodes ascending.
    [[nodiscard]] std::optional<PairCut> cheapest(const std::vector<std::int32_t>& nodes,
                                                  double below);

private:
    /// Where a node stands.
    enum Side : std::uint8_t { other, firstSide, secondSide, met };
    using Order = std::vector<std::pair<double, std::int32_t>>;

    [[nodiscard]] const WaterNode& node(std::int32_t n) const {
        return graph_.nodes[static_cast<std::size_t>(n)];
    }
    Side& side(std::int32_t n) { return side_[static_cast<std::size_t>(n)]; }
    [[nodiscard]] Order alongWater(const std::vector<std::int32_t>& nodes);
    void sweep(Order order, PairCut& best);
    void take(const Order& order, std::pair<double, std::size_t> place, PairCut& best);
    [[nodiscard]] PartSums wholeOf(const Order& order);
    void shift(std::int32_t n, PartSums& first, PartSums& second);
    [[nodiscard]] bool allows(const PartSums& part) const;
    [[nodiscard]] bool hangTogether(const Order& order, std::size_t at);
    [[nodiscard]] std::vector<std::int32_t> metFrom(std::int32_t from, Side wanted);

    const WaterGraph& graph_;
    const PartCost& cost_;
    std::vector<Side> side_;
};

} // namespace sections
