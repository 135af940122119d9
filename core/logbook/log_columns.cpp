// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/log_columns.h"

#include <algorithm>

namespace logbook {

namespace {

constexpr std::string_view formulaBegins = "=+-@\t\r\n";

bool beginsFormula(std::string_view text) {
    return !text.empty() && formulaBegins.find(text.front()) != std::string_view::npos;
}

/// An apostrophe that itself stands before a formula, or before such an apostrophe.
bool beginsGuarded(std::string_view text) {
    return text.size() > 1 && text[0] == '\'' && (text[1] == '\'' || beginsFormula(text.substr(1)));
}

} // namespace

std::optional<LogColumn> logColumnNamed(std::string_view name) {
    const auto* const found = std::ranges::find(logColumnNames, name);
    return found == logColumnNames.end()
               ? std::nullopt
               : std::optional(static_cast<LogColumn>(found - logColumnNames.begin()));
}

std::string guarded(std::string_view text) {
    const bool isToGuard = beginsFormula(text) || beginsGuarded(text);
    return (isToGuard ? "'" : "") + std::string(text);
}

std::string unguarded(std::string_view text) {
    return std::string(beginsGuarded(text) ? text.substr(1) : text);
}

} // namespace logbook
