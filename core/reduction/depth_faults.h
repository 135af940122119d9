// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/reduction/set_aside_along_track.h"
#include "core/reduction/track_series.h"
#include "core/soundings/verdict.h"

#include <vector>

namespace reduction {

/// Faults of the depths along one pass; verdicts has one entry for each member of the series, and
/// only those still kept are looked at. To be called in this order.
///
/// One figure over a stretch, after which the depth jumps.
void findStuckDepths(const TrackSeries& series, const AlongTrackSettings& settings,
                     std::vector<soundings::Verdict>& verdicts);
/// Stretches that begin and end with a sudden step and lie at about twice the depth around them,
/// or, of up to three soundings, anywhere else.
void findEchoFaults(const TrackSeries& series, const AlongTrackSettings& settings,
                    std::vector<soundings::Verdict>& verdicts);
/// Single soundings far from the robust line through their neighbours (Hampel 1974).
void findSpikes(const TrackSeries& series, const AlongTrackSettings& settings,
                std::vector<soundings::Verdict>& verdicts);

} // namespace reduction
