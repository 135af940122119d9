// SPDX-License-Identifier: GPL-3.0-or-later
#include "sample-survey/text.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <chrono>
#include <fstream>
#include <stdexcept>

namespace sample {

std::string fixed(double value, int decimals) {
    std::array<char, 64> buffer{};
    const auto done = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value,
                                    std::chars_format::fixed, decimals);
    std::string text(buffer.data(), done.ptr);
    if (text.front() == '-' && text.find_first_not_of("-0.") == std::string::npos) {
        text.erase(0, 1);
    }
    return text;
}

std::string withComma(const std::string& number) {
    std::string text = number;
    std::replace(text.begin(), text.end(), '.', ',');
    return text;
}

std::string padded(std::int64_t value, int width) {
    std::string text = std::to_string(value);
    if (text.size() < static_cast<std::size_t>(width)) {
        text.insert(0, static_cast<std::size_t>(width) - text.size(), '0');
    }
    return text;
}

std::string lonLatCells(Point p) {
    const LonLat place = toLonLat(p);
    return fixed(place.lon_deg, 7) + "," + fixed(place.lat_deg, 7);
}

std::string lonLatKeys(Point p) {
    const LonLat place = toLonLat(p);
    return "\"lon\": " + fixed(place.lon_deg, 7) + ", \"lat\": " + fixed(place.lat_deg, 7);
}

std::string ringText(const Line& ring) {
    std::string text = "[";
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const LonLat place = toLonLat(ring[i]);
        text += i == 0 ? "[" : (i % 4 == 0 ? ",\n[" : ", [");
        text += fixed(place.lon_deg, 7) + ", " + fixed(place.lat_deg, 7) + "]";
    }
    return text + "]";
}

std::string listText(const std::vector<std::string>& items, const std::string& indent) {
    std::string text = "[";
    for (std::size_t i = 0; i < items.size(); ++i) {
        text += (i == 0 ? "\n" : ",\n") + indent + "  " + items[i];
    }
    return text + "\n" + indent + "]";
}

Civil civil(std::int64_t seconds) {
    using namespace std::chrono;
    const sys_seconds moment{std::chrono::seconds{seconds}};
    const sys_days date = floor<days>(moment);
    const year_month_day ymd{date};
    const hh_mm_ss clock{moment - date};
    return {static_cast<int>(ymd.year()),
            static_cast<int>(static_cast<unsigned>(ymd.month())),
            static_cast<int>(static_cast<unsigned>(ymd.day())),
            static_cast<int>(clock.hours().count()),
            static_cast<int>(clock.minutes().count()),
            static_cast<int>(clock.seconds().count()),
            static_cast<int>(weekday{date}.c_encoding())};
}

std::int64_t secondsOf(int year, int month, int day, int hour, int minute) {
    using namespace std::chrono;
    const sys_days date{std::chrono::year{year} / month / day};
    return static_cast<std::int64_t>(date.time_since_epoch().count()) * day_s + hour * hour_s +
           minute * minute_s;
}

std::int64_t britishOffset_s(std::int64_t utc_s) {
    const auto lastSunday = [](int year, int month) {
        int day = 31;
        while (civil(secondsOf(year, month, day, 12, 0)).weekday != 0) {
            --day;
        }
        return secondsOf(year, month, day, 1, 0);
    };
    const int year = civil(utc_s).year;
    return utc_s >= lastSunday(year, 3) && utc_s < lastSunday(year, 10) ? 3600 : 0;
}

namespace {

std::string isoWithoutZone(std::int64_t seconds) {
    const Civil c = civil(seconds);
    return padded(c.year, 4) + "-" + padded(c.month, 2) + "-" + padded(c.day, 2) + "T" +
           padded(c.hour, 2) + ":" + padded(c.minute, 2) + ":" + padded(c.second, 2);
}

} // namespace

std::string isoUtc(std::int64_t utc_s) {
    return isoWithoutZone(utc_s) + "Z";
}

std::string isoBritish(std::int64_t utc_s) {
    const std::int64_t offset_s = britishOffset_s(utc_s);
    return isoWithoutZone(utc_s + offset_s) + (offset_s == 0 ? "+00:00" : "+01:00");
}

void writeFile(const std::string& path, const std::string& text) {
    std::ofstream file(path, std::ios::binary | std::ios::trunc);
    file << text;
    file.close();
    if (!file) {
        throw std::runtime_error("cannot write " + path);
    }
}

} // namespace sample
