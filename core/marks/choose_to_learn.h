// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/learning/catch_model.h"
#include "core/marks/choose.h"

#include <vector>

namespace marks {

/// What a place would teach.
struct Lesson {
    learning::Expectation expected; ///< Per rod-hour.
    learning::Features features;
    double sureness = 1.0; ///< 0 to 1: how much of what is found out there can be counted on.
};

/// How a choice looks beyond what is known.
struct LearningRules {
    double eagerness = 1.0; ///< See eagernessToTry(); 0: only what is known counts.
    double rodHours = 8.0;  ///< Of a stay, above 0.
};

/// Positions, in the order of choosing, of the list that takes one after another the place with the
/// greatest expected rate x (1 + eagerness x sureness x relative width of what is known), under the
/// rules; then, as if it had been fished, all places that it speaks of are known better while their
/// rates stay. Pinned ones come first. Where the list stays short the cap of sections gives way.
/// No random number, so that the same log gives the same list. The value is a lognormal upper
/// bound; choosing in a batch as if the earlier ones were seen: Desautels, Krause and Burdick 2014,
/// JMLR 15:4053; the form of the bound is ours.
/// \param lessons one for each of `sorted`. \param sorted by falling expectation; of equal values
/// the first is taken.
[[nodiscard]] std::vector<std::size_t> chooseToLearn(const std::vector<Eligible>& sorted,
                                                     const std::vector<Lesson>& lessons,
                                                     const learning::CatchModel& model,
                                                     const ChoiceRules& rules,
                                                     const LearningRules& how);

} // namespace marks
