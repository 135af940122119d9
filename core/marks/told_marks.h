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
};

} // namespace marks
