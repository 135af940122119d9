// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/marks/mark_input.h"
#include "core/marks/plan.h"
#include "core/water/water.h"

#include <optional>

namespace water {

/// What the log taught of the water, for one planned day.
struct LearnedLog {
    std::optional<marks::LearnedCatch> learned; ///< Nothing where no stay counts.
    std::size_t stays = 0;                      ///< That were counted.
    std::size_t elsewhere = 0; ///< Stays that lie on no water of today's: of another lake, or dry.
    std::size_t withoutEffort = 0; ///< Stays that lasted no time, or longer than any can.
};

/// Fits the log: each stay cut by blocks of two hours, with what lies round its place today, its
/// own wind and temperature, and what the plan's weights hold of such places. \param input of the
/// day; what it has of the log is not looked at. \return cancelled.
[[nodiscard]] base::Result<LearnedLog> learnLog(const Water& water, const marks::MarkInput& input,
                                                const marks::Plan& plan, base::Progress& progress);

} // namespace water
