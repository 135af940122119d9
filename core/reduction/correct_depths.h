// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/reduction/reduced_survey.h"
#include "core/reduction/reduction_terms.h"

namespace reduction {

/// Reduces every sounding of every day (the sum of termsOf) and brings it into the water's frame;
/// verdicts are kept, or byHand where the user said so.
/// \return wrongUse where dayOffsets has another size than days, cancelled.
[[nodiscard]] base::Result<ReducedSurvey>
correctDepths(const std::vector<soundings::SurveyDay>& days, const geo::WaterFrame& frame,
              const ReductionSettings& settings, base::Progress& progress);

} // namespace reduction
