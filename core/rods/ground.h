// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/grid/depth_grid.h"
#include "core/structure/zone.h"
#include "core/units/depth.h"

#include <array>
#include <cstdint>
#include <optional>
#include <vector>

namespace rods {

/// One straight piece of a drop-off's top edge, of its foot where it begins at the shore and has no
/// top edge, or of a weed edge.
struct EdgePiece {
    geo::WaterPoint a;
    geo::WaterPoint b;
    /// dropOff or weedEdge.
    structure::ZoneKind kind = structure::ZoneKind::dropOff;
    /// Counts the zones of structure first, then those of weed: tells edges of one zone from those
    /// of another.
    std::int32_t zone = 0;
};

/// Length of the part of the segment a-b that lies within `radius_m` of p.
[[nodiscard]] double lengthWithin_m(geo::WaterPoint a, geo::WaterPoint b, geo::WaterPoint p,
                                    double radius_m);

/// How much a kind of bottom is worth a bait, 0 to 1: features and edges from 0.75 up, plateau,
/// trough and shelf about a half, flat bottom and weed itself little. Common practice (no source).
[[nodiscard]] double worthOf(structure::ZoneKind kind);

/// The bottom as baits and marks see it: today's depth, what may be fished, what lies where, and
/// which edges are within reach. Built once for a water and a day, then asked many times; safe to
/// ask from several threads. It refers to the grids and maps given, which must outlive it.
class Ground {
public:
    /// \param today depth at today's level. \param limit the deepest depth worth fishing.
    /// \param closed cells where boats or fishing are forbidden (not 0), on the frame of `today`;
    /// null where there are none. \param structure,weed zones on the frame of `today`.
    Ground(const grid::DepthGrid& today, units::Depth limit, const grid::Grid<std::uint8_t>* closed,
           const structure::ZoneMap& structure, const structure::ZoneMap& weed);

    [[nodiscard]] const grid::GridFrame& frame() const { return today_->frame(); }
    [[nodiscard]] const grid::DepthGrid& today() const { return *today_; }
    [[nodiscard]] units::Depth limit() const { return limit_; }
    /// Nothing on land and on ground that is dry today.
    [[nodiscard]] std::optional<units::Depth> depthAt(geo::WaterPoint p) const;
    [[nodiscard]] bool isClosed(grid::Cell c) const;
    [[nodiscard]] bool isClosed(geo::WaterPoint p) const { return isClosed(frame().cellOf(p)); }
    /// Water today, not closed, not deeper than the limit.
    [[nodiscard]] bool isFishable(grid::Cell c) const;
    [[nodiscard]] bool isFishable(geo::WaterPoint p) const;
    /// True where every cell that the straight line from a to b passes holds water today and is not
    /// closed.
    [[nodiscard]] bool isOverOpenWater(geo::WaterPoint a, geo::WaterPoint b) const;
    /// The same, closed or not.
    [[nodiscard]] bool isOverWater(geo::WaterPoint a, geo::WaterPoint b) const;
    /// The zone of structure and the zone of weed that hold the cell; null where none does.
    [[nodiscard]] std::array<const structure::Zone*, 2> zonesAt(grid::Cell c) const;
    /// The kind under p that is most worth naming; nothing where no zone lies.
    [[nodiscard]] std::optional<structure::ZoneKind> kindAt(geo::WaterPoint p) const;
    /// Every piece of edge with a point within `radius_m` of p, in the order of the zones.
    [[nodiscard]] std::vector<EdgePiece> edgesNear(geo::WaterPoint p, double radius_m) const;
    [[nodiscard]] const std::vector<EdgePiece>& edges() const { return edges_; }
    [[nodiscard]] const structure::ZoneMap& structure() const { return *structure_; }
    [[nodiscard]] const structure::ZoneMap& weed() const { return *weed_; }

private:
    struct BinRange {
        int firstCol;
        int lastCol;
        int firstRow;
        int lastRow;
    };
    void takeEdges(const structure::ZoneMap& map, structure::ZoneKind kind, std::int32_t first);
    void takeLines(const std::vector<geo::Path>& lines, structure::ZoneKind kind,
                   std::int32_t zone);
    void fillBins();
    [[nodiscard]] BinRange binsOf(const geo::Box& box) const;

    const grid::DepthGrid* today_;
    units::Depth limit_;
    const grid::Grid<std::uint8_t>* closed_;
    const structure::ZoneMap* structure_;
    const structure::ZoneMap* weed_;
    std::vector<EdgePiece> edges_;
    /// Edges by square bin: those of bin k are binEdges_[binStart_[k]] to binEdges_[binStart_[k +
    /// 1] - 1].
    double bin_m_ = 32.0;
    int binCols_ = 0;
    int binRows_ = 0;
    std::vector<std::uint32_t> binStart_;
    std::vector<std::uint32_t> binEdges_;
};

} // namespace rods
