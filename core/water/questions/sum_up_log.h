// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/rates/row_comparison.h"
#include "core/rates/saying.h"

#include <optional>
#include <string_view>
#include <vector>

namespace water {

/// What a table of the log comes to, three to five things, what matters most first. Rows of what
/// nobody noted, or of no place, are never named. \param hours of the same question; nothing leaves
/// them out.
[[nodiscard]] std::vector<rates::Saying> sumUpLog(const rates::RateTable& table,
                                                  const std::optional<rates::HourRates>& hours);

/// Two rows of a table, by name (any case). \return wrongUse where a name is none of the table's,
/// or both are one; unusableInput where either was not fished.
[[nodiscard]] base::Result<rates::RowComparison>
compareRows(const rates::RateTable& table, std::string_view first, std::string_view second);

} // namespace water
