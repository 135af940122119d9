// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/marks/looked_at.h"
#include "core/marks/lying_cells.h"
#include "core/marks/mark.h"
#include "core/marks/mark_input.h"
#include "core/marks/plan.h"
#include "core/marks/prospect.h"

#include <functional>
#include <vector>

namespace marks {

/// The places worth looking at where a boat may lie: on and beside drop-off and weed edges, on
/// features, on the borders of bands, and on a lattice half a cast wide over all fishable water;
/// besides, every cell where it may lie is stood for by one of them that is like it and near, see
/// placesToLookAt(). Neither the log nor what matters to the user has a say. The same water turned
/// by a right angle about the frame's origin, with its wind, gives the same places turned.
/// \param lying of this input, plan and settings. \return wrongUse for settings or a plan out of
/// range; cancelled.
[[nodiscard]] base::Result<std::vector<LookedAt>>
lookRound(const MarkInput& input, const Plan& plan, const ProposeSettings& settings,
          const LyingCells& lying, base::Progress& progress);

/// What each of these places promises, but for what matters to the user. \return cancelled.
[[nodiscard]] base::Result<std::vector<Prospect>> prospectsOf(const MarkInput& input,
                                                              const Plan& plan,
                                                              const std::vector<LookedAt>& lookedAt,
                                                              base::Progress& progress);

/// Whether the boat holds at a place once its anchors are worked out. An error ends the search.
using Holds = std::function<base::Result<bool>(const Candidate&)>;

/// Of the places looked at, those that are to get ropes and rods: thinned by promise, best first
/// and never nearer to each other than the settings say. The promise of a place is its worth, see
/// Prospect. Conditions exclude before anything is thinned: a place where the boat does not hold
/// takes neither another's turn nor its room, and the search goes on until there are enough,
/// nothing is left, or too many were tried in vain. Pinned places come first, unmoved, wherever
/// they lie in the water, and are not asked about. \param prospects of the places looked at, one
/// for each. \param pinned places that the user put. \param holds empty: wherever a boat may lie it
/// holds. \return wrongUse for settings or a plan out of range; unusableInput where a boat may lie
/// nowhere, with what excludes it; cancelled; the error of `holds`. Empty where it holds nowhere.
[[nodiscard]] base::Result<std::vector<Candidate>>
proposeMarks(const MarkInput& input, const Plan& plan, const std::vector<LookedAt>& lookedAt,
             const std::vector<Prospect>& prospects, const std::vector<Candidate>& pinned,
             const ProposeSettings& settings, base::Progress& progress, const Holds& holds = {});

/// All three.
[[nodiscard]] base::Result<std::vector<Candidate>>
proposeMarks(const MarkInput& input, const Plan& plan, const std::vector<Candidate>& pinned,
             const ProposeSettings& settings, base::Progress& progress, const Holds& holds = {});

} // namespace marks
