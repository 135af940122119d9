// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sections/lump_ground.h"

namespace sections {

bool LumpGround::hangsTogetherWithout(std::size_t v) const {
    constexpr std::size_t shortLook = 60; // lumps
    const std::int32_t own = part_[v];
    std::vector<std::size_t> wanted;
    eachSide(v, [&](std::size_t to) {
        if (part_[to] == own) {
            wanted.push_back(to);
        }
    });
    if (wanted.size() < 2) {
        return true;
    }
    std::vector<std::size_t> met{wanted.front()};
    std::size_t found = 1;
    const auto isAmong = [](const std::vector<std::size_t>& list, std::size_t n) {
        return std::find(list.begin(), list.end(), n) != list.end();
    };
    for (std::size_t k = 0; k < met.size() && k < shortLook && found < wanted.size(); ++k) {
        eachSide(met[k], [&](std::size_t to) {
            if (to != v && part_[to] == own && !isAmong(met, to)) {
                met.push_back(to);
                found += isAmong(wanted, to) ? 1 : 0;
            }
        });
    }
    return found == wanted.size();
}

std::vector<PartSums> sumsOfParts(const WaterGraph& graph, std::span<const std::int32_t> partOfNode,
                                  std::size_t count) {
    std::vector<PartSums> parts(count);
    for (std::size_t v = 0; v < graph.nodes.size(); ++v) {
        PartSums& part = parts[static_cast<std::size_t>(partOfNode[v])];
        part.add(graph.nodes[v].sums);
        part.border_m += graph.nodes[v].sums.border_m;
        for (const WaterStep& step : graph.nodes[v].steps) {
            part.border_m += partOfNode[static_cast<std::size_t>(step.to)] != partOfNode[v]
                                 ? static_cast<double>(step.border_m)
                                 : 0.0;
        }
    }
    return parts;
}

} // namespace sections
