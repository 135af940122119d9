// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/amount.h"
#include "core/units/definitions.h"

namespace units {

/// A body of water. Acre-foot as the product of its two units.
class Volume : public Amount<Volume> {
public:
    constexpr Volume() = default;
    [[nodiscard]] static constexpr Volume cubicMetres(double amount) { return fromSi(amount); }
    [[nodiscard]] constexpr double inCubicMetres() const { return si(); }
    [[nodiscard]] static constexpr Volume acreFeet(double amount) {
        return fromSi(amount * (squareMetresPerAcre * metresPerFoot));
    }
    [[nodiscard]] constexpr double inAcreFeet() const {
        return si() / (squareMetresPerAcre * metresPerFoot);
    }

private:
    friend class Amount<Volume>;
};

} // namespace units
