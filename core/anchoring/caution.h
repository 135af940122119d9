// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <variant>

namespace anchoring {

// What is to be minded about one lie, as values: each says what it is and how much. The sentences
// are made by app/wording.

/// Waves that are high for an open boat at anchor.
struct HighWaves {
    friend bool operator==(const HighWaves&, const HighWaves&) = default;
};
/// A scope that is short for this wind.
struct ShortForTheWind {
    double scope = 0.0;
    friend bool operator==(const ShortForTheWind&, const ShortForTheWind&) = default;
};
/// Room or rope for this scope only, less than was wanted.
struct ShortOfRoom {
    double scope = 0.0;
    friend bool operator==(const ShortOfRoom&, const ShortOfRoom&) = default;
};
/// Turned off the wind, so that neither anchor lands ashore.
struct TurnedOffTheWind {
    double turn_deg = 0.0; ///< 0 to 180, to either side.
    friend bool operator==(const TurnedOffTheWind&, const TurnedOffTheWind&) = default;
};
/// Nobody knows where the wind will come from: the bow is laid to the longest open water.
struct BowToOpenWater {
    friend bool operator==(const BowToOpenWater&, const BowToOpenWater&) = default;
};

using Caution =
    std::variant<HighWaves, ShortForTheWind, ShortOfRoom, TurnedOffTheWind, BowToOpenWater>;

} // namespace anchoring
