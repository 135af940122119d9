// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace outputs {

/// A field of a text table with quotes where RFC 4180 asks for them, harmless and nothing that a
/// spreadsheet would run (logbook::guarded). Line breaks become blanks: a
/// row is a line, so that every reader of tables takes it.
[[nodiscard]] std::string field(std::string_view text);

/// The same with its line breaks kept, for readers that know quoted ones.
[[nodiscard]] std::string quotedField(std::string_view text);

} // namespace outputs
