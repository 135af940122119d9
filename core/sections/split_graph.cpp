// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sections/split_graph.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>
#include <numeric>
#include <optional>
#include <queue>

namespace sections {

namespace {

using Part = std::vector<std::int32_t>;

constexpr float unreached = std::numeric_limits<float>::infinity();

class Splitter {
public:
    Splitter(const WaterGraph& graph, const PartSizes& sizes)
        : graph_(graph), sizes_(sizes), partOfNode_(graph.nodes.size(), -1) {}

    std::vector<Part> run(const base::Progress& progress) {
        std::vector<Part> open = connectedParts();
        std::vector<Part> done;
        while (!open.empty() && !progress.stopAsked()) {
            Part part = std::move(open.back());
            open.pop_back();
            auto halves = cut(part);
            if (!halves) {
                done.push_back(std::move(part));
                continue;
            }
            open.push_back(std::move(halves->second));
            open.push_back(std::move(halves->first));
        }
        return done;
    }

private:
    double areaOf(const Part& part) const {
        return std::accumulate(part.begin(), part.end(), 0.0,
                               [&](double sum, std::int32_t n) { return sum + node(n).area_m2; });
    }
    const WaterNode& node(std::int32_t n) const {
        return graph_.nodes[static_cast<std::size_t>(n)];
    }
    std::int32_t& mark(std::int32_t n) { return partOfNode_[static_cast<std::size_t>(n)]; }

    std::vector<Part> connectedParts() {
        std::vector<Part> parts;
        for (std::size_t first = 0; first < graph_.nodes.size(); ++first) {
            if (partOfNode_[first] >= 0) {
                continue;
            }
            const auto number = static_cast<std::int32_t>(parts.size());
            Part part{static_cast<std::int32_t>(first)};
            partOfNode_[first] = number;
            for (std::size_t k = 0; k < part.size(); ++k) {
                for (const WaterStep& step : node(part[k]).steps) {
                    if (mark(step.to) < 0) {
                        mark(step.to) = number;
                        part.push_back(step.to);
                    }
                }
            }
            std::sort(part.begin(), part.end());
            parts.push_back(std::move(part));
        }
        next_ = static_cast<std::int32_t>(parts.size());
        return parts;
    }

    /// Over-water distance from one node to those of its own part, by position in `part`.
    std::vector<float> distancesFrom(const Part& part, std::int32_t source) {
        local_.resize(graph_.nodes.size());
        for (std::size_t k = 0; k < part.size(); ++k) {
            local_[static_cast<std::size_t>(part[k])] = k;
        }
        std::vector<float> distance(part.size(), unreached);
        using Front = std::pair<float, std::int32_t>;
        std::priority_queue<Front, std::vector<Front>, std::greater<>> front;
        distance[local_[static_cast<std::size_t>(source)]] = 0.0F;
        front.emplace(0.0F, source);
        const std::int32_t here = mark(source);
        while (!front.empty()) {
            const auto [reached, n] = front.top();
            front.pop();
            if (reached > distance[local_[static_cast<std::size_t>(n)]]) {
                continue;
            }
            for (const WaterStep& step : node(n).steps) {
                float& known = distance[local_[static_cast<std::size_t>(step.to)]];
                if (mark(step.to) == here && reached + step.length_m < known) {
                    known = reached + step.length_m;
                    front.emplace(known, step.to);
                }
            }
        }
        return distance;
    }

    /// The two ends of a part: as far from each other as can be found by going to and fro.
    std::pair<std::int32_t, std::int32_t> endsOf(const Part& part) {
        std::int32_t end = part.front();
        std::int32_t other = end;
        for (int i = 0; i < 3; ++i) {
            const std::vector<float> distance = distancesFrom(part, end);
            const auto farthest = std::max_element(distance.begin(), distance.end());
            other = end;
            end = part[static_cast<std::size_t>(farthest - distance.begin())];
        }
        return {end, other};
    }

