// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/learning/feature.h"

namespace learning {

/// A stay, or its part in one block of hours: what was spent there and what came of it.
struct Observation {
    Features features;
    double rodHours = 0.0; ///< Above 0.
    int fish = 0;          ///< Landed; a blank counts as much as a catch.
    int day = 0;           ///< Observations of one day share its luck; counted from 0.
};

} // namespace learning
