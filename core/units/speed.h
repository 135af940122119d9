// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/amount.h"

namespace units {

/// How fast wind blows, sound runs or the boat goes. Knot of 1852 m an hour.
class Speed : public Amount<Speed> {
public:
    constexpr Speed() = default;
    [[nodiscard]] static constexpr Speed metresPerSecond(double amount) { return fromSi(amount); }
    [[nodiscard]] constexpr double inMetresPerSecond() const { return si(); }
    [[nodiscard]] static constexpr Speed knots(double amount) {
        return fromSi(amount * (1852.0 / 3600.0));
    }
    [[nodiscard]] constexpr double inKnots() const { return si() / (1852.0 / 3600.0); }
    [[nodiscard]] static constexpr Speed milesPerHour(double amount) {
        return fromSi(amount * (1609.344 / 3600.0));
    }
    [[nodiscard]] constexpr double inMilesPerHour() const { return si() / (1609.344 / 3600.0); }
    [[nodiscard]] static constexpr Speed kilometresPerHour(double amount) {
        return fromSi(amount * (1.0 / 3.6));
    }
    [[nodiscard]] constexpr double inKilometresPerHour() const { return si() / (1.0 / 3.6); }

private:
    friend class Amount<Speed>;
};

} // namespace units
