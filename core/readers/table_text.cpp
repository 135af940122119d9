// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/table_text.h"

#include "core/base/number_text.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

namespace readers {

namespace {

std::string_view withoutQuotes(std::string_view cell) {
    cell = base::trimmed(cell);
    if (cell.size() >= 2 && cell.front() == '"' && cell.back() == '"') {
        cell = base::trimmed(cell.substr(1, cell.size() - 2));
    }
    return cell;
}

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

/// Up to three numbers of an angle and its side of the world.
struct AngleParts {
    std::array<double, 3> numbers{};
    std::size_t count = 0;
    int sign = 1;
    bool isWhole = true; ///< Nothing else stands in the text.
};

AngleParts partsOf(std::string_view text, char decimalMark) {
    AngleParts parts;
    for (std::size_t i = 0; i < text.size();) {
        const char c = text[i];
        if (isDigit(c)) {
            std::size_t end = i;
            while (end < text.size() && (isDigit(text[end]) || text[end] == decimalMark)) {
                ++end;
            }
            const auto number = base::numberFrom(text.substr(i, end - i), decimalMark);
            if (!number || parts.count == parts.numbers.size()) {
                parts.isWhole = false;
                return parts;
            }
            parts.numbers[parts.count++] = *number;
            i = end;
            continue;
        }
        if (c == 'S' || c == 's' || c == 'W' || c == 'w' || (c == '-' && parts.count == 0)) {
            parts.sign = -parts.sign;
        } else if (std::string_view("NnEe \t'\":-").find(c) == std::string_view::npos &&
                   static_cast<unsigned char>(c) < 0x80U) { // Signs of degrees are beyond ASCII.
            parts.isWhole = false;
        }
        ++i;
    }
    return parts;
}

} // namespace

void splitRow(std::string_view line, char separator, std::vector<std::string_view>& cells) {
    cells.clear();
    std::size_t from = 0;
    bool isQuoted = false;
    bool isBlank = true; // Nothing but blanks in the cell so far.
    for (std::size_t i = 0; i <= line.size(); ++i) {
        if (i < line.size() && line[i] == '"') {
            isQuoted = !isQuoted && isBlank; // Within a cell it is the sign of seconds.
            isBlank = false;
        } else if (i < line.size()) {
            isBlank = isBlank && (line[i] == ' ' || line[i] == '\t');
        }
        if (i < line.size() && (isQuoted || line[i] != separator)) {
            continue;
        }
        const std::string_view cell = line.substr(from, i - from);
        if (separator != ' ' || !cell.empty()) {
            cells.push_back(withoutQuotes(cell));
        }
        from = i + 1;
        isBlank = true;
    }
}

std::optional<double> angleFrom(std::string_view text, char decimalMark) {
    if (const auto plain = base::numberFrom(text, decimalMark)) {
        return plain;
    }
    const AngleParts parts = partsOf(base::trimmed(text), decimalMark);
    if (!parts.isWhole || parts.count == 0 || parts.numbers[1] >= 60.0 ||
        parts.numbers[2] >= 60.0) {
        return std::nullopt;
    }
    return parts.sign * (parts.numbers[0] + parts.numbers[1] / 60.0 + parts.numbers[2] / 3600.0);
}

std::optional<units::Day> dateFrom(std::string_view text, DateOrder order) {
    text = base::trimmed(text);
    std::array<int, 3> parts{};
    std::array<std::size_t, 3> digits{};
    std::size_t part = 0;
    for (const char c : text) {
        if (isDigit(c) && digits[part] < 8) {
            parts[part] = parts[part] * 10 + (c - '0');
            ++digits[part];
        } else if ((c == '-' || c == '/' || c == '.') && digits[part] > 0 && part < 2) {
            ++part;
        } else {
            return std::nullopt;
        }
    }
    if (part == 0 && digits[0] == 8 && order == DateOrder::yearFirst) {
        parts = {parts[0] / 10000, parts[0] / 100 % 100, parts[0] % 100};
    } else if (part != 2 || digits[2] == 0 || digits[order == DateOrder::yearFirst ? 0 : 2] != 4) {
        return std::nullopt;
    }
    if (order == DateOrder::dayFirst) {
        std::swap(parts[0], parts[2]);
    } else if (order == DateOrder::monthFirst) {
        parts = {parts[2], parts[0], parts[1]};
    }
    const units::Day day{std::chrono::year(parts[0]),
                         std::chrono::month(static_cast<unsigned>(parts[1])),
                         std::chrono::day(static_cast<unsigned>(parts[2]))};
    return day.ok() ? std::optional(day) : std::nullopt;
}

std::optional<DateOrder> dateOrderOf(const std::vector<std::string_view>& dates) {
    for (const DateOrder order :
         {DateOrder::yearFirst, DateOrder::dayFirst, DateOrder::monthFirst}) {
        if (!dates.empty() && std::ranges::all_of(dates, [order](std::string_view text) {
                return dateFrom(text, order).has_value();
            })) {
            return order;
        }
    }
    return std::nullopt;
}

std::optional<units::Moment> dateAndTimeFrom(std::string_view text, DateOrder order,
                                             const units::Clock& clock) {
    text = base::trimmed(text);
    if (order == DateOrder::yearFirst) {
        if (const auto moment = units::momentFrom(text, clock)) {
            return moment;
        }
        constexpr std::size_t secondDigits = 10;
        constexpr std::size_t millisecondDigits = 13;
        const std::size_t whole =
            text.find('.') == std::string_view::npos ? text.size() : text.find('.');
        const auto number = base::numberFrom(text);
        if (number && (whole == secondDigits || whole == millisecondDigits)) {
            const double ms = whole == secondDigits ? *number * 1000.0 : *number;
            return units::Moment(std::chrono::milliseconds(std::llround(ms)));
        }
    }
    const std::size_t gap = text.find_first_of(" T,");
    if (gap == std::string_view::npos) {
        return std::nullopt;
    }
    const auto day = dateFrom(text.substr(0, gap), order);
    if (!day) {
        return std::nullopt;
    }
    std::string time(base::trimmed(text.substr(gap + 1)));
    if (time.size() > 1 && time[1] == ':') {
        time.insert(time.begin(), '0');
    }
    return units::momentFrom(units::isoText(*day) + "T" + time, clock);
}

} // namespace readers
