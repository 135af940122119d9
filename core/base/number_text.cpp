// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/number_text.h"

#include <array>
#include <charconv>
#include <cmath>

#include <fmt/format.h>

namespace base {

std::string_view trimmed(std::string_view text) {
    constexpr std::string_view blanks = " \t\r\n\f\v";
    const auto first = text.find_first_not_of(blanks);
    if (first == std::string_view::npos) {
        return {};
    }
    return text.substr(first, text.find_last_not_of(blanks) - first + 1);
}

std::string lowerCase(std::string_view text) {
    std::string out(text);
    for (char& c : out) {
        if (c >= 'A' && c <= 'Z') {
            c = static_cast<char>(c - 'A' + 'a');
        }
    }
    return out;
}

namespace {

/// from_chars knows no leading plus sign.
std::string_view withoutPlus(std::string_view text) {
    if (text.size() > 1 && text.front() == '+' && text[1] != '-' && text[1] != '+') {
        text.remove_prefix(1);
    }
    return text;
}

} // namespace

std::optional<double> numberFrom(std::string_view text, char decimalMark) {
    text = withoutPlus(trimmed(text));
    constexpr std::size_t longest = 64;
    if (text.empty() || text.size() > longest) {
        return std::nullopt;
    }
    std::array<char, longest> buffer{};
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        if (decimalMark != '.' && c == '.') {
            return std::nullopt;
        }
        buffer[i] = c == decimalMark ? '.' : c;
    }
    double value = 0.0;
    const char* end = buffer.data() + text.size();
    const auto [stop, fault] = std::from_chars(buffer.data(), end, value);
    if (fault != std::errc{} || stop != end || !std::isfinite(value)) {
        return std::nullopt;
    }
    return value;
}

std::optional<std::int64_t> wholeNumberFrom(std::string_view text) {
    text = withoutPlus(trimmed(text));
    std::int64_t value = 0;
    const auto [stop, fault] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (text.empty() || fault != std::errc{} || stop != text.data() + text.size()) {
        return std::nullopt;
    }
    return value;
}

std::string fixedText(double value, int decimals) {
    std::string text = fmt::format("{:.{}f}", value, decimals);
    const bool isMinusZero =
        text.front() == '-' && text.find_first_not_of("-0.") == std::string::npos;
    return isMinusZero ? text.substr(1) : text;
}

std::string exactText(double value) {
    return fmt::format("{}", value);
}

} // namespace base
