// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/stays_about.h"

#include <algorithm>

namespace logbook {

Positions staysAbout(const KeptLog& log, units::Moment start, units::Moment end) {
    const Positions all(0, log.size());
    const auto first = std::ranges::partition_point(
        all, [&](std::size_t i) { return log[i].start < start - longestStay; });
    const auto last = std::ranges::partition_point(
        first, all.end(), [&](std::size_t i) { return log[i].start <= end; });
    return {*first, *last};
}

} // namespace logbook
