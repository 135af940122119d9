// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sections/recut_pairs.h"

#include "core/sections/pair_cut.h"

#include <algorithm>
#include <set>

namespace sections {

namespace {

using Nodes = std::vector<std::int32_t>;
using Pair = std::pair<std::int32_t, std::int32_t>;

class Recutting {
public:
    Recutting(const WaterGraph& graph, std::vector<std::int32_t>& partOfNode,
              std::vector<PartSums>& parts, const PartCost& cost)
        : graph_(graph), part_(partOfNode), parts_(parts), cost_(cost), cutter_(graph, cost),
          nodes_(parts.size()) {
        for (std::size_t n = 0; n < part_.size(); ++n) {
            nodes_[static_cast<std::size_t>(part_[n])].push_back(static_cast<std::int32_t>(n));
        }
    }

    void run(const base::Progress& progress) {
        constexpr int mostRounds = 2; // later ones hardly change anything
        std::set<Pair> pairs = neighbours();
        for (int round = 0; round < mostRounds && !pairs.empty(); ++round) {
            std::set<std::int32_t> changed;
            for (const Pair& pair : pairs) {
                if (progress.stopAsked()) {
                    return;
                }
                if (recut(pair)) {
                    changed.insert(pair.first);
                    changed.insert(pair.second);
                }
            }
            pairs = neighbours();
            std::erase_if(pairs, [&](const Pair& pair) {
                return !changed.contains(pair.first) && !changed.contains(pair.second);
            });
        }
    }

private:
    PartSums& sums(std::int32_t part) { return parts_[static_cast<std::size_t>(part)]; }
    Nodes& nodesOf(std::int32_t part) { return nodes_[static_cast<std::size_t>(part)]; }

    [[nodiscard]] std::set<Pair> neighbours() const {
        std::set<Pair> pairs;
        for (std::size_t n = 0; n < part_.size(); ++n) {
            for (const WaterStep& step : graph_.nodes[n].steps) {
                const std::int32_t to = part_[static_cast<std::size_t>(step.to)];
                if (step.alongSide && part_[n] < to) {
                    pairs.emplace(part_[n], to);
                }
            }
        }
        return pairs;
    }

    bool recut(const Pair& pair) {
        constexpr double leastGain = 0.01; // of about 2.5 that a pair costs
        Nodes both = nodesOf(pair.first);
        both.insert(both.end(), nodesOf(pair.second).begin(), nodesOf(pair.second).end());
        std::sort(both.begin(), both.end());
        const double now = cost_.of(sums(pair.first)) + cost_.of(sums(pair.second));
        const auto cut = cutter_.cheapest(both, now - leastGain);
        if (!cut) {
            return false;
        }
        sums(pair.first) = cut->first;
        sums(pair.second) = cut->second;
        nodesOf(pair.first).clear();
        nodesOf(pair.second).clear();
        for (std::size_t k = 0; k < cut->order.size(); ++k) {
            const std::int32_t to = k < cut->at ? pair.first : pair.second;
            part_[static_cast<std::size_t>(cut->order[k])] = to;
            nodesOf(to).push_back(cut->order[k]);
        }
        return true;
    }

    const WaterGraph& graph_;
    std::vector<std::int32_t>& part_;
    std::vector<PartSums>& parts_;
    const PartCost& cost_;
    PairCutter cutter_;
    std::vector<Nodes> nodes_;
};

} // namespace

void recutPairs(const WaterGraph& graph, std::vector<std::int32_t>& partOfNode,
                std::vector<PartSums>& parts, const PartCost& cost,
                const base::Progress& progress) {
    Recutting(graph, partOfNode, parts, cost).run(progress);
}

} // namespace sections
