// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/words.h"
#include "core/marks/told_marks.h"

#include <span>

namespace wording {

/// The quantities behind a factor: "58 m of drop-off, 4.0 to 8.8 m, within a cast". Empty where
/// nothing is told.
[[nodiscard]] QString said(const marks::Reason& reason, const Words& words);

/// Marks for a file that holds their reasons as text, "; " between them: in metres as all that is
/// in it, whoever made it. \param marks must outlive what is returned.
[[nodiscard]] marks::ToldMarks told(std::span<const marks::Mark> marks);

} // namespace wording
