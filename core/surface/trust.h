// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/grid/grid.h"
#include "core/units/depth.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>

namespace surface {

/// How a drawn depth is known, in one word.
enum class TrustName : std::uint8_t {
    sounded,  ///< A kept sounding lies within about a cell.
    inferred, ///< Between soundings, and the half-width is below the larger of 0.5 m and 10 % of
              ///< the depth.
    guess,    ///< Beyond that.
};

/// "sounded", "inferred" or "guess".
[[nodiscard]] std::string_view wordFor(TrustName name);

/// How far the drawn depth may be from the truth in each cell: it lies within plus or minus the
/// half-width in 95 of 100 cells.
class TrustGrid {
public:
    TrustGrid() = default;
    /// Both grids on the same frame. \param halfWidth_m NaN where there is no depth.
    TrustGrid(grid::Grid<float> halfWidth_m, grid::Grid<TrustName> names);

    [[nodiscard]] const grid::GridFrame& frame() const { return halfWidth_m_.frame(); }
    [[nodiscard]] bool has(grid::Cell c) const;
    /// Nothing outside the water.
    [[nodiscard]] std::optional<TrustName> at(grid::Cell c) const;
    [[nodiscard]] std::optional<TrustName> at(geo::WaterPoint p) const;
    /// Half-width of the 95 % band in the cell of p; nothing outside the water.
    [[nodiscard]] std::optional<units::Length> halfWidthAt(grid::Cell c) const;
    [[nodiscard]] std::optional<units::Length> halfWidthAt(geo::WaterPoint p) const;
    /// Share of the cells with a depth that bear this name, 0 to 1; 0 where there is none.
    [[nodiscard]] double shareOf(TrustName name) const;

    /// For loops: metres, NaN outside the water.
    [[nodiscard]] const grid::Grid<float>& halfWidths_m() const { return halfWidth_m_; }
    /// For loops; outside the water the name means nothing.
    [[nodiscard]] const grid::Grid<TrustName>& names() const { return names_; }

private:
    grid::Grid<float> halfWidth_m_;
    grid::Grid<TrustName> names_;
    std::array<double, 3> shares_{}; ///< By name: asked for at every turn of a hand.
};

} // namespace surface
