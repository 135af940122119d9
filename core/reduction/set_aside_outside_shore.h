// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/geo/outline.h"
#include "core/reduction/reduced_survey.h"

namespace reduction {

struct OutsideShoreSettings {
    /// How far outside the shoreline a sounding may lie and still count as in the water. Default 0:
    /// the surface knows depths inside the shore alone. 0 to 50 m.
    double margin_m = 0.0;
};

/// Sets aside the kept soundings that lie on land; those kept by hand stay.
/// \return unusableInput where all soundings lie outside (`where` says how far off, and whether
/// longitude and latitude look swapped), cancelled.
[[nodiscard]] base::Result<ReducedSurvey>
setAsideOutsideShore(const std::vector<soundings::SurveyDay>& days, ReducedSurvey survey,
                     const geo::Outline& shore, const geo::WaterFrame& frame,
                     const OutsideShoreSettings& settings, base::Progress& progress);

} // namespace reduction
