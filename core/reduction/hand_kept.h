// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/soundings/survey_day.h"

#include <vector>

namespace reduction {

/// For each sounding of the day whether the user took it back, so that no rule sets it aside again.
[[nodiscard]] inline std::vector<bool> handKept(const soundings::SurveyDay& day) {
    std::vector<bool> isKept(day.soundings.size(), false);
    for (const std::size_t i : day.keptByHand) {
        if (i < isKept.size()) {
            isKept[i] = true;
        }
    }
    return isKept;
}

} // namespace reduction
