// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/grid/grid.h"
#include "core/units/depth.h"

#include <cmath>
#include <optional>
#include <utility>

namespace grid {

/// The drawn bottom: depth below a level in each cell, positive down. Cells outside the water hold
/// no depth, and that is to be asked, never guessed from a number.
class DepthGrid {
public:
    DepthGrid() = default;
    explicit DepthGrid(const GridFrame& frame) : depth_m_(frame, NAN) {}

    [[nodiscard]] const GridFrame& frame() const { return depth_m_.frame(); }
    [[nodiscard]] std::size_t size() const { return depth_m_.size(); }
    [[nodiscard]] bool has(Cell c) const { return frame().holds(c) && !std::isnan(depth_m_[c]); }
    [[nodiscard]] bool has(std::size_t index) const { return !std::isnan(depth_m_[index]); }
    [[nodiscard]] std::optional<units::Depth> at(Cell c) const {
        return has(c) ? std::optional(units::Depth::metres(static_cast<double>(depth_m_[c])))
                      : std::nullopt;
    }
    /// Bilinear between the centres of the four cells round p, of those that hold a depth; nothing
    /// where the cell of p holds none.
    [[nodiscard]] std::optional<units::Depth> at(geo::WaterPoint p) const;

    void set(std::size_t index, units::Depth depth) {
        depth_m_[index] = static_cast<float>(depth.inMetres());
    }
    void clear(std::size_t index) { depth_m_[index] = NAN; }

    /// For loops: metres, NaN where there is no depth.
    [[nodiscard]] const std::vector<float>& raw_m() const { return depth_m_.values(); }
    [[nodiscard]] std::vector<float>& raw_m() { return depth_m_.values(); }
    /// The greatest depth; nothing for a grid without any.
    [[nodiscard]] std::optional<units::Depth> deepest() const;
    /// The same bottom under a level that stands `rise` higher: deeper by it everywhere; cells that
    /// fall dry hold no depth.
    [[nodiscard]] DepthGrid raisedBy(units::Length rise) const;
    /// The same, but what falls dry keeps how far it stands above the water, as a depth below 0:
    /// for lines and areas that are to end where the water does.
    [[nodiscard]] DepthGrid shiftedBy(units::Length rise) const;

private:
    Grid<float> depth_m_;
};

} // namespace grid
