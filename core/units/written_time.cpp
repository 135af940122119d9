// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/written_time.h"

#include "core/base/number_text.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <initializer_list>
#include <string>

namespace units {

namespace {

using std::chrono::hours;
using std::chrono::minutes;
using std::chrono::seconds;

bool isDigits(std::string_view text) {
    return !text.empty() && std::ranges::all_of(text, [](char c) { return c >= '0' && c <= '9'; });
}

/// Of one or two digits; nothing for anything else.
std::optional<int> shortNumber(std::string_view text) {
    if (!isDigits(text) || text.size() > 2) {
        return std::nullopt;
    }
    return static_cast<int>(*base::wholeNumberFrom(text));
}

/// "am" or "pm" cut off the end; 'a', 'p' or nothing.
std::optional<char> halfOfDay(std::string& text) {
    if (text.size() > 2 && text.back() == 'm' &&
        (text[text.size() - 2] == 'a' || text[text.size() - 2] == 'p')) {
        const char half = text[text.size() - 2];
        text.resize(text.size() - 2);
        text = std::string(base::trimmed(text));
        return half;
    }
    return std::nullopt;
}

/// Hour and minute as they stand: "7.40", "7:40", "0740", "740", and "5" where `hourAlone`.
std::optional<std::pair<int, int>> hourAndMinute(std::string_view text, bool hourAlone) {
    if ((text.size() == 4 || text.size() == 3) && isDigits(text)) {
        const std::size_t hourDigits = text.size() - 2;
        return std::pair(*shortNumber(text.substr(0, hourDigits)),
                         *shortNumber(text.substr(hourDigits)));
    }
    const std::size_t mark = text.find_first_of(":.");
    if (mark == std::string_view::npos) {
        const auto hour = shortNumber(text);
        return hour && hourAlone ? std::optional(std::pair(*hour, 0)) : std::nullopt;
    }
    const auto hour = shortNumber(text.substr(0, mark));
    const auto minute = shortNumber(text.substr(mark + 1));
    return hour && minute && text.size() == mark + 3 ? std::optional(std::pair(*hour, *minute))
                                                     : std::nullopt;
}

/// Which of the words for it the text ends in, cut off; false where in none.
bool cutOff(std::string& text, std::initializer_list<std::string_view> words) {
    for (const std::string_view word : words) {
        if (text.ends_with(word)) {
            text.resize(text.size() - word.size());
            text = std::string(base::trimmed(text));
            return true;
        }
    }
    return false;
}

/// "1 h 30", "1 h 30 min", "90 min", "1.5 h", "1.5": hours and minutes.
std::optional<std::pair<double, double>> hoursAndMinutes(std::string text) {
    const std::size_t h = text.find('h');
    if (cutOff(text, {"minutes", "mins", "min"}) && h == std::string::npos) {
        const auto minute = base::numberFrom(text);
        return minute && *minute >= 0.0 ? std::optional(std::pair(0.0, *minute)) : std::nullopt;
    }
    std::string after = h == std::string::npos ? "" : text.substr(h);
    for (const std::string_view word : {"hours", "hour", "hrs", "hr", "h"}) {
        if (after.starts_with(word)) {
            after = std::string(base::trimmed(after.substr(word.size())));
            break;
        }
    }
    const auto hour = base::numberFrom(base::trimmed(text.substr(0, h)));
    const auto minute = after.empty() ? std::optional(0) : shortNumber(after);
    if (!hour || *hour < 0.0 || !minute || *minute > 59) {
        return std::nullopt;
    }
    return std::pair(*hour, static_cast<double>(*minute));
}

} // namespace

std::optional<seconds> timeWritten(std::string_view text) {
    if (const auto plain = timeOfDayFrom(text)) {
        return plain;
    }
    std::string lower = base::lowerCase(base::trimmed(text));
    const auto half = halfOfDay(lower);
    const auto read = hourAndMinute(lower, half.has_value());
    if (!read || read->second > 59) {
        return std::nullopt;
    }
    int hour = read->first;
    if (half) {
        if (hour < 1 || hour > 12) {
            return std::nullopt;
        }
        hour = hour % 12 + (*half == 'p' ? 12 : 0);
    }
    return hour <= 23 ? std::optional<seconds>(hours(hour) + minutes(read->second)) : std::nullopt;
}

std::optional<seconds> spanWritten(std::string_view text) {
    std::string lower = base::lowerCase(base::trimmed(text));
    std::ranges::replace(lower, ',', '.');
    double hours = 0.0;
    const std::size_t colon = lower.find(':');
    if (colon != std::string::npos) {
        const auto whole = shortNumber(lower.substr(0, colon));
        const auto minute = shortNumber(lower.substr(colon + 1));
        if (!whole || !minute || *minute > 59 || lower.size() != colon + 3) {
            return std::nullopt;
        }
        hours = *whole + *minute / 60.0;
    } else {
        const auto parts = hoursAndMinutes(lower);
        if (!parts) {
            return std::nullopt;
        }
        hours = parts->first + parts->second / 60.0;
    }
    const auto span = seconds(std::llround(hours * 3600.0));
    return span > seconds(0) && span <= std::chrono::hours(24) ? std::optional(span) : std::nullopt;
}

std::optional<Day> dayWritten(std::string_view text) {
    text = base::trimmed(text);
    if (const auto iso = dayFrom(text)) {
        return iso;
    }
    const std::size_t first = text.find_first_of("/.");
    if (first == std::string_view::npos) {
        return std::nullopt;
    }
    const std::size_t second = text.find(text[first], first + 1);
    if (second == std::string_view::npos) {
        return std::nullopt;
    }
    const auto day = shortNumber(text.substr(0, first));
    const auto month = shortNumber(text.substr(first + 1, second - first - 1));
    const std::string_view year = text.substr(second + 1);
    if (!day || !month || !isDigits(year) || (year.size() != 2 && year.size() != 4)) {
        return std::nullopt;
    }
    const int whole =
        static_cast<int>(*base::wholeNumberFrom(year)) + (year.size() == 2 ? 2000 : 0);
    const Day read{std::chrono::year(whole), std::chrono::month(static_cast<unsigned>(*month)),
                   std::chrono::day(static_cast<unsigned>(*day))};
    return read.ok() ? std::optional(read) : std::nullopt;
}

std::optional<Moment> momentWritten(std::string_view text, Moment near, const Clock& clock) {
    text = base::trimmed(text);
    if (const auto moment = momentFrom(text, clock)) {
        return moment;
    }
    if (const auto time = timeWritten(text)) {
        return clock.at(clock.dayOf(near), *time);
    }
    const std::size_t blank = text.find(' ');
    if (blank == std::string_view::npos) {
        return std::nullopt;
    }
    const auto day = dayWritten(text.substr(0, blank));
    const auto time = timeWritten(text.substr(blank + 1));
    return day && time ? std::optional(clock.at(*day, *time)) : std::nullopt;
}

} // namespace units
