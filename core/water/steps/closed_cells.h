// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/grid/grid.h"
#include "core/water/document/water.h"

#include <cstdint>

namespace water {

/// 1 in every cell that closed water reaches into, else 0: a place in closed water never lies in an
/// open cell, however narrow the closed water is. \param water with a frame.
/// \return the error of Outline::make() for a closed water that crosses itself, with its name.
[[nodiscard]] base::Result<grid::Grid<std::uint8_t>> closedCells(const Water& water,
                                                                 const grid::GridFrame& frame);

} // namespace water
