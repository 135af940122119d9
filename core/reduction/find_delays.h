// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/reduction/crossing.h"
#include "core/reduction/position_delay.h"
#include "core/soundings/sounding.h"

#include <span>
#include <vector>

namespace reduction {

struct DelaySettings {
    /// Fewer crossings that tell anything of a day's delay do not give one. Default 30. 5 to 1000.
    std::size_t leastCrossings = 30;
    /// Delays looked at, either way, seconds. Default 5 s: receivers and sounders of a boat lag by
    /// tenths to a few seconds. 1 to 30 s.
    double longest_s = 5.0;
};

/// The delay of each survey day by robust least squares over the crossings, jointly with the days'
/// vertical offsets: with the right delay, passes over a slope in two directions agree. Depths are
/// read along each pass at the time moved by the delay. \param kept as findCrossings had them.
/// \param days how many. \return wrongUse for a setting out of its range, cancelled.
[[nodiscard]] base::Result<std::vector<PositionDelay>>
findDelays(std::span<const soundings::KeptSounding> kept, std::span<const Crossing> crossings,
           std::size_t days, const DelaySettings& settings, base::Progress& progress);

} // namespace reduction
