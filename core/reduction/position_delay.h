// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>

namespace reduction {

/// How much later the position of a survey day is than its depth, as its crossings tell.
struct PositionDelay {
    bool isKnown = false; ///< False: too few crossings, no times, or too flat a bottom.
    /// Positive: a position was true that long before the depth that it stands with.
    double delay_s = 0.0;
    double error_s = 0.0;      ///< Standard error.
    std::size_t crossings = 0; ///< That tell something of it.
    double rmsBefore_m = 0.0;  ///< Robust (1.4826 MAD) difference at these crossings as they are,
    double rmsAfter_m = 0.0;   ///< and with all delays that are known taken out.

    /// Known, more than chance, and long enough to move a sounding by a boat's beam.
    [[nodiscard]] bool isWorthTaking() const {
        constexpr double least_s = 0.2;
        const double size_s = delay_s < 0.0 ? -delay_s : delay_s;
        return isKnown && size_s >= least_s && size_s >= 3.0 * error_s;
    }
};

} // namespace reduction
