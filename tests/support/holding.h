// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <variant>

namespace support {

/// Whether one of the variants holds this kind.
template <class Kind, class List>
[[nodiscard]] bool holds(const List& list) {
    return std::ranges::any_of(list,
                               [](const auto& one) { return std::holds_alternative<Kind>(one); });
}

} // namespace support
