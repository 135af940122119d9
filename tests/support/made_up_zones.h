// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/structure/zone.h"
#include "tests/support/made_up_water.h"

#include <functional>
#include <string>

namespace support {

/// Which places belong to a zone.
using Belongs = std::function<bool(geo::WaterPoint)>;

/// A zone map of `water` without any zone.
[[nodiscard]] inline structure::ZoneMap noZones(const MadeUpWater& water) {
    structure::ZoneMap map;
    map.zoneOfCell = grid::Grid<structure::ZoneNumber>(water.depth.frame(), structure::noZone);
    return map;
}

/// Adds a zone of every cell of water that belongs, with the top edges given.
inline void addZone(structure::ZoneMap& map, const MadeUpWater& water, structure::ZoneKind kind,
                    const Belongs& belongs, std::vector<geo::Path> topEdges = {}) {
    structure::Zone zone;
    zone.kind = kind;
    zone.name = std::string(structure::nameOf(kind)) + " " + std::to_string(map.zones.size() + 1);
    zone.topEdges = std::move(topEdges);
    zone.shallowest = units::Depth::metres(1e9);
    const auto number = static_cast<structure::ZoneNumber>(map.zones.size());
    const grid::GridFrame& frame = water.depth.frame();
    for (std::size_t i = 0; i < frame.size(); ++i) {
        const geo::WaterPoint p = frame.centre(frame.cellAt(i));
        if (water.depth.has(i) && belongs(p)) {
            const units::Depth depth = *water.depth.at(frame.cellAt(i));
            map.zoneOfCell[i] = number;
            zone.cells.push_back(i);
            zone.shallowest = std::min(zone.shallowest, depth);
            zone.deepest = std::max(zone.deepest, depth);
            zone.middle = p;
        }
    }
    zone.area =
        units::Area::squareMetres(static_cast<double>(zone.cells.size()) * frame.cellArea_m2());
    for (const geo::Path& edge : zone.topEdges) {
        for (std::size_t k = 1; k < edge.size(); ++k) {
            zone.edgeLength += geo::distance(edge[k - 1], edge[k]);
        }
    }
    map.zones.push_back(std::move(zone));
}

} // namespace support
