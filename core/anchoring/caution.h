// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/length.h"

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

// What an anchor that the user laid himself breaks of the rules that the program keeps to.

/// What of a lie a caution is about.
enum class LiePart { boat, bowAnchor, sternAnchor, swing };

/// It lies in closed water, or its rope leads through it.
struct LiesInClosedWater {
    LiePart part = LiePart::boat;
    friend bool operator==(const LiesInClosedWater&, const LiesInClosedWater&) = default;
};
/// It lies on land or where the boat does not float, or its rope leads over that.
struct LiesAshore {
    LiePart part = LiePart::boat;
    friend bool operator==(const LiesAshore&, const LiesAshore&) = default;
};
/// More rope is needed than there is on board.
struct RopeTooShort {
    LiePart part = LiePart::bowAnchor;
    units::Length needed;
    units::Length onBoard;
    friend bool operator==(const RopeTooShort&, const RopeTooShort&) = default;
};
/// So near that its rope stands too steep to hold.
struct TooSteep {
    LiePart part = LiePart::bowAnchor;
    double scope = 0.0;
    double least = 0.0;
    friend bool operator==(const TooSteep&, const TooSteep&) = default;
};
/// The bow points off the wind.
struct LaidOffTheWind {
    double turn_deg = 0.0; ///< 0 to 180, to either side.
    bool isTooFar = false; ///< Farther than the program would turn her.
    friend bool operator==(const LaidOffTheWind&, const LaidOffTheWind&) = default;
};
/// The wind has changed since the anchors were laid, and they fit it less.
struct WindChangedSince {
    double change_deg = 0.0; ///< 0 to 180, to either side.
    friend bool operator==(const WindChangedSince&, const WindChangedSince&) = default;
};
/// The boat does not lie where the user put the mark.
struct LiesOffTheMark {
    units::Length off;
    friend bool operator==(const LiesOffTheMark&, const LiesOffTheMark&) = default;
};

using Caution = std::variant<HighWaves, ShortForTheWind, ShortOfRoom, TurnedOffTheWind,
                             BowToOpenWater, LiesInClosedWater, LiesAshore, RopeTooShort, TooSteep,
                             LaidOffTheWind, WindChangedSince, LiesOffTheMark>;

} // namespace anchoring
