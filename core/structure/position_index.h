// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/grid/depth_grid.h"

#include <optional>

namespace structure {

/// How each cell stands against its surroundings (benthic position index, Lundblad and others
/// 2006): positive on high ground, negative in low ground, although depth counts down. Not rounded
/// to whole numbers: the relief of a lake is decimetres.
class PositionIndex {
public:
    PositionIndex() = default;
    /// Mean depth of the ring of cells between `inner` and `outer` from the cell's centre, less the
    /// cell's own depth. Cells without depth count neither way; NaN where fewer than a quarter of
    /// the ring hold a depth. Cost: cells times the ring's height in cells. \param every 1, or more
    /// to work out only every so many columns and rows, the rest NaN: enough for the spread.
    [[nodiscard]] static PositionIndex of(const grid::DepthGrid& depth, units::Length inner,
                                          units::Length outer, int every = 1);

    [[nodiscard]] const grid::GridFrame& frame() const { return rise_m_.frame(); }
    /// Metres above the mean of the ring; nothing where it is not known.
    [[nodiscard]] std::optional<units::Length> riseAt(grid::Cell c) const;
    /// For loops: metres above the mean of the ring, NaN where not known.
    [[nodiscard]] const grid::Grid<float>& rise_m() const { return rise_m_; }
    /// Robust spread of the index over the water: 1.4826 times the median absolute deviation from
    /// the median, metres; not less than a centimetre.
    [[nodiscard]] double spread_m() const { return spread_m_; }
    /// The index in spreads, for comparing waters.
    [[nodiscard]] double standardised(std::size_t index) const {
        return static_cast<double>(rise_m_[index]) / spread_m_;
    }

private:
    grid::Grid<float> rise_m_;
    double spread_m_ = 0.01;
};

} // namespace structure
