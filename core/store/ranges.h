// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"

#include <optional>
#include <string_view>

namespace store {

/// What a number in a water file can be. Wide: what is unlikely is the user's own business; beyond
/// these a value is no depth, weight or wind of any water, and would send whoever works with it
/// round for ever.
struct Range {
    double low = 0.0;
    double high = 0.0;

    /// NaN is in no range.
    [[nodiscard]] bool holds(double value) const { return value >= low && value <= high; }
};

/// By the name of a column or key, which holds the unit; what has no range of its own is finite and
/// below 10^9 in size.
[[nodiscard]] Range rangeOf(std::string_view name);

/// A value on its way into the file: out of its range it fails the connection, so that nothing is
/// kept that could not be read again.
[[nodiscard]] double kept(Connection& connection, std::string_view name, double value);
[[nodiscard]] std::optional<double> kept(Connection& connection, std::string_view name,
                                         std::optional<double> value);

/// A value that was read: out of its range the file is damaged, and the value is 0.
[[nodiscard]] double withinRange(Connection& connection, std::string_view name, Range range,
                                 double value);

} // namespace store
