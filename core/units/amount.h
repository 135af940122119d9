// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>

namespace units {

/// What every amount of one kind can do: add, scale, compare, with the inner SI number hidden.
/// `Self` names the kind; it alone offers makers and readers, each named by its unit, so that a
/// bare number never becomes an amount unseen.
template <class Self>
class Amount {
public:
    friend constexpr auto operator<=>(const Amount&, const Amount&) = default;

    friend constexpr Self operator+(Self a, Self b) { return Self::fromSi(a.si() + b.si()); }
    friend constexpr Self operator-(Self a, Self b) { return Self::fromSi(a.si() - b.si()); }
    friend constexpr Self operator-(Self a) { return Self::fromSi(-a.si()); }
    friend constexpr Self operator*(Self a, double factor) { return Self::fromSi(a.si() * factor); }
    friend constexpr Self operator*(double factor, Self a) { return Self::fromSi(a.si() * factor); }
    friend constexpr Self operator/(Self a, double divisor) {
        return Self::fromSi(a.si() / divisor);
    }
    friend constexpr double operator/(Self a, Self b) { return a.si() / b.si(); }
    constexpr Self& operator+=(Self other) {
        si_ += other.si();
        return static_cast<Self&>(*this);
    }
    constexpr Self& operator-=(Self other) {
        si_ -= other.si();
        return static_cast<Self&>(*this);
    }

protected:
    constexpr Amount() = default;
    constexpr explicit Amount(double si) : si_(si) {}
    [[nodiscard]] constexpr double si() const { return si_; }
    [[nodiscard]] static constexpr Self fromSi(double si) {
        Self made;
        static_cast<Amount&>(made).si_ = si;
        return made;
    }

private:
    double si_ = 0.0;
};

} // namespace units
