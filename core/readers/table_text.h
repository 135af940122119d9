// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/moment.h"

#include <optional>
#include <string_view>
#include <vector>

namespace readers {

/// Cuts a row at its separators; quotes around a cell are taken off, blanks too. With a blank as
/// separator several count as one. Cells are views into `line`.
void splitRow(std::string_view line, char separator, std::vector<std::string_view>& cells);

/// Degrees of "53.5020", "-8.09", "53 30 7.4 N", "N53° 30.123'", "53°30'07.4\"S"; minutes and
/// seconds below 60. Nothing where the text is none of these.
[[nodiscard]] std::optional<double> angleFrom(std::string_view text, char decimalMark);

/// In which order a date names day and month.
enum class DateOrder { yearFirst, dayFirst, monthFirst };

/// "2026-09-05", "2026/9/5", "20260905", "05.09.2026", "09/05/2026".
[[nodiscard]] std::optional<units::Day> dateFrom(std::string_view text, DateOrder order);

/// The order that fits all of these dates; day first where both would; nothing where none does.
[[nodiscard]] std::optional<DateOrder> dateOrderOf(const std::vector<std::string_view>& dates);

/// Date and time of day in one text, in any of the orders, or seconds (10 digits) or milliseconds
/// (13 digits) since 1970 UTC. `clock` says what a time without zone means.
[[nodiscard]] std::optional<units::Moment> dateAndTimeFrom(std::string_view text, DateOrder order,
                                                           const units::Clock& clock);

} // namespace readers
