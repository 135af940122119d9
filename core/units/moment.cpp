// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/moment.h"

#include "core/base/number_text.h"

#include <cctype>
#include <cmath>

#include <date/tz.h>
#include <fmt/format.h>

namespace units {

using std::chrono::days;
using std::chrono::milliseconds;
using std::chrono::minutes;
using std::chrono::seconds;
using std::chrono::sys_days;

namespace {

const date::time_zone* zoneNamed(std::string_view name) {
    try {
        return date::locate_zone(std::string(name));
    } catch (const std::exception&) {
        return nullptr;
    }
}

/// Reads exactly `digits` digits at `at` and moves on.
std::optional<int> digitsAt(std::string_view text, std::size_t& at, std::size_t digits) {
    if (text.size() < at + digits) {
        return std::nullopt;
    }
    int value = 0;
    for (std::size_t i = 0; i < digits; ++i) {
        const char c = text[at + i];
        if (c < '0' || c > '9') {
            return std::nullopt;
        }
        value = value * 10 + (c - '0');
    }
    at += digits;
    return value;
}

bool takes(std::string_view text, std::size_t& at, char wanted) {
    if (at < text.size() && text[at] == wanted) {
        ++at;
        return true;
    }
    return false;
}

/// A fraction of a second behind '.' or ',' in milliseconds, rounded; nothing where no digit
/// follows.
std::optional<milliseconds> fractionAt(std::string_view text, std::size_t& at) {
    double share = 0.0;
    double weight = 0.1;
    const std::size_t first = at;
    while (at < text.size() && std::isdigit(static_cast<unsigned char>(text[at])) != 0) {
        share += weight * (text[at] - '0');
        weight /= 10.0;
        ++at;
    }
    if (at == first) {
        return std::nullopt;
    }
    return milliseconds(std::lround(share * 1000.0));
}

/// "hh:mm[:ss[.fff]]" at `at`, since midnight.
std::optional<milliseconds> clockTimeAt(std::string_view text, std::size_t& at) {
    const auto hour = digitsAt(text, at, 2);
    if (!hour || !takes(text, at, ':')) {
        return std::nullopt;
    }
    const auto minute = digitsAt(text, at, 2);
    if (!minute || *hour > 23 || *minute > 59) {
        return std::nullopt;
    }
    milliseconds since = std::chrono::hours(*hour) + minutes(*minute);
    if (takes(text, at, ':')) {
        const auto second = digitsAt(text, at, 2);
        if (!second || *second > 60) {
            return std::nullopt;
        }
        since += seconds(*second);
        if (takes(text, at, '.') || takes(text, at, ',')) {
            const auto fraction = fractionAt(text, at);
            if (!fraction) {
                return std::nullopt;
            }
            since += *fraction;
        }
    }
    return since;
}

/// "+hh:mm", "-hhmm", "+hh" at `at`.
std::optional<seconds> offsetTextAt(std::string_view text, std::size_t& at) {
    const int sign = text[at] == '-' ? -1 : 1;
    ++at;
    const auto hour = digitsAt(text, at, 2);
    if (!hour) {
        return std::nullopt;
    }
    int minute = 0;
    if (takes(text, at, ':') || at < text.size()) {
        const auto read = digitsAt(text, at, 2);
        if (!read) {
            return std::nullopt;
        }
        minute = *read;
    }
    return sign * (std::chrono::hours(*hour) + minutes(minute));
}

std::optional<Day> dayAt(std::string_view text, std::size_t& at) {
    const auto year = digitsAt(text, at, 4);
    if (!year || !takes(text, at, '-')) {
        return std::nullopt;
    }
    const auto month = digitsAt(text, at, 2);
    if (!month || !takes(text, at, '-')) {
        return std::nullopt;
    }
    const auto day = digitsAt(text, at, 2);
    if (!day) {
        return std::nullopt;
    }
    const Day read{std::chrono::year(*year), std::chrono::month(static_cast<unsigned>(*month)),
                   std::chrono::day(static_cast<unsigned>(*day))};
    return read.ok() ? std::optional(read) : std::nullopt;
}

date::sys_time<milliseconds> foreign(Moment moment) {
    return date::sys_time<milliseconds>(moment.time_since_epoch());
}

} // namespace

base::Result<Clock> Clock::inZone(std::string_view ianaName) {
    if (zoneNamed(ianaName) == nullptr) {
        return base::fail(base::ErrorKind::wrongUse,
                          fmt::format("there is no time zone '{}'", ianaName), "",
                          "name an IANA zone such as Europe/London");
    }
    Clock clock;
    clock.zone_ = std::string(ianaName);
    return clock;
}

seconds Clock::offsetAt(Moment moment) const {
    const auto* zone = zoneNamed(zone_);
    return zone == nullptr ? seconds(0) : zone->get_info(foreign(moment)).offset;
}

Day Clock::dayOf(Moment moment) const {
    return Day(std::chrono::floor<days>(moment + offsetAt(moment)));
}

double Clock::hourOfDay(Moment moment) const {
    const Moment local = moment + offsetAt(moment);
    const auto since = local - std::chrono::floor<days>(local);
    return std::chrono::duration<double, std::ratio<3600>>(since).count();
}

Moment Clock::at(Day day, seconds sinceMidnight) const {
    const auto* zone = zoneNamed(zone_);
    const auto local = sys_days(day) + sinceMidnight;
    if (zone == nullptr) {
        return local;
    }
    const date::local_time<seconds> asked(local.time_since_epoch());
    const auto info = zone->get_info(asked);
    if (info.result == date::local_info::nonexistent) {
        return Moment(
            std::chrono::duration_cast<milliseconds>(info.second.begin.time_since_epoch()));
    }
    return Moment(
        std::chrono::duration_cast<milliseconds>(asked.time_since_epoch() - info.first.offset));
}

std::string isoText(Day day) {
    return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(day.year()),
                       static_cast<unsigned>(day.month()), static_cast<unsigned>(day.day()));
}

