// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

namespace rates {

/// The rate of one row over that of another, with what may be made of it. The scatter of days is
/// allowed for.
struct RowComparison {
    std::string first;
    std::string second;
    std::optional<double> ratio; ///< Nothing where the second brought no fish.
    double low = 0.0;            ///< 95 %.
    std::optional<double> high;  ///< Nothing where there is no upper limit.
    double p = 1.0;              ///< Chance of a difference at least as large if there were none.
    [[nodiscard]] bool isBeyondChance() const { return p < 0.05; }
    friend bool operator==(const RowComparison&, const RowComparison&) = default;
};

} // namespace rates
