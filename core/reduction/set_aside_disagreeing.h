// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/reduction/reduced_survey.h"

#include <span>

namespace reduction {

/// A kept sounding against a drawing that did not know it (or hardly).
struct Residual {
    double residual_m = 0.0;  ///< Sounding minus drawing.
    double halfWidth_m = 0.0; ///< Trust of the drawing there, 95 %.
};

struct DisagreeingSettings {
    /// Set aside beyond this many standard deviations. Default 5. 3 to 20.
    double threshold = 5.0;
    /// Least standard deviation, metres. Default 0.15 m. 0.01 to 2 m.
    double floor_m = 0.15;
};

/// Sets aside kept soundings that the drawing contradicts: |residual - median| beyond threshold x
/// sqrt((halfWidth / 1.96)^2 + max(floor, 1.4826 MAD)^2). \param residuals one for each of
/// keptSoundings(days, survey), in that order. \return wrongUse where their number differs.
[[nodiscard]] base::Result<ReducedSurvey>
setAsideDisagreeing(const std::vector<soundings::SurveyDay>& days, ReducedSurvey survey,
                    std::span<const Residual> residuals, const DisagreeingSettings& settings,
                    base::Progress& progress);

} // namespace reduction
