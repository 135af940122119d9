// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/surface/solver/shore_line.h"

namespace surface::solver {

/// How steep the bank must be at each piece of shore, from soundings off it: the largest depth over
/// distance (of at least 5 m, as the outline is off by as much) among those within 30 m; 0 where
/// there is none. Metres per metre.
[[nodiscard]] std::vector<double> wallSlopesOf(const std::vector<ShorePull>& shore,
                                               const std::vector<Sample>& samples);

/// By how many metres of depth a metre across the shore may be off: the slope of the bank, and more
/// at a wall, whose foot the bottom is held to and whose top says nothing about it.
[[nodiscard]] double shoreSlopeOf(double bankSlope, double wallSlope);

} // namespace surface::solver
