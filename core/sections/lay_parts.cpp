// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sections/lay_parts.h"

#include "core/sections/lump_ground.h"
#include "core/sections/pair_cut.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <set>

namespace sections {

namespace {

using Nodes = std::vector<std::int32_t>;
using Hexagon = std::pair<int, int>;

constexpr SizeLimits limits;

/// Column and row of the hexagon that p lies in, as cells nearest to the points of a triangular
/// lattice: two rectangular lattices, one shifted by half, of which the nearer point counts.
Hexagon hexagonOf(geo::WaterPoint p, double area_m2, HexagonShift by) {
    const double across_m = std::sqrt(2.0 * area_m2 / std::numbers::sqrt3); // between neighbours
    const double down_m = across_m * std::numbers::sqrt3;
    p.x_m -= by.east * across_m;
    p.y_m -= by.north * down_m;
    const auto nearest = [&](double shift) {
        const int col = static_cast<int>(std::lround(p.x_m / across_m - shift));
        const int row = static_cast<int>(std::lround(p.y_m / down_m - shift));
        const double dx_m = p.x_m - (col + shift) * across_m;
        const double dy_m = p.y_m - (row + shift) * down_m;
        return std::pair(dx_m * dx_m + dy_m * dy_m, Hexagon{col, row});
    };
    const auto even = nearest(0.0);
    const auto odd = nearest(0.5);
    return even.first <= odd.first ? Hexagon{2 * even.second.first, 2 * even.second.second}
                                   : Hexagon{2 * odd.second.first + 1, 2 * odd.second.second + 1};
}

class Layout {
public:
    Layout(const WaterGraph& graph, const PartCost& cost, HexagonShift shift)
        : graph_(graph), cost_(cost), shift_(shift), cutter_(graph, cost),
          part_(graph.nodes.size(), -1) {}

    GraphParts run() {
        startFromHexagons();
        sums_ = sumsOfParts(graph_, part_, nodes_.size());
        std::set<std::pair<double, std::int32_t>> small;
        for (std::size_t p = 0; p < nodes_.size(); ++p) {
            if (isSmall(sums_[p])) {
                small.emplace(sums_[p].area_m2, static_cast<std::int32_t>(p));
            }
        }
        while (!small.empty()) {
            const std::int32_t part = small.begin()->second;
            small.erase(small.begin());
            const std::int32_t joined = join(part);
            if (joined >= 0) {
                std::erase_if(small, [&](const auto& s) { return s.second == joined; });
                if (isSmall(sums(joined))) {
                    small.emplace(sums(joined).area_m2, joined);
                }
            }
        }
        return numbered();
    }

private:
    PartSums& sums(std::int32_t part) { return sums_[static_cast<std::size_t>(part)]; }
    Nodes& nodesOf(std::int32_t part) { return nodes_[static_cast<std::size_t>(part)]; }
    [[nodiscard]] bool isSmall(const PartSums& part) const {
        return part.area_m2 < limits.least * cost_.wanted_m2;
    }

    void startFromHexagons() {
        std::vector<Hexagon> hexagon;
        hexagon.reserve(graph_.nodes.size());
        for (const WaterNode& node : graph_.nodes) {
            hexagon.push_back(hexagonOf(node.middle(), cost_.wanted_m2, shift_));
        }
        for (std::size_t first = 0; first < part_.size(); ++first) {
            if (part_[first] >= 0) {
                continue;
            }
            const auto number = static_cast<std::int32_t>(nodes_.size());
            Nodes nodes{static_cast<std::int32_t>(first)};
            part_[first] = number;
            for (std::size_t k = 0; k < nodes.size(); ++k) {
                for (const WaterStep& step :
                     graph_.nodes[static_cast<std::size_t>(nodes[k])].steps) {
                    const auto to = static_cast<std::size_t>(step.to);
                    if (step.alongSide && part_[to] < 0 && hexagon[to] == hexagon[first]) {
                        part_[to] = number;
                        nodes.push_back(step.to);
                    }
                }
            }
            std::sort(nodes.begin(), nodes.end());
            nodes_.push_back(std::move(nodes));
        }
    }

