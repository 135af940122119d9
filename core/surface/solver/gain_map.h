// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/outline.h"
#include "core/surface/drawn_water.h"
#include "core/surface/survey_line.h"

#include <vector>

namespace surface::solver {

/// What is still uncertain, on blocks of the water, and what a line would change. A block's
/// half-width is taken to grow evenly from that of a sounded place to its present one over the
/// distance to what is known now; a line brings what is known nearer.
class GainMap {
public:
    /// \param worth how much each cell counts, on the frame of the depths; of no cells: all alike.
    GainMap(const DrawnWater& drawn, const geo::Outline& outline, const grid::Grid<float>& worth);

    /// A block of cells with water.
    struct Block {
        geo::WaterPoint middle;
        double area_m2 = 0.0; ///< Times what it is worth.
        double halfWidth_m = 0.0;
        double known_m = 0.0; ///< Distance to the nearest sounded place or shore.
    };
    [[nodiscard]] const std::vector<Block>& blocks() const { return blocks_; }
    /// Blocks as a mask, for ways over water.
    [[nodiscard]] const grid::Mask& mask() const { return mask_; }
    /// How far the block would come down with something known `near_m` away, times its area.
    [[nodiscard]] double gainOf_m3(const Block& block, double near_m) const;
    /// Gain of a whole line.
    [[nodiscard]] double gainOf_m3(geo::WaterPoint start, geo::WaterPoint end) const;
    /// The line has been sounded: blocks around it come down.
    void take(geo::WaterPoint start, geo::WaterPoint end);
    [[nodiscard]] double meanHalfWidth_m() const;
    /// A line changes nothing farther off than this.
    [[nodiscard]] double reach_m() const { return reach_m_; }

private:
    std::vector<Block> blocks_;
    grid::Mask mask_;
    double sounded_m_ = 0.15; ///< Half-width at a sounded place.
    double reach_m_ = 0.0;
};

/// Distance from p to the straight piece from a to b.
[[nodiscard]] double distanceToPiece_m(geo::WaterPoint p, geo::WaterPoint a, geo::WaterPoint b);

} // namespace surface::solver
