// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/reduction/set_aside_along_track.h"
#include "core/reduction/track_series.h"
#include "core/soundings/verdict.h"

#include <cstddef>
#include <vector>

namespace reduction {

// What the rules for faults along a track look at.

/// Least robust standard deviation at a depth.
[[nodiscard]] double floor_m(const AlongTrackSettings& settings, double depth_m);

/// What is still kept of a series, so that neighbours are true neighbours; its index counts within
/// the series.
[[nodiscard]] TrackSeries keptOf(const TrackSeries& series,
                                 const std::vector<soundings::Verdict>& verdicts);

/// Median of the depths in [first, last).
[[nodiscard]] double medianBetween(const TrackSeries& series, std::size_t first, std::size_t last);

/// Typical rise over run near `i`, its own step and the next ones left out by the median.
[[nodiscard]] double slopeNear(const TrackSeries& series, std::size_t i);

} // namespace reduction
