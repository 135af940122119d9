// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/marks/factor.h"

#include <string>

namespace water {

/// What the user once held to matter, under a name: "windy autumn". It lies in the water and not in
/// the settings of one machine: what holds on this water need not hold on another, and whoever is
/// handed the water, or asks meremark-batch, finds it there.
struct BeliefProfile {
    std::string name; ///< Not empty; no two of a water are called the same.
    marks::Weights weights;
    friend bool operator==(const BeliefProfile&, const BeliefProfile&) = default;
};

} // namespace water
