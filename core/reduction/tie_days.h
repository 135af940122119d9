// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/reduction/crossing_check.h"
#include "core/soundings/survey_day.h"
#include "core/units/length.h"

#include <span>
#include <vector>

namespace reduction {

struct TieSettings {
    /// Fewer crossings with the days already held do not tie a day. Default 5. 3 to 100.
    std::size_t leastCrossings = 5;
    /// Differences beyond this many robust standard deviations weigh less (Huber 1964).
    /// Default 1.5.
    double huber = 1.5;
};

/// What to add to each day's depths so that the days agree, and what it would bring. Offered, never
/// applied unasked.
struct DayTie {
    std::vector<units::Length> offsets;      ///< One for each day; zero for days held or not tied.
    std::vector<units::Length> offsetErrors; ///< Standard error of each.
    std::vector<bool> isHeld;                ///< The datum: a day with a gauge reading.
    std::vector<bool> isTied;                ///< True for held days and for those that reach one.
    std::vector<std::size_t> crossingsWithOthers;
    CrossingCheck before;
    CrossingCheck after;
};

/// Vertical offset of each survey day against the others by robust least squares over the crossings
/// between days (iteratively reweighted, Huber). Days with a gauge are held; without any, the day
/// with the most crossings. \return cancelled.
[[nodiscard]] base::Result<DayTie> tieDays(std::span<const Crossing> crossings,
                                           const std::vector<soundings::SurveyDay>& days,
                                           const TieSettings& settings, base::Progress& progress);

} // namespace reduction
