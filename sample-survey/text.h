// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sample-survey/plane.h"

#include <cstdint>
#include <string>
#include <vector>

namespace sample {

/// A number with so many decimals, the same in every locale; never "-0".
std::string fixed(double value, int decimals);
/// The same with a decimal comma.
std::string withComma(const std::string& number);
/// Whole number filled with zeros to a width.
std::string padded(std::int64_t value, int width);

/// "lon,lat" with seven decimals, for tables.
std::string lonLatCells(Point p);
/// "\"lon\": ..., \"lat\": ...", for JSON objects.
std::string lonLatKeys(Point p);
/// "[[lon, lat], ...]", a GeoJSON ring.
std::string ringText(const Line& ring);
/// Items set one under the other between the brackets of a JSON array.
std::string listText(const std::vector<std::string>& items, const std::string& indent);

inline constexpr std::int64_t minute_s = 60;
inline constexpr std::int64_t hour_s = 3600;
inline constexpr std::int64_t day_s = 86400;

/// Broken-down moment.
struct Civil {
    int year = 0;
    int month = 0;
    int day = 0;
    int hour = 0;
    int minute = 0;
    int second = 0;
    int weekday = 0; ///< 0 is Sunday
};

Civil civil(std::int64_t seconds);
std::int64_t secondsOf(int year, int month, int day, int hour, int minute);
/// Offset of British time from UTC: an hour between 01:00 UTC on the last Sundays of March and
/// October, else none.
std::int64_t britishOffset_s(std::int64_t utc_s);
/// 2026-09-05T08:10:00Z
std::string isoUtc(std::int64_t utc_s);
/// 2026-09-05T09:10:00+01:00
std::string isoBritish(std::int64_t utc_s);

/// Writes a whole file; throws std::runtime_error if that fails.
void writeFile(const std::string& path, const std::string& text);

} // namespace sample
