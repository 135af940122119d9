// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/nmea_fix.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <string_view>

namespace readers {

namespace {

/// Receivers give positions of some use below this horizontal dilution of precision.
constexpr double worstDilution = 10.0;

std::optional<std::int64_t> dayNumber(std::optional<double> year, std::optional<double> month,
                                      std::optional<double> day) {
    if (!year || !month || !day || *year < 0 || *year > 9999 || *month < 0 || *month > 99 ||
        *day < 0 || *day > 99) {
        return std::nullopt;
    }
    int whole = static_cast<int>(*year);
    if (whole < 100) {
        whole += whole < 80 ? 2000 : 1900;
    }
    const std::chrono::year_month_day date{std::chrono::year(whole),
                                           std::chrono::month(static_cast<unsigned>(*month)),
                                           std::chrono::day(static_cast<unsigned>(*day))};
    return date.ok()
               ? std::optional(std::int64_t{std::chrono::sys_days(date).time_since_epoch().count()})
               : std::nullopt;
}

/// The date of "ddmmyy" as days since 1970.
std::optional<std::int64_t> dayNumber(std::optional<double> ddmmyy) {
    if (!ddmmyy || *ddmmyy < 0.0 || *ddmmyy > 311299.0) {
        return std::nullopt;
    }
    const auto all = static_cast<int>(*ddmmyy);
    return dayNumber(all % 100, all / 100 % 100, all / 10000);
}

bool isValid(const NmeaSentence& s) {
    if (s.type == "GGA") {
        const double quality = s.number(6).value_or(0.0);
        const double dilution = s.number(8).value_or(1.0);
        // Estimated, typed in by hand, and simulated are no fixes.
        const bool isMeasured = quality >= 1.0 && !(quality >= 6.0 && quality <= 8.0);
        return isMeasured && dilution < worstDilution;
    }
    // GLL of old receivers has no state field at all.
    const std::string_view state = s.field(s.type == "GLL" ? 6 : 2);
    const std::string_view mode = s.field(s.type == "GLL" ? 7 : 12);
    // None, estimated, typed in by hand, simulated.
    constexpr std::array noFix{"N", "E", "M", "S"};
    return state != "V" && std::ranges::none_of(noFix, [mode](auto no) { return mode == no; });
}

} // namespace

std::optional<NmeaFix> nmeaFixIn(const NmeaSentence& s) {
    NmeaFix fix;
    if (s.type == "ZDA") {
        fix.timeOfDay_s = s.timeOfDay_s(1);
        fix.date = dayNumber(s.number(4), s.number(3), s.number(2));
        fix.isClockOnly = true;
        return fix;
    }
    if (s.type != "GGA" && s.type != "GLL" && s.type != "RMC") {
        return std::nullopt;
    }
    const std::size_t placeField = s.type == "GLL" ? 1 : s.type == "GGA" ? 2 : 3;
    fix.timeOfDay_s = s.timeOfDay_s(s.type == "GLL" ? 5 : 1);
    fix.date = s.type == "RMC" ? dayNumber(s.number(9)) : std::nullopt;
    fix.isValid = isValid(s);
    const auto lat_deg = s.angle_deg(placeField);
    const auto lon_deg = s.angle_deg(placeField + 2);
    if (lat_deg && lon_deg) {
        fix.place = geo::LonLat{*lon_deg, *lat_deg};
    }
    return fix;
}

} // namespace readers
