// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/marks/rank_marks.h"
#include "core/water/document/plan_note.h"
#include "core/water/document/water.h"
#include "core/water/steps/day_ground.h"
#include "core/water/steps/workings.h"

#include <cstddef>
#include <string>
#include <vector>

namespace water {

/// Where a plan stands: what it is asked with, and what it works out or finds worked out. It refers
/// to what others own and keep alive.
struct PlanWork {
    const Water& water;
    const marks::Plan& plan;
    const DayGround& day;
    Workings& kept;
    base::Progress& progress;
};

/// Candidates with their ropes, and those that have none.
struct Worked {
    std::vector<marks::WorkedCandidate> candidates;
    std::size_t refused = 0;
    std::string lastReason;
    std::vector<RefusedMark> pinned; ///< Of the user's own.
};

/// Works out the anchors of each candidate, in each of the day's winds, or takes them from what is
/// kept. \return unusableInput where none of them holds the boat; cancelled.
[[nodiscard]] base::Result<Worked> workOutAll(const std::vector<marks::Candidate>& candidates,
                                              const PlanWork& work);

/// Where the baits lie from a set of anchors. \param work must outlive what is returned.
[[nodiscard]] marks::RodsFor rodsFrom(const PlanWork& work);

} // namespace water
