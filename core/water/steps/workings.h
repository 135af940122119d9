// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/marks/looked_at.h"
#include "core/marks/propose_marks.h"
#include "core/marks/prospect.h"
#include "core/marks/rank_marks.h"
#include "core/water/document/stamp.h"
#include "core/water/steps/day_ground.h"
#include "core/water/steps/learn_log.h"

#include <map>
#include <memory>
#include <utility>
#include <vector>

namespace water {

/// Something that was worked out, and the stamp of what it was worked out from.
template <class T>
struct Kept {
    Stamp from;
    std::shared_ptr<const T> what; ///< Null before the first time.

    [[nodiscard]] bool holds(Stamp wanted) const { return what != nullptr && from == wanted; }
};

/// What planning one day worked out and the next plan of the same water can use: a slider moved
/// asks for neither the log nor ropes nor rods again. A plan made with workings is the plan made
/// without. One job at a time.
struct Workings {
    Kept<DayGround> ground;
    Kept<FittedLog> log;
    Kept<marks::LyingCells> lying;
    Kept<std::vector<marks::LookedAt>> looked;
    Kept<std::vector<marks::Prospect>> prospects;
    /// The anchors of each place asked for, or why there are none.
    std::map<std::pair<double, double>, base::Result<marks::WorkedCandidate>> worked;
    Stamp workedFrom;
};

} // namespace water
