// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/amount.h"
#include "core/units/definitions.h"

namespace units {

/// A piece of surface. Acre of 4046.8564224 m2 (international foot).
class Area : public Amount<Area> {
public:
    constexpr Area() = default;
    [[nodiscard]] static constexpr Area squareMetres(double amount) { return fromSi(amount); }
    [[nodiscard]] constexpr double inSquareMetres() const { return si(); }
    [[nodiscard]] static constexpr Area hectares(double amount) { return fromSi(amount * 1.0e4); }
    [[nodiscard]] constexpr double inHectares() const { return si() / 1.0e4; }
    [[nodiscard]] static constexpr Area acres(double amount) {
        return fromSi(amount * squareMetresPerAcre);
    }
    [[nodiscard]] constexpr double inAcres() const { return si() / squareMetresPerAcre; }

private:
    friend class Amount<Area>;
};

} // namespace units
