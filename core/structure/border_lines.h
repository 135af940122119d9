// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/outline.h"

#include <functional>
#include <vector>

namespace structure {

/// True where the border from a to b, with the piece on its left, is of the sort asked for.
using BelongsToLine = std::function<bool(geo::WaterPoint a, geo::WaterPoint b)>;

/// The parts of the rings that are of one sort, as lines with the piece on their left; a ring that
/// is so all round comes back to its first point. The rings are asked about in stretches of at
/// most `step_m`; interruptions of up to four stretches are bridged.
[[nodiscard]] std::vector<geo::Path> linesAlongBorder(const std::vector<geo::Piece>& pieces,
                                                      double step_m, const BelongsToLine& belongs);

} // namespace structure
