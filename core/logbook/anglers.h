// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace logbook {

/// The names in who fished, "Anna, Ben" or "Anna and Ben", as they are written.
[[nodiscard]] std::vector<std::string> anglersIn(std::string_view who);

/// True where both name somebody, and nobody is named by both (any case).
[[nodiscard]] bool areOtherAnglers(std::string_view a, std::string_view b);

/// Everybody named by either, each once, those of `a` first.
[[nodiscard]] std::string allAnglers(std::string_view a, std::string_view b);

} // namespace logbook
