// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <cmath>
#include <vector>

namespace reduction {

/// 1 / (0.75 quantile of the normal distribution): makes the MAD a standard deviation.
inline constexpr double madToSigma = 1.4826022185056018;

/// The middle value, the mean of the two middle ones for an even number. At least one value.
[[nodiscard]] inline double medianOf(std::vector<double> values) {
    const auto half = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), half, values.end());
    if (values.size() % 2 == 1) {
        return *half;
    }
    return 0.5 * (*half + *std::max_element(values.begin(), half));
}

/// The standard deviation that the median absolute deviation from `middle` stands for.
[[nodiscard]] inline double robustSigma(std::vector<double> values, double middle) {
    for (double& value : values) {
        value = std::fabs(value - middle);
    }
    return madToSigma * medianOf(std::move(values));
}

} // namespace reduction
