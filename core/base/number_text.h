// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace base {

/// The number that the whole of `text` spells, blanks at both ends allowed; nothing where it spells
/// none. Never depends on the locale. Takes "nan" and "inf" for no number: no field of ours means
/// them. \param decimalMark '.' or ','.
[[nodiscard]] std::optional<double> numberFrom(std::string_view text, char decimalMark = '.');

/// The whole number that the whole of `text` spells, blanks at both ends allowed.
[[nodiscard]] std::optional<std::int64_t> wholeNumberFrom(std::string_view text);

/// `value` with exactly `decimals` digits behind the point, never "-0".
[[nodiscard]] std::string fixedText(double value, int decimals);

/// The shortest text that reads back as the same double.
[[nodiscard]] std::string exactText(double value);

/// `text` without blanks at both ends.
[[nodiscard]] std::string_view trimmed(std::string_view text);

/// `text` in lower case, ASCII letters only.
[[nodiscard]] std::string lowerCase(std::string_view text);

} // namespace base
