// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/soundings/sounding.h"

#include <span>
#include <vector>

namespace surface::solver {

/// Positions of soundings that stand out from their own track: among the 6 soundings on each side
/// (within 40 m along the track), less the median slope, farther from the median than the larger
/// of 0.35 m + 1 % of the depth and 5 x 1.4826 median absolute deviations (Hampel 1974). A
/// drop-off keeps its soundings: the slope goes with it.
[[nodiscard]] std::vector<std::size_t> spikesIn(std::span<const soundings::KeptSounding> soundings);

} // namespace surface::solver
