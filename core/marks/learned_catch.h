// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/learning/catch_model.h"
#include "core/units/temperature.h"

#include <optional>
#include <vector>

namespace marks {

/// What is true of the water while a boat lies there, as far as fish may care.
struct Circumstances {
    /// How the wind blows on to the place, 0 to 1 (see windwardValue); a half where nobody knows.
    double windward = 0.5;
    std::optional<units::Temperature> waterTemperature;
    int season = 0; ///< A slot; the newest seasons have one each.
    /// Blocks of the day, each with its share of the time.
    learning::Features hours;
};

/// What the log taught, and what of the planned day it is asked for.
struct LearnedCatch {
    learning::CatchModel model; ///< Not empty.
    std::optional<units::Temperature> waterTemperature;
    int season = 0;
    learning::Features hours;
    double rodHoursOfStay = 8.0; ///< What a stay of the planned day comes to; above 0.
};

} // namespace marks
