// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>

namespace water {

/// One corner of a shoreline by its position.
struct ShoreCorner {
    std::size_t piece = 0;
    std::size_t ring = 0; ///< 0: the outer one; k: the k-th island.
    std::size_t corner = 0;
    friend bool operator==(const ShoreCorner&, const ShoreCorner&) = default;
};

} // namespace water
