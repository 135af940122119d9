// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/marks/plan.h"

#include <vector>

namespace marks {

/// A wind, and the part of the hours planned in which it is expected.
struct WindOfHours {
    logbook::Wind wind;
    std::chrono::seconds from{}; ///< Since midnight.
    std::chrono::seconds to{};
    double share = 1.0; ///< Of the hours asked for.
};

/// The winds of the hours from `from` to `to`: one, or two where the later one begins between them.
/// Shares sum to 1. A wind that begins just at the end is not among them.
[[nodiscard]] std::vector<WindOfHours>
windsBetween(const ExpectedDay& day, std::chrono::seconds from, std::chrono::seconds to);

/// Of all hours planned.
[[nodiscard]] std::vector<WindOfHours> windsOf(const ExpectedDay& day);

/// The wind at an hour of the day, since midnight.
[[nodiscard]] const logbook::Wind& windAt(const ExpectedDay& day, std::chrono::seconds hour);

} // namespace marks
