// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <vector>

namespace sections {

/// How much of an earlier water lies in a new one.
struct SharedWater {
    int now = 0;        ///< Position among the new ones.
    int earlier = 0;    ///< Position among the earlier ones.
    double worth = 0.0; ///< Above 0.
};

/// Pairs new waters with earlier ones, each at most once, so that the worth of all pairs together
/// is the greatest there is (the assignment problem, by longest alternating paths). Of equal ways
/// the one that comes first in the order of `shared`.
/// \return the earlier water of each new one; negative for none.
[[nodiscard]] std::vector<int> matchWaters(std::span<const SharedWater> shared, int nowCount,
                                           int earlierCount);

} // namespace sections