    /// Metres of border with each neighbour along sides.
    std::map<std::int32_t, double> neighboursOf(std::int32_t part) {
        std::map<std::int32_t, double> border_m;
        for (const std::int32_t n : nodesOf(part)) {
            for (const WaterStep& step : graph_.nodes[static_cast<std::size_t>(n)].steps) {
                const std::int32_t to = part_[static_cast<std::size_t>(step.to)];
                if (step.alongSide && to != part) {
                    border_m[to] += static_cast<double>(step.border_m);
                }
            }
        }
        return border_m;
    }

    /// Joins the part with the neighbour with which the water costs least, or shares its water out
    /// between the two. \return the part that has changed beside it; negative where none could.
    std::int32_t join(std::int32_t part) {
        const std::map<std::int32_t, double> border_m = neighboursOf(part);
        std::int32_t best = -1;
        double bestCost = std::numeric_limits<double>::infinity();
        std::optional<PairCut> bestCut;
        for (const auto& [to, length_m] : border_m) {
            const PartSums both = together(part, to, length_m);
            const double before = cost_.of(sums(to));
            if (both.area_m2 <= limits.most * cost_.wanted_m2) {
                if (const double cost = cost_.of(both) - before; cost < bestCost) {
                    best = to;
                    bestCost = cost;
                    bestCut.reset();
                }
            } else if (auto cut = cutter_.cheapest(nodesOfBoth(part, to), bestCost + before)) {
                best = to;
                bestCost = cut->cost - before;
                bestCut = std::move(cut);
            }
        }
        if (best < 0) {
            return -1;
        }
        if (bestCut) {
            share(part, best, *bestCut);
        } else {
            merge(part, best, border_m.at(best));
        }
        return best;
    }

    PartSums together(std::int32_t a, std::int32_t b, double between_m) {
        PartSums both = sums(a);
        both.add(sums(b));
        both.border_m += sums(b).border_m - 2.0 * between_m;
        return both;
    }

    Nodes nodesOfBoth(std::int32_t a, std::int32_t b) {
        Nodes both;
        std::merge(nodesOf(a).begin(), nodesOf(a).end(), nodesOf(b).begin(), nodesOf(b).end(),
                   std::back_inserter(both));
        return both;
    }

    void merge(std::int32_t part, std::int32_t into, double between_m) {
        sums(into) = together(part, into, between_m);
        for (const std::int32_t n : nodesOf(part)) {
            part_[static_cast<std::size_t>(n)] = into;
        }
        nodesOf(into) = nodesOfBoth(part, into);
        nodesOf(part).clear();
    }

    void share(std::int32_t a, std::int32_t b, const PairCut& cut) {
        nodesOf(a).assign(cut.order.begin(),
                          cut.order.begin() + static_cast<std::ptrdiff_t>(cut.at));
        nodesOf(b).assign(cut.order.begin() + static_cast<std::ptrdiff_t>(cut.at), cut.order.end());
        sums(a) = cut.first;
        sums(b) = cut.second;
        for (const std::int32_t part : {a, b}) {
            std::sort(nodesOf(part).begin(), nodesOf(part).end());
            for (const std::int32_t n : nodesOf(part)) {
                part_[static_cast<std::size_t>(n)] = part;
            }
        }
    }

    GraphParts numbered() {
        std::vector<std::int32_t> number(nodes_.size(), -1);
        std::int32_t next = 0;
        for (std::size_t p = 0; p < nodes_.size(); ++p) {
            number[p] = nodes_[p].empty() ? -1 : next++;
        }
        for (std::int32_t& part : part_) {
            part = number[static_cast<std::size_t>(part)];
        }
        return {std::move(part_), static_cast<std::size_t>(next)};
    }

    const WaterGraph& graph_;
    const PartCost& cost_;
    HexagonShift shift_;
    PairCutter cutter_;
    std::vector<std::int32_t> part_;
    std::vector<Nodes> nodes_;
    std::vector<PartSums> sums_;
};

} // namespace

GraphParts layParts(const WaterGraph& graph, const PartCost& cost, HexagonShift shift) {
    return Layout(graph, cost, shift).run();
}

} // namespace sections
