// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/reduction/crossing.h"
#include "core/soundings/sounding.h"

#include <span>
#include <vector>

namespace reduction {

struct CrossingSettings {
    /// Two soundings of a pass farther apart than this have no straight line between them. Default
    /// 15 m. 1 to 200 m.
    double longestStep_m = 15.0;
    /// Within one pass only places this many soundings apart count: a boat that turns on the spot
    /// crosses itself without telling anything. Default 20. 2 to 1000.
    std::size_t leastApart = 20;
};

/// Every place where the track crosses itself, by an R-tree over its segments: n log n + crossings.
/// By soundingA, then soundingB. Parallel overlap is no crossing. \param kept as keptSoundings
/// gives them. \return cancelled.
[[nodiscard]] base::Result<std::vector<Crossing>>
findCrossings(std::span<const soundings::KeptSounding> kept, const CrossingSettings& settings,
              base::Progress& progress);

} // namespace reduction