namespace {

std::string dateAndTime(Moment wall) {
    const auto midnight = std::chrono::floor<days>(wall);
    const std::chrono::hh_mm_ss time(wall - midnight);
    std::string text =
        fmt::format("{}T{:02}:{:02}:{:02}", isoText(Day(midnight)), time.hours().count(),
                    time.minutes().count(), time.seconds().count());
    if (time.subseconds().count() != 0) {
        text += fmt::format(".{:03}", time.subseconds().count());
    }
    return text;
}

} // namespace

std::string isoText(Moment moment) {
    return dateAndTime(moment) + "Z";
}

std::string isoLocalText(Moment moment, const Clock& clock) {
    const auto offset = clock.offsetAt(moment);
    const auto size = std::chrono::abs(offset);
    const auto hour = std::chrono::duration_cast<std::chrono::hours>(size);
    const auto minute = std::chrono::duration_cast<minutes>(size - hour);
    return fmt::format("{}{}{:02}:{:02}", dateAndTime(moment + offset),
                       offset < seconds(0) ? '-' : '+', hour.count(), minute.count());
}

std::string timeOfDayText(Moment moment, const Clock& clock) {
    const auto local = std::chrono::round<minutes>(moment + clock.offsetAt(moment));
    const std::chrono::hh_mm_ss time(local - std::chrono::floor<days>(local));
    return fmt::format("{:02}:{:02}", time.hours().count(), time.minutes().count());
}

std::optional<Moment> momentFrom(std::string_view text, const Clock& clock) {
    text = base::trimmed(text);
    std::size_t at = 0;
    const auto day = dayAt(text, at);
    if (!day || !(takes(text, at, 'T') || takes(text, at, 't') || takes(text, at, ' '))) {
        return std::nullopt;
    }
    const auto since = clockTimeAt(text, at);
    if (!since) {
        return std::nullopt;
    }
    if (at == text.size()) {
        const auto whole = std::chrono::floor<seconds>(*since);
        return clock.at(*day, whole) + (*since - whole);
    }
    const Moment wall = sys_days(*day) + *since;
    if (takes(text, at, 'Z') || takes(text, at, 'z')) {
        return at == text.size() ? std::optional(wall) : std::nullopt;
    }
    if (text[at] != '+' && text[at] != '-') {
        return std::nullopt;
    }
    const auto offset = offsetTextAt(text, at);
    return offset && at == text.size() ? std::optional(wall - *offset) : std::nullopt;
}

std::optional<Day> dayFrom(std::string_view text) {
    text = base::trimmed(text);
    std::size_t at = 0;
    const auto day = dayAt(text, at);
    return at == text.size() ? day : std::nullopt;
}

std::optional<seconds> timeOfDayFrom(std::string_view text) {
    std::string padded(base::trimmed(text));
    if (padded.size() > 1 && padded[1] == ':') {
        padded.insert(padded.begin(), '0');
    }
    std::size_t at = 0;
    const auto since = clockTimeAt(padded, at);
    if (!since || at != padded.size()) {
        return std::nullopt;
    }
    return std::chrono::floor<seconds>(*since);
}

} // namespace units
