// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <stdexcept>
#include <utility>

namespace support {

/// What `value` holds; a test that asks for what is not there fails here.
template <class T>
[[nodiscard]] T given(std::optional<T> value) {
    if (!value) {
        throw std::runtime_error("a value was expected where there is none");
    }
    return *std::move(value);
}

} // namespace support
