// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/amount.h"
#include "core/units/definitions.h"
#include "core/units/length.h"

namespace units {

/// How far below the water surface, or below chart level: positive down. Not a Length, so that
/// heights and depths do not mix unseen. International foot; fathom of six feet.
class Depth : public Amount<Depth> {
public:
    constexpr Depth() = default;
    [[nodiscard]] static constexpr Depth metres(double amount) { return fromSi(amount); }
    [[nodiscard]] constexpr double inMetres() const { return si(); }
    [[nodiscard]] static constexpr Depth feet(double amount) {
        return fromSi(amount * metresPerFoot);
    }
    [[nodiscard]] constexpr double inFeet() const { return si() / metresPerFoot; }
    [[nodiscard]] static constexpr Depth fathoms(double amount) {
        return fromSi(amount * metresPerFathom);
    }
    [[nodiscard]] constexpr double inFathoms() const { return si() / metresPerFathom; }

    /// The same amount as a plain distance, where a depth becomes a piece of rope or line.
    [[nodiscard]] constexpr Length asLength() const { return Length::metres(si()); }
    [[nodiscard]] static constexpr Depth fromLength(Length length) {
        return fromSi(length.inMetres());
    }

private:
    friend class Amount<Depth>;
};

} // namespace units
