// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/reduction/reduced_survey.h"
#include "core/water/document/water.h"
#include "core/water/questions/soundings_within.h"

namespace acts {

/// Sets these soundings aside by hand.
/// \return wrongUse where a day has no such sounding.
[[nodiscard]] base::Result<water::Water> setAsideSoundings(const water::Water& water,
                                                           const water::SoundingChoice& choice);

/// Takes these soundings back into the drawing, whether a rule set them aside or the user did.
/// \param judged the water's survey as it was last looked over: which of them a rule set aside.
/// \return wrongUse where a day has no such sounding.
[[nodiscard]] base::Result<water::Water> takeBackSoundings(const water::Water& water,
                                                           const water::SoundingChoice& choice,
                                                           const reduction::ReducedSurvey& judged);

} // namespace acts
