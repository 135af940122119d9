// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/marks/mark.h"

#include <optional>
#include <string>
#include <variant>

namespace water {

// What is to be minded on a day, its rules and what the fish need, as values. The sentences are
// made by app/wording.

/// No weather for a small open boat.
struct StayAshore {
    int force = 0; ///< On Beaufort's scale.
    friend bool operator==(const StayAshore&, const StayAshore&) = default;
};
/// White horses: sheltered water only.
struct WhiteHorses {
    int force = 0; ///< On Beaufort's scale.
    friend bool operator==(const WhiteHorses&, const WhiteHorses&) = default;
};
/// Nobody said how strong the wind will be.
struct WindNotSaid {
    friend bool operator==(const WindNotSaid&, const WindNotSaid&) = default;
};
/// Water below coldWater, or that nobody has measured.
struct ColdWater {
    bool isMeasured = false;
    friend bool operator==(const ColdWater&, const ColdWater&) = default;
};
/// What the water does to somebody who falls in.
struct FallingIn {
    std::optional<ColdWater> cold; ///< Nothing where it is known not to be cold.
    bool mayHaveIce = false;
    friend bool operator==(const FallingIn&, const FallingIn&) = default;
};
/// Ashore at the first of it.
struct Thunder {
    friend bool operator==(const Thunder&, const Thunder&) = default;
};
/// A boat held at both ends with the wind on her beam.
struct WindOnTheBeam {
    friend bool operator==(const WindOnTheBeam&, const WindOnTheBeam&) = default;
};
/// A boat at one anchor swings, and so does all that she has out.
struct SwingsToOneAnchor {
    friend bool operator==(const SwingsToOneAnchor&, const SwingsToOneAnchor&) = default;
};
/// Ropes and propeller, and a scope for settled weather only.
struct Ropes {
    std::optional<double> shortScope; ///< Where it is less than courses teach.
    friend bool operator==(const Ropes&, const Ropes&) = default;
};
/// Where the boat is, and when she will be back.
struct TellSomebody {
    friend bool operator==(const TellSomebody&, const TellSomebody&) = default;
};

using DayCaution =
    std::variant<StayAshore, WhiteHorses, WindNotSaid, FallingIn, Thunder, marks::DarkHours,
                 WindOnTheBeam, SwingsToOneAnchor, Ropes, TellSomebody>;

/// The day lies outside the fishery's season.
struct OutsideSeason {
    friend bool operator==(const OutsideSeason&, const OutsideSeason&) = default;
};
/// The most rods in a boat.
struct RodLimit {
    int rods = 0;
    friend bool operator==(const RodLimit&, const RodLimit&) = default;
};
/// Water that the fishery has closed.
struct ClosedPart {
    std::string name;
    friend bool operator==(const ClosedPart&, const ClosedPart&) = default;
};
/// The fishery's own words.
struct HouseNote {
    std::string text;
    friend bool operator==(const HouseNote&, const HouseNote&) = default;
};
/// Local rules and the staff go first.
struct LocalRulesFirst {
    friend bool operator==(const LocalRulesFirst&, const LocalRulesFirst&) = default;
};

using DayRule = std::variant<OutsideSeason, RodLimit, ClosedPart, HouseNote, LocalRulesFirst>;

/// What the fish need to live.
enum class FishCare {
    warmWater, ///< Water above warmForFish: some die of being caught.
    handling,
};

} // namespace water
