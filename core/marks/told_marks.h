// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/marks/mark.h"

#include <functional>
#include <span>
#include <string>
#include <vector>

namespace marks {

/// Marks to be written into a file that holds their reasons as text, and who puts them into words:
/// core has none. Without marks nobody is needed.
struct ToldMarks {
    std::span<const Mark> marks;
    std::function<std::string(const std::vector<Factor>&)> reasonsOf;
    /// What is to be minded at a mark, and how the boat lies there; the stop is null where there is
    /// no day. Absent: that is left out.
    std::function<std::string(const Mark&, const DayStop*)> lieOf = {};
};

} // namespace marks