    /// Mean size that parts of an area would have, as a share of the wanted size.
    double meanShare(double area_m2) const {
        const double parts = std::max(1.0, std::round(area_m2 / sizes_.wanted_m2));
        return area_m2 / parts / sizes_.wanted_m2;
    }

    /// What a cut costs: its border against the smaller side's breadth, and the more the farther
    /// the parts on either side would be from the wanted size. Nothing where they would be outside
    /// of what is allowed.
    std::optional<double> costOf(double cut_m, double first_m2, double second_m2) const {
        const double one = meanShare(first_m2);
        const double other = meanShare(second_m2);
        if (std::min(one, other) < sizes_.least || std::max(one, other) > sizes_.most) {
            return std::nullopt;
        }
        constexpr double sizeWeight = 4.0;
        const double off = std::pow(one - 1.0, 2.0) + std::pow(other - 1.0, 2.0);
        return cut_m / std::sqrt(std::min(first_m2, second_m2)) * (1.0 + sizeWeight * off);
    }

    std::optional<std::pair<Part, Part>> cut(const Part& part) {
        const double area_m2 = areaOf(part);
        if (area_m2 < sizes_.most * sizes_.wanted_m2 || part.size() < 2) {
            return std::nullopt;
        }
        const auto [a, b] = endsOf(part);
        const std::vector<float> fromA = distancesFrom(part, a);
        const std::vector<float> fromB = distancesFrom(part, b);
        std::vector<std::size_t> order(part.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        std::stable_sort(order.begin(), order.end(), [&](std::size_t x, std::size_t y) {
            return fromA[x] - fromB[x] < fromA[y] - fromB[y];
        });
        const std::size_t at = cheapestCut(part, order, area_m2);
        if (at == 0) {
            return std::nullopt;
        }
        return separate(part, order, at);
    }

    /// How many nodes of the order go to the first side; 0 where no cut leaves allowed sizes.
    std::size_t cheapestCut(const Part& part, const std::vector<std::size_t>& order,
                            double area_m2) {
        const std::int32_t here = mark(part.front());
        std::vector<char> isFirst(part.size(), 0);
        double first_m2 = 0.0;
        double cut_m = 0.0;
        double best = std::numeric_limits<double>::infinity();
        std::size_t at = 0;
        for (std::size_t k = 0; k + 1 < order.size(); ++k) {
            const std::int32_t n = part[order[k]];
            isFirst[order[k]] = 1;
            first_m2 += node(n).area_m2;
            for (const WaterStep& step : node(n).steps) {
                if (mark(step.to) == here) {
                    const bool isInside = isFirst[local_[static_cast<std::size_t>(step.to)]] != 0;
                    cut_m += isInside ? -static_cast<double>(step.cut_m)
                                      : static_cast<double>(step.cut_m);
                }
            }
            const auto cost = costOf(cut_m, first_m2, area_m2 - first_m2);
            if (cost && *cost < best) {
                best = *cost;
                at = k + 1;
            }
        }
        return at;
    }

    std::pair<Part, Part> separate(const Part& part, const std::vector<std::size_t>& order,
                                   std::size_t at) {
        std::pair<Part, Part> halves;
        const std::int32_t second = next_++;
        for (std::size_t k = 0; k < order.size(); ++k) {
            const std::int32_t n = part[order[k]];
            (k < at ? halves.first : halves.second).push_back(n);
            if (k >= at) {
                mark(n) = second;
            }
        }
        std::sort(halves.first.begin(), halves.first.end());
        std::sort(halves.second.begin(), halves.second.end());
        return halves;
    }

    const WaterGraph& graph_;
    const PartSizes& sizes_;
    std::vector<std::int32_t> partOfNode_;
    std::vector<std::size_t> local_;
    std::int32_t next_ = 0;
};

} // namespace

std::vector<std::vector<std::int32_t>> splitGraph(const WaterGraph& graph, const PartSizes& sizes,
                                                  const base::Progress& progress) {
    return Splitter(graph, sizes).run(progress);
}

} // namespace sections
