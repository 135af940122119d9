// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/words.h"
#include "core/soundings/survey_day.h"

namespace wording {

/// "Two survey days differ by 0.47 m where they cross: agree the offset under Check the soundings."
[[nodiscard]] QString daysDiffer(units::Length by, const Words& words);
/// "The water level of 2 survey days is not known: depths there may stand too high or too low."
[[nodiscard]] QString daysWithoutLevel(std::size_t days);
/// What had been agreed of a day and fell away because its level was changed; empty where nothing
/// did.
[[nodiscard]] QString agreementDropped(const soundings::SurveyDay& before,
                                       const soundings::SurveyDay& after, const Words& words);

} // namespace wording
