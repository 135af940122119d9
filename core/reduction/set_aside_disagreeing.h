// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/reduction/reduced_survey.h"

namespace reduction {

struct DisagreeingSettings {
    /// Soundings of other passes this near are neighbours. Default 10 m: a boat's length and the
    /// error of two positions. 1 to 50 m.
    double near_m = 10.0;
    /// Set aside beyond this many standard deviations. Default 5. 3 to 20.
    double threshold = 5.0;
    /// Least standard deviation of a difference: floor_m + floorShare x depth. Default 0.15 m and
    /// 1.5 %: two soundings and what is left of the day's level. 0.01 to 2 m; 0 to 0.1.
    double floor_m = 0.15;
    double floorShare = 0.015;
    /// Positions may be off by this much, metres: on a slope depths then differ. Default 3 m.
    /// 0 to 20 m.
    double positionError_m = 3.0;
};

/// Sets aside kept soundings that stand alone against two other passes or more: all of these are on
/// one side of it, beyond threshold x floor + 1.5 x bottom slope x (distance + position error), and
/// agree with one another within half of that. Of two passes alone nobody knows which is wrong;
/// both stay. Soundings kept by hand stay. \return wrongUse for a setting out of its range,
/// cancelled.
[[nodiscard]] base::Result<ReducedSurvey>
setAsideDisagreeing(const std::vector<soundings::SurveyDay>& days, ReducedSurvey survey,
                    const DisagreeingSettings& settings, base::Progress& progress);

} // namespace reduction
