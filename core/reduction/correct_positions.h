// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/reduction/reduced_survey.h"
#include "core/soundings/survey_day.h"

#include <vector>

namespace reduction {

/// Moves the kept soundings of the days with an agreed delay along their passes: to where the boat
/// was that much later by the log, straight between kept soundings, onward from the last two at the
/// end of a pass. Soundings without time, over gaps of more than 10 s, and days without an agreed
/// delay stay.
[[nodiscard]] ReducedSurvey correctPositions(const std::vector<soundings::SurveyDay>& days,
                                             ReducedSurvey survey);

} // namespace reduction
