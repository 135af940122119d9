// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/amount.h"
#include "core/units/definitions.h"

namespace units {

/// A distance, or the amount by which a level changes (up is positive). International foot (0.3048
/// m exactly), statute and nautical mile as defined.
class Length : public Amount<Length> {
public:
    constexpr Length() = default;
    [[nodiscard]] static constexpr Length metres(double amount) { return fromSi(amount); }
    [[nodiscard]] constexpr double inMetres() const { return si(); }
    [[nodiscard]] static constexpr Length feet(double amount) {
        return fromSi(amount * metresPerFoot);
    }
    [[nodiscard]] constexpr double inFeet() const { return si() / metresPerFoot; }
    [[nodiscard]] static constexpr Length kilometres(double amount) {
        return fromSi(amount * 1000.0);
    }
    [[nodiscard]] constexpr double inKilometres() const { return si() / 1000.0; }
    [[nodiscard]] static constexpr Length miles(double amount) { return fromSi(amount * 1609.344); }
    [[nodiscard]] constexpr double inMiles() const { return si() / 1609.344; }
    [[nodiscard]] static constexpr Length nauticalMiles(double amount) {
        return fromSi(amount * 1852.0);
    }
    [[nodiscard]] constexpr double inNauticalMiles() const { return si() / 1852.0; }

private:
    friend class Amount<Length>;
};

} // namespace units
