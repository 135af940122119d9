// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/rules/checks.h"

#include <algorithm>
#include <regex>

namespace rules {

namespace {

constexpr std::ptrdiff_t headerLines = 200;
constexpr std::ptrdiff_t sourceLines = 400;

bool holds(const std::vector<std::string>& lines, const std::string& pattern) {
    const std::regex wanted(pattern);
    return std::ranges::any_of(
        lines, [&](const std::string& line) { return std::regex_search(line, wanted); });
}

} // namespace

void checkShape(const File& file, std::vector<Breach>& breaches) {
    const auto add = [&](const char* rule, std::string what) {
        breaches.push_back({rule, file.name, 0, std::move(what)});
    };
    static const std::regex snakeCase("[a-z][a-z0-9]*(_[a-z0-9]+)*");
    if (!std::regex_match(file.stem, snakeCase)) {
        add("name", "file names are words in small letters, joined by _");
    }
    if (file.isHeader() && !holds(file.text.code, "^#pragma once")) {
        add("name", "a header has #pragma once");
    }
    if (file.part != "core" && file.part != "app") {
        return;
    }
    const std::ptrdiff_t lines = std::ssize(file.text.lines);
    const std::ptrdiff_t limit = file.isHeader() ? headerLines : sourceLines;
    if (lines >= limit) {
        add("length", std::to_string(lines) + " lines; fewer than " + std::to_string(limit) +
                          ": one concept a file");
    }
    const bool isCoreHeader = file.part == "core" && file.isHeader();
    if (isCoreHeader && !holds(file.text.code, "^namespace " + file.folder + "\\b")) {
        add("name", "what core/" + file.folder + " declares is in namespace " + file.folder);
    }
}

} // namespace rules
