// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/grid/grid.h"
#include "core/store/connection.h"

#include <optional>
#include <string_view>

namespace store {

/// A grid of 32-bit floats as a tiled gridded coverage (OGC 17-066r1) in the water's frame, so that
/// any GIS shows it: not a number becomes the file's no-data value; tiles without data are left
/// out.

/// In the place of what the table held. \param quantity "depth below chart level".
void keepCoverage(Connection& connection, std::string_view table, std::string_view quantity,
                  const grid::Grid<float>& values_m);

/// The table holds nothing and is no layer any more.
void dropCoverage(Connection& connection, std::string_view table);

/// The grid on `frame`, to the last bit; nothing where a tile cannot be read or lies outside.
[[nodiscard]] std::optional<grid::Grid<float>>
recallCoverage(Connection& connection, std::string_view table, const grid::GridFrame& frame);

} // namespace store
