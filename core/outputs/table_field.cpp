// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/outputs/table_field.h"

#include "core/base/harmless_text.h"
#include "core/base/number_text.h"
#include "core/logbook/log_columns.h"

#include <algorithm>

namespace outputs {

std::string quotedField(std::string_view text) {
    const bool isPlain = text.find_first_of(",\"\r\n") == std::string_view::npos;
    if (isPlain && base::trimmed(text) == text) {
        return std::string(text);
    }
    std::string cell = "\"";
    for (const char c : text) {
        cell += c;
        if (c == '"') {
            cell += c;
        }
    }
    return cell + '"';
}

std::string field(std::string_view text) {
    std::string line = logbook::guarded(base::harmless(text));
    if (text.find_first_of("\r\n") != std::string_view::npos) {
        std::ranges::replace_if(
            line, [](char c) { return c == '\r' || c == '\n'; }, ' ');
        // A text of several lines is quoted as before, whatever its lines hold.
        const std::string cell = quotedField(line);
        return cell.starts_with('"') ? cell : '"' + cell + '"';
    }
    return quotedField(line);
}

} // namespace outputs
