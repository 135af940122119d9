// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/typed_id.h"
#include "core/geo/outline.h"
#include "core/grid/grid.h"
#include "core/structure/structure_report.h"
#include "core/units/area.h"
#include "core/units/depth.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace structure {

/// Kinds of bottom, as the trade and geomorphology name them, and the two kinds that weed makes.
enum class ZoneKind : std::uint8_t {
    dropOff,
    shelf,
    plateau,
    hump,
    hole,
    trough,
    spur,
    saddle,
    flat,
    weedBed,
    weedEdge
};

inline constexpr std::array allZoneKinds{ZoneKind::dropOff, ZoneKind::shelf,   ZoneKind::plateau,
                                         ZoneKind::hump,    ZoneKind::hole,    ZoneKind::trough,
                                         ZoneKind::spur,    ZoneKind::saddle,  ZoneKind::flat,
                                         ZoneKind::weedBed, ZoneKind::weedEdge};

/// The name in files, reports and on the screen: "drop-off", "weed bed".
[[nodiscard]] std::string_view nameOf(ZoneKind kind);

/// Position in ZoneMap::zones, from 0.
using ZoneNumber = std::int32_t;
inline constexpr ZoneNumber noZone = -1;

/// One connected piece of one kind of structure or weed.
struct Zone {
    ZoneKind kind = ZoneKind::flat;
    std::string name;               ///< "Hump 2": kind and number, from the launch side clockwise.
    std::vector<std::size_t> cells; ///< Indices in the grid, ascending.
    std::vector<geo::Piece> pieces; ///< Its outline.
    geo::WaterPoint middle;         ///< A point inside it, for its label.
    units::Depth shallowest;
    units::Depth deepest;
    units::Area area;
    /// Drop-offs and weed edges: the line along its top edge and along its foot; empty for other
    /// kinds.
    std::vector<geo::Path> topEdges;
    std::vector<geo::Path> feet;
    /// Drop-offs that begin at the shore itself: the line along the shore from which they fall,
    /// half a cell inside the water. No edge to lay a bait on, but where the drop-off is.
    std::vector<geo::Path> shoreTops;
    units::Length edgeLength; ///< Length of the top edges, at the shore too.
    double meanTrust_m = 0.0; ///< Mean 95 % half-width of its cells.
};

/// All zones of one family (structure, or weed) over one grid.
struct ZoneMap {
    std::vector<Zone> zones;
    grid::Grid<ZoneNumber> zoneOfCell;     ///< noZone where there is none.
    std::optional<StructureReport> report; ///< How structure was found; absent for weed.
};

} // namespace structure
