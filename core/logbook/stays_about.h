// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/logbook/kept_log.h"

#include <ranges>

namespace logbook {

/// A stay of more has a time that was noted wrongly, and no other is measured by it. Our choice
/// (no source).
inline constexpr std::chrono::hours longestStay{24};
/// Times of stays are noted as roughly as this. Our choice (no source).
inline constexpr std::chrono::minutes roughTime{15};

using Positions = std::ranges::iota_view<std::size_t, std::size_t>;

/// The positions of all stays that can be under way between two moments: those that start at most
/// longestStay before `start`, and not after `end`. Needs a log in order.
[[nodiscard]] Positions staysAbout(const KeptLog& log, units::Moment start, units::Moment end);

} // namespace logbook
