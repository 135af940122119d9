// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/learning/fit_catch.h"
#include "core/marks/mark_input.h"
#include "core/marks/plan.h"
#include "core/water/document/water.h"

#include <optional>
#include <utility>
#include <vector>

namespace water {

/// What the log taught of the water, for one planned day.
struct LearnedLog {
    std::optional<marks::LearnedCatch> learned; ///< Nothing where no stay counts.
    std::size_t stays = 0;                      ///< That were counted.
    std::size_t elsewhere = 0; ///< Stays that lie on no water of today's: of another lake, or dry.
    std::size_t withoutEffort = 0; ///< Stays that lasted no time, or longer than any can.
};

/// The log fitted without what the user believes; kept while log, bottom and planned day's season
/// stay, so that a belief can be changed without fitting anew.
struct FittedLog {
    /// What beliefs are asked of: the values of one counted stay's place.
    using Values = std::vector<std::pair<marks::FactorKind, double>>;

    learning::CatchFit fit;
    std::vector<Values> valuesOfStays;   ///< Of those that were counted.
    std::vector<std::size_t> stayOfEach; ///< For each observation of the fit, among them.
    std::size_t elsewhere = 0;           ///< See LearnedLog.
    std::size_t withoutEffort = 0;
    int season = 0; ///< Of the planned day.
};

/// Fits the log: each stay cut by blocks of two hours, with what lies round its place today, its
/// own wind and temperature. \param input of the day; what it has of the log is not looked at.
/// \return cancelled.
[[nodiscard]] base::Result<FittedLog> fitLog(const Water& water, const marks::MarkInput& input,
                                             const marks::Plan& plan, base::Progress& progress);

/// What of it counts for this plan, with what the plan's weights hold of the places fished.
[[nodiscard]] LearnedLog learnedFor(const FittedLog& fitted, const marks::Plan& plan);

} // namespace water
