// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/words.h"
#include "core/rates/row_comparison.h"
#include "core/rates/saying.h"
#include "core/water/questions/review_log.h"

namespace wording {

/// What a page of the log comes to, one sentence with its figures. \param by what its rows are.
[[nodiscard]] QString said(const rates::Saying& saying, water::ReviewBy by);

/// Two rows of it side by side, in a sentence or two.
[[nodiscard]] QString said(const rates::RowComparison& comparison);

/// A row as the desk calls it: groups of core in the language of the desk, names as they were
/// given.
[[nodiscard]] QString rowCalled(const std::string& name, water::ReviewBy by);

/// "at Heron Bay", "in October", "with smelt": a row as it stands in a sentence.
[[nodiscard]] QString rowInSentence(const std::string& name, water::ReviewBy by);

} // namespace wording
