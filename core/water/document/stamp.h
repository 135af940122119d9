// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <bit>
#include <cstdint>
#include <span>
#include <string_view>
#include <type_traits>

namespace water {

/// A fingerprint of what something was derived from (FNV-1a, 64 bit): equal inputs give equal
/// stamps on every machine of the same byte order. Zero means "never made".
class Stamp {
public:
    constexpr Stamp() = default;
    constexpr explicit Stamp(std::uint64_t kept) : value_(kept) {}

    Stamp& take(std::span<const std::byte> bytes);
    Stamp& take(std::string_view text);
    template <class T>
        requires std::is_arithmetic_v<T> || std::is_enum_v<T>
    Stamp& take(T value) {
        return take(std::as_bytes(std::span(&value, 1)));
    }
    Stamp& take(Stamp other) { return take(other.value_); }
    /// A word at once, for lists of millions: another stamp than its eight bytes give.
    Stamp& takeWord(std::uint64_t word) {
        constexpr std::uint64_t prime = 1099511628211ULL;
        value_ = std::rotl(value_ ^ word, 29) * prime;
        return *this;
    }

    [[nodiscard]] constexpr std::uint64_t value() const { return value_; }
    [[nodiscard]] constexpr bool isMade() const { return value_ != 0; }
    friend constexpr bool operator==(Stamp, Stamp) = default;

private:
    std::uint64_t value_ = 0;
};

} // namespace water
