// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/length.h"

#include <cstddef>

namespace reduction {

/// By how much two survey days disagree where their passes cross: more than chance would have it.
struct DayDifference {
    std::size_t dayA = 0; ///< Positions in the water's days.
    std::size_t dayB = 0;
    units::Length difference; ///< How much deeper day B is; median over their crossings.
    std::size_t crossings = 0;
    friend bool operator==(const DayDifference&, const DayDifference&) = default;
};

} // namespace reduction
