// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/rates/grouping.h"
#include "core/rates/rate.h"

#include <span>

namespace rates {

struct RateSettings {
    /// Fish counted: of this species, any case; empty for all.
    std::string species;
    /// Fish counted: at least this heavy; a fish without a weight is then not counted.
    std::optional<units::Weight> leastWeight;
    /// First and last day of stays counted, by `clock`; both included.
    std::optional<units::Day> from;
    std::optional<units::Day> to;
    units::Clock clock;
    /// Rows in this order; other groups follow by name. A group named here that was fished appears
    /// in its place; with `listUntried` also those that were not.
    std::vector<std::string> order;
    bool listUntried = false;
    /// What a row is, for the notes: "section", "bait".
    std::string rowWord = "group";
};

/// Counts effort, runs and fish by group and says what the counts can bear. Catch rate is fish over
/// effort of the whole group, never the mean of the stays' rates (completed trips: Pollock et al.
/// 1994). A stay without fish counts by its effort. Fish of one day come together, which intervals
/// and comparisons of rows that span days allow for (day_scatter.h). \return wrongUse where the
/// first day is after the last; a log without stays gives a table without rows and a note.
[[nodiscard]] base::Result<RateTable> countRates(std::span<const GroupedStay> stays,
                                                 const RateSettings& settings,
                                                 base::Progress& progress);

} // namespace rates
