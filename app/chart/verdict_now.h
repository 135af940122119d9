// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/chart_content.h"
#include "core/reduction/reduced_survey.h"
#include "core/soundings/survey_day.h"
#include "core/soundings/verdict.h"

#include <cstddef>
#include <vector>

namespace chart {

/// What is held of one sounding at the moment: what the user said by hand, at once, else what the
/// rules found when the soundings were last looked over. \param i in range of `judged`.
[[nodiscard]] soundings::Verdict verdictNow(const soundings::SurveyDay& day,
                                            const reduction::ReducedDay& judged, std::size_t i);

/// Whether the days that were looked over are still those of the water, so that a position of a
/// sounding means the same in both.
[[nodiscard]] bool isLookedOver(const ChartContent& content);

/// The verdicts of a whole day at the moment; as the rules found them where the water has other
/// days by now. \param day position, in range of the days looked over.
[[nodiscard]] std::vector<soundings::Verdict> verdictsNow(const ChartContent& content,
                                                          std::size_t day);

} // namespace chart
