// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/reading_report.h"

#include <fmt/format.h>

namespace readers {

namespace {

std::string printable(std::string_view text) {
    constexpr std::size_t longest = 80;
    std::string shown(text.substr(0, longest));
    for (char& c : shown) {
        if (c < ' ' || c > '~') {
            c = '?';
        }
    }
    return shown;
}

} // namespace

void ReadingReport::refuse(std::string_view reason, std::size_t line, std::string_view text) {
    const auto [at, isNew] = refused.try_emplace(std::string(reason));
    ++at->second.count;
    if (isNew) {
        at->second.firstLine = line;
        at->second.firstText = printable(text);
    }
}

void ReadingReport::dropField(std::string_view column, std::size_t line, std::string_view text) {
    badFields.push_back({line, std::string(column), printable(text)});
}

std::size_t ReadingReport::refusedCount() const {
    std::size_t count = 0;
    for (const auto& [reason, rows] : refused) {
        count += rows.count;
    }
    return count;
}

std::string ReadingReport::refusedText() const {
    std::string text;
    for (const auto& [reason, rows] : refused) {
        text += fmt::format("{}{} x {} (first: line {} '{}')", text.empty() ? "" : ", ", rows.count,
                            reason, rows.firstLine, rows.firstText);
    }
    return text;
}

} // namespace readers
