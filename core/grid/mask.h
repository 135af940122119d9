// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/outline.h"
#include "core/grid/grid.h"

#include <optional>

namespace grid {

/// Which cells of a frame are water, and how much of each.
class Mask {
public:
    Mask() = default;
    /// A cell is active if its centre is inside the shore or the shore passes through it.
    [[nodiscard]] static Mask of(const geo::Outline& outline, const GridFrame& frame);
    /// A mask from a plain grid of yes and no, each active cell wholly water.
    [[nodiscard]] static Mask from(const Grid<std::uint8_t>& active);

    [[nodiscard]] const GridFrame& frame() const { return active_.frame(); }
    [[nodiscard]] bool isActive(Cell c) const { return frame().holds(c) && active_[c] != 0; }
    [[nodiscard]] bool isActive(std::size_t index) const { return active_[index] != 0; }
    /// Share of the cell that is water, 0 to 1, with the shore cut through the cell (to 1/64 of its
    /// height, exact along it).
    [[nodiscard]] float share(std::size_t index) const { return share_[index]; }
    [[nodiscard]] const Grid<std::uint8_t>& active() const { return active_; }
    [[nodiscard]] const Grid<float>& shares() const { return share_; }
    [[nodiscard]] std::size_t activeCount() const;
    /// The cell of `place`, or where that is land the active cell nearest to it; of equals the
    /// first. Nothing in a mask without water.
    [[nodiscard]] std::optional<Cell> nearestActive(geo::WaterPoint place) const;

private:
    Grid<std::uint8_t> active_;
    Grid<float> share_;
};

} // namespace grid
