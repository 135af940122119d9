// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

namespace units {

/// An instant, to the millisecond, UTC.
using Moment = std::chrono::sys_time<std::chrono::milliseconds>;

/// A calendar day at the water.
using Day = std::chrono::year_month_day;

/// The clock at the water: an IANA time zone such as "Europe/London".
class Clock {
public:
    /// UTC.
    Clock() = default;
    /// \return wrongUse where the machine's time zone data knows no such zone.
    [[nodiscard]] static base::Result<Clock> inZone(std::string_view ianaName);

    [[nodiscard]] const std::string& zone() const { return zone_; }
    /// Hours to add to UTC at that instant.
    [[nodiscard]] std::chrono::seconds offsetAt(Moment moment) const;
    [[nodiscard]] Day dayOf(Moment moment) const;
    /// Local time of day in hours, 0 <= h < 24.
    [[nodiscard]] double hourOfDay(Moment moment) const;
    /// The instant of a local time of day; the earlier one where the clocks go back, the instant of
    /// the jump where they go forward.
    [[nodiscard]] Moment at(Day day, std::chrono::seconds sinceMidnight) const;
    friend bool operator==(const Clock&, const Clock&) = default;

private:
    std::string zone_ = "Etc/UTC";
};

/// "2026-10-03T08:10:00Z", with ".250" where there are milliseconds.
[[nodiscard]] std::string isoText(Moment moment);
/// "2026-10-03T08:10:00+01:00" by the water's clock.
[[nodiscard]] std::string isoLocalText(Moment moment, const Clock& clock);
/// "2026-10-03".
[[nodiscard]] std::string isoText(Day day);
/// "08:10" by the water's clock.
[[nodiscard]] std::string timeOfDayText(Moment moment, const Clock& clock);

/// ISO 8601 / RFC 3339 date and time; 'T' or a blank between, seconds and fractions optional, 'Z',
/// an offset, or none, in which case `clock` says what it means. Nothing where the text is not one.
[[nodiscard]] std::optional<Moment> momentFrom(std::string_view text, const Clock& clock);
/// "2026-10-03".
[[nodiscard]] std::optional<Day> dayFrom(std::string_view text);
/// "8:10", "08:10", "08:10:30" as time since midnight, below 24 h.
[[nodiscard]] std::optional<std::chrono::seconds> timeOfDayFrom(std::string_view text);

} // namespace units
