// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>
#include <cstdint>

namespace base {

/// A number that names one thing of one kind; ids of different kinds do not mix. Zero is never
/// handed out.
template <class Kind>
class TypedId {
public:
    constexpr TypedId() = default;
    constexpr explicit TypedId(std::int64_t number) : number_(number) {}

    [[nodiscard]] constexpr std::int64_t number() const { return number_; }
    [[nodiscard]] constexpr bool isGiven() const { return number_ != 0; }
    friend constexpr auto operator<=>(TypedId, TypedId) = default;

private:
    std::int64_t number_ = 0;
};

} // namespace base
