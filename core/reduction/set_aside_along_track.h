// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/reduction/reduced_survey.h"

namespace reduction {

/// What counts as a fault along the track.
struct AlongTrackSettings {
    /// Half of the Hampel window, metres along the track. Default 15 m: wider than an echo fault of
    /// a few soundings at walking pace, narrower than a drop-off. 3 to 100 m.
    double window_m = 15.0;
    /// Threshold in robust standard deviations. Default 5. 3 to 20.
    double threshold = 5.0;
    /// Least robust standard deviation: floor_m + floorShare x depth. Default 0.10 m (sounders show
    /// tenths) and 2 %. 0.01 to 1 m; 0 to 0.1.
    double floor_m = 0.10;
    double floorShare = 0.02;
    /// Steepest bottom that is believed, rise over run. Default 1.0 (45 degrees); a bank of a
    /// stillwater stands no steeper under sediment. 0.3 to 5.
    double steepest = 1.0;
    /// Longest fault in metres along the track that a jump up and back may be. Default 40 m. 5 to
    /// 200 m.
    double longestFault_m = 120.0;
    /// Depths at or below this are no echo. Default 0.05 m. 0 to 0.5 m.
    double noEcho_m = 0.05;
    /// Deeper than any stillwater of the job. Default 350 m (Loch Morar has 310 m). 20 to 2000 m.
    double deepest_m = 350.0;
    /// Faster than this the boat cannot have gone, m/s. Default 12 m/s, twice a fast survey.
    /// 3 to 40 m/s.
    double fastest_m_s = 12.0;
    /// A jump of less than this is noise of the position. Default 20 m. 5 to 200 m.
    double leastJump_m = 20.0;
    /// Same figure over at least this many metres of track, and this many soundings, while the
    /// bottom before and after differs. Default 25 m, 12 soundings.
    double stuckOver_m = 25.0;
    int stuckSoundings = 12;
};

/// Sets aside drop-outs, position jumps, stuck positions, spikes, double echoes and stuck depths,
/// in this order, day by day and pass by pass; soundings already set aside and those kept by hand
/// stay as they are. Spikes by the Hampel identifier on the residual from a robust local line
/// (Hampel 1974; Pearson 2002), with a floor for the MAD; a real drop-off does not come back within
/// a few metres and is left. \return wrongUse for a setting out of its range, cancelled.
[[nodiscard]] base::Result<ReducedSurvey>
setAsideAlongTrack(const std::vector<soundings::SurveyDay>& days, ReducedSurvey survey,
                   const AlongTrackSettings& settings, base::Progress& progress);

} // namespace reduction
