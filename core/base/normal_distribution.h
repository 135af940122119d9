// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>
#include <numbers>

namespace base {

/// Half of the width that holds 95 of 100 of a normal distribution, in standard deviations.
inline constexpr double normal95 = 1.959963984540054;

/// The share of a normal distribution that lies below `z` standard deviations from its middle.
[[nodiscard]] inline double normalBelow(double z) {
    return 0.5 * std::erfc(-z / std::numbers::sqrt2);
}

} // namespace base
