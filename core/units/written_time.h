// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/moment.h"

#include <chrono>
#include <optional>
#include <string_view>

namespace units {

/// A time of the day as people write it: "7:40", "07:40:30", "7.40", "0740", "740", "5pm", "5.30
/// pm", "12 am" (midnight). Since midnight, below 24 h. Nothing where the text is no time; a bare
/// "17" is none, it may be anything. For typing: a column of numbers must not be taken for times,
/// so tables are read by timeOfDayFrom().
[[nodiscard]] std::optional<std::chrono::seconds> timeWritten(std::string_view text);

/// A span of time as people write it: "1:30", "1 h 30", "90 min", "1.5 h", "1,5"; a bare number
/// counts hours. Longer than nothing, up to 24 h. Nothing where the text is no span.
[[nodiscard]] std::optional<std::chrono::seconds> spanWritten(std::string_view text);

/// A day as people write it: "2026-11-25", or day, month, year with strokes or points, "25/11/26",
/// "25.11.2026" (years of two digits are of this century). Nothing where there is no such day: a
/// month before the day is not guessed.
[[nodiscard]] std::optional<Day> dayWritten(std::string_view text);

/// A day and a time ("25/11/26 7:40"), or a time alone on the day of `near`, by `clock`; also as
/// momentFrom().
[[nodiscard]] std::optional<Moment> momentWritten(std::string_view text, Moment near,
                                                  const Clock& clock);

} // namespace units
