// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/document/stamp.h"

namespace water {

Stamp& Stamp::take(std::span<const std::byte> bytes) {
    constexpr std::uint64_t basis = 14695981039346656037ULL;
    constexpr std::uint64_t prime = 1099511628211ULL;
    if (value_ == 0) {
        value_ = basis;
    }
    for (const std::byte b : bytes) {
        value_ ^= static_cast<std::uint64_t>(b);
        value_ *= prime;
    }
    return *this;
}

Stamp& Stamp::take(std::string_view text) {
    take(text.size());
    return take(std::as_bytes(std::span(text.data(), text.size())));
}

} // namespace water
