// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace base {

/// `text` without what would make a screen, a sheet or a table show something else than it says:
/// control characters become blanks, except line breaks and tabs; characters that turn the
/// direction of all that follows (a depth behind such a name reads backwards) or that nobody can
/// see are left out; bytes that are no UTF-8 become U+FFFD. Letters of every script stay.
[[nodiscard]] std::string harmless(std::string_view text);

} // namespace base
