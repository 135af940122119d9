// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/soundings/survey_day.h"
#include "core/units/moment.h"

#include <vector>

namespace water {

/// The survey days that one file holds, in its order: a new one begins with the first sounding of
/// another date, by the water's clock, after a break of more than four hours. So an outing over
/// midnight stays one. Soundings without a time stay with those before them. Each is called by its
/// date; what was true of the whole file is true of each, but for the water temperature, which is a
/// mean over all of them and is left out. A file of one day comes back as it is.
[[nodiscard]] std::vector<soundings::SurveyDay> partedByDays(soundings::SurveyDay whole,
                                                             const units::Clock& clock);

} // namespace water
