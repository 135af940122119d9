// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/nmea_sentence.h"

#include "core/base/number_text.h"

#include <algorithm>
#include <cmath>

namespace readers {

namespace {

int hexDigit(char c) {
    if (c >= '0' && c <= '9') {
        return c - '0';
    }
    if (c >= 'A' && c <= 'F') {
        return c - 'A' + 10;
    }
    return c >= 'a' && c <= 'f' ? c - 'a' + 10 : -1;
}

bool isCapital(char c) {
    return c >= 'A' && c <= 'Z';
}

NmeaSentence::Sum sumOf(std::string_view body, std::string_view behindStar) {
    const int high = behindStar.empty() ? -1 : hexDigit(behindStar[0]);
    const int low = behindStar.size() < 2 ? -1 : hexDigit(behindStar[1]);
    const bool isRight = high >= 0 && low >= 0 && high * 16 + low == nmeaChecksum(body);
    return isRight ? NmeaSentence::Sum::right : NmeaSentence::Sum::wrong;
}

/// Length of the TAG block at the front of a text, "\\s:r1,c:1788594120*5D\\"; 0 where there is
/// none.
std::size_t tagLength(std::string_view text) {
    constexpr std::size_t longest = 160; // The standard's 80 characters, and room for the careless.
    const std::size_t end = text.substr(0, longest).find('\\', 1);
    if (text.size() < 4 || text[0] != '\\' || text[2] != ':' || end == std::string_view::npos) {
        return 0;
    }
    const auto isPlain = [](char c) { return c >= ' ' && c <= '~'; };
    return std::ranges::all_of(text.substr(0, end), isPlain) ? end + 1 : 0;
}

} // namespace

std::string_view nextSentence(std::string_view& rest) {
    std::size_t at = 0;
    while (at < rest.size() && rest[at] != '$') {
        at += rest[at] == '\\' ? std::max<std::size_t>(tagLength(rest.substr(at)), 1) : 1;
    }
    rest.remove_prefix(std::min(at, rest.size()));
    std::size_t end = std::min<std::size_t>(1, rest.size());
    while (end < rest.size() && rest[end] != '$' && rest[end] != '!' && rest[end] != '\\') {
        ++end;
    }
    const std::string_view sentence = rest.substr(0, end);
    rest.remove_prefix(sentence.size());
    return sentence;
}

std::uint8_t nmeaChecksum(std::string_view body) {
    std::uint8_t sum = 0;
    for (const char c : body) {
        sum = static_cast<std::uint8_t>(sum ^ static_cast<unsigned char>(c));
    }
    return sum;
}

std::optional<double> NmeaSentence::number(std::size_t fieldNumber) const {
    return base::numberFrom(field(fieldNumber));
}

std::optional<double> NmeaSentence::angle_deg(std::size_t fieldNumber) const {
    const auto value = number(fieldNumber);
    const std::string_view side = field(fieldNumber + 1);
    if (!value || *value < 0.0 || side.size() != 1) {
        return std::nullopt;
    }
    const double degrees = std::floor(*value / 100.0);
    const double minutes = *value - 100.0 * degrees;
    const double angle_deg = degrees + minutes / 60.0;
    const bool isLatitude = side == "N" || side == "S";
    const bool isLongitude = side == "E" || side == "W";
    if (minutes >= 60.0 || !(isLatitude || isLongitude) ||
        angle_deg > (isLatitude ? 90.0 : 180.0)) {
        return std::nullopt;
    }
    return side == "S" || side == "W" ? -angle_deg : angle_deg;
}

std::optional<double> NmeaSentence::timeOfDay_s(std::size_t fieldNumber) const {
    const auto value = number(fieldNumber);
    if (!value || *value < 0.0 || *value >= 240000.0 || field(fieldNumber).size() < 6) {
        return std::nullopt;
    }
    const double hours = std::floor(*value / 1e4);
    const double minutes = std::floor(*value / 1e2) - 1e2 * hours;
    const double seconds = *value - 1e4 * hours - 1e2 * minutes;
    if (minutes >= 60.0 || seconds >= 61.0) {
        return std::nullopt;
    }
    return 3600.0 * hours + 60.0 * minutes + seconds;
}

bool takeApart(std::string_view text, NmeaSentence& sentence) {
    sentence.fields.clear();
    sentence.whole = text;
    sentence.sum = NmeaSentence::Sum::absent;
    if (text.size() < 6 || text[0] != '$') {
        return false;
    }
    const std::size_t star = text.find('*');
    const std::string_view body = text.substr(1, star == std::string_view::npos ? star : star - 1);
    if (star != std::string_view::npos) {
        sentence.sum = sumOf(body, text.substr(star + 1));
    }
    const std::size_t comma = body.find(',');
    const std::string_view address = body.substr(0, comma);
    const bool isOwn = !address.empty() && address[0] == 'P';
    const auto isTalker = [](char c) { return isCapital(c) || (c >= '0' && c <= '9'); };
    if (!isOwn && (address.size() != 5 || !std::ranges::all_of(address.substr(0, 2), isTalker) ||
                   !std::ranges::all_of(address.substr(2), isCapital))) {
        return false;
    }
    sentence.talker = isOwn ? std::string_view{} : address.substr(0, 2);
    sentence.type = isOwn ? address : address.substr(2);
    std::size_t at = comma;
    while (at != std::string_view::npos) {
        const std::size_t end = body.find(',', at + 1);
        sentence.fields.push_back(
            body.substr(at + 1, end == std::string_view::npos ? end : end - at - 1));
        at = end;
    }
    return true;
}

} // namespace readers
