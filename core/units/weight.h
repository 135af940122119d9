// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/amount.h"
#include "core/units/definitions.h"

namespace units {

/// The weight of a fish or of an anchor, as a mass. Avoirdupois pound of 0.45359237 kg, ounce a
/// sixteenth of it.
class Weight : public Amount<Weight> {
public:
    constexpr Weight() = default;
    [[nodiscard]] static constexpr Weight kilograms(double amount) { return fromSi(amount); }
    [[nodiscard]] constexpr double inKilograms() const { return si(); }
    [[nodiscard]] static constexpr Weight pounds(double amount) {
        return fromSi(amount * kilogramsPerPound);
    }
    [[nodiscard]] constexpr double inPounds() const { return si() / kilogramsPerPound; }
    [[nodiscard]] static constexpr Weight ounces(double amount) {
        return fromSi(amount * (kilogramsPerPound / 16.0));
    }
    [[nodiscard]] constexpr double inOunces() const { return si() / (kilogramsPerPound / 16.0); }

private:
    friend class Amount<Weight>;
};

} // namespace units
