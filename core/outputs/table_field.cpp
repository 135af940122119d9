// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/outputs/table_field.h"

#include "core/base/number_text.h"

namespace outputs {

std::string field(std::string_view text) {
    const bool isPlain = text.find_first_of(",\"\r\n") == std::string_view::npos;
    if (isPlain && base::trimmed(text) == text) {
        return std::string(text);
    }
    std::string quoted = "\"";
    for (const char c : text) {
        quoted += c == '\r' || c == '\n' ? ' ' : c;
        if (c == '"') {
            quoted += c;
        }
    }
    return quoted + '"';
}

} // namespace outputs
