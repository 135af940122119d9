// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/geo/outline.h"
#include "core/units/area.h"
#include "core/units/depth.h"
#include "core/units/volume.h"

#include <optional>
#include <vector>

namespace contours {

/// The ranges of depth that the user thinks in: edges ascending from the surface, the last band
/// open below, and the limit, the deepest depth worth fishing. Invariant: at least one edge, all
/// positive, strictly ascending; the limit is positive.
class Bands {
public:
    /// Edges at 2, 4, 6 m, the limit at 30 ft (9.144 m, ours), then 14 and 20 m.
    Bands();
    /// \return wrongUse for edges that are not positive and ascending, or a limit that is not
    /// positive.
    [[nodiscard]] static base::Result<Bands> make(std::vector<units::Depth> edges,
                                                  units::Depth limit);

    [[nodiscard]] const std::vector<units::Depth>& edges() const { return edges_; }
    [[nodiscard]] units::Depth limit() const { return limit_; }
    /// Number of bands: one more than edges.
    [[nodiscard]] std::size_t count() const { return edges_.size() + 1; }
    [[nodiscard]] std::size_t bandOf(units::Depth depth) const;
    [[nodiscard]] units::Depth from(std::size_t band) const;
    /// Nothing for the last band, which is open below.
    [[nodiscard]] std::optional<units::Depth> to(std::size_t band) const;
    [[nodiscard]] bool isFishable(units::Depth depth) const { return depth <= limit_; }
    friend bool operator==(const Bands&, const Bands&) = default;

private:
    Bands(std::vector<units::Depth> edges, units::Depth limit)
        : edges_(std::move(edges)), limit_(limit) {}
    std::vector<units::Depth> edges_;
    units::Depth limit_;
};

/// How much water one band holds at a given level.
struct BandMeasure {
    units::Depth from;
    std::optional<units::Depth> to;
    units::Area area;
    units::Volume volume; ///< All water above the bottom of this band's cells.
};

/// The water of one band as polygons, for the chart and for files.
struct BandPolygons {
    units::Depth from;
    std::optional<units::Depth> to;
    std::vector<geo::Piece> pieces;
};

} // namespace contours
