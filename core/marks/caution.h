// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/soundings/lead_line.h"
#include "core/units/length.h"

#include <chrono>
#include <string>
#include <variant>

namespace marks {

// What is to be minded at a place, as values: each says what it is and how much. The sentences are
// made by app/wording.

/// The user's own mark lies in closed water.
struct InClosedWater {
    friend bool operator==(const InClosedWater&, const InClosedWater&) = default;
};
/// The user's own mark lies in water that he banned.
struct InBannedWater {
    std::string name; ///< Of the ban; may be empty.
    friend bool operator==(const InBannedWater&, const InBannedWater&) = default;
};
/// The user's own mark is deeper than the limit.
struct DeeperThanLimit {
    friend bool operator==(const DeeperThanLimit&, const DeeperThanLimit&) = default;
};
/// Closed water within a cast.
struct ClosedWaterNear {
    friend bool operator==(const ClosedWaterNear&, const ClosedWaterNear&) = default;
};
/// The depth at the place is a guess.
struct GuessedHere {
    friend bool operator==(const GuessedHere&, const GuessedHere&) = default;
};
/// Most depths within a cast are guesses.
struct GuessedAround {
    friend bool operator==(const GuessedAround&, const GuessedAround&) = default;
};
/// Waves that are high for an open boat.
struct WavesHere {
    units::Length height; ///< Significant.
    friend bool operator==(const WavesHere&, const WavesHere&) = default;
};
/// Fewer rods than were wanted.
struct RoomForRods {
    int rods = 0;
    int wanted = 0;
    friend bool operator==(const RoomForRods&, const RoomForRods&) = default;
};
/// The wind turns, or gets up, while the boat lies there.
struct WindTurnsHere {
    std::chrono::seconds at{};   ///< Since midnight.
    bool isLaidForLater = false; ///< Whether the anchors are laid for the wind after it.
    friend bool operator==(const WindTurnsHere&, const WindTurnsHere&) = default;
};
/// Which of the two.
enum class AnchorEnd { bow, stern };
/// The bottom at an anchor is steep.
struct SteepAtAnchor {
    AnchorEnd end = AnchorEnd::bow;
    double slope = 0.0;    ///< Rise over run.
    bool isToBoat = false; ///< It falls towards the boat: the pull lifts the anchor off it.
    friend bool operator==(const SteepAtAnchor&, const SteepAtAnchor&) = default;
};
/// The lead brought up, or felt, ground near an anchor that fouls it.
struct FoulAtAnchor {
    AnchorEnd end = AnchorEnd::bow;
    soundings::Bottom bottom = soundings::Bottom::rock; ///< Rock or weed.
    friend bool operator==(const FoulAtAnchor&, const FoulAtAnchor&) = default;
};

using Caution =
    std::variant<InClosedWater, InBannedWater, DeeperThanLimit, ClosedWaterNear, GuessedHere,
                 GuessedAround, WavesHere, RoomForRods, WindTurnsHere, SteepAtAnchor, FoulAtAnchor>;

} // namespace marks
