// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/structure/zone.h"
#include "core/units/area.h"
#include "core/units/depth.h"
#include "core/units/length.h"
#include "core/units/speed.h"

#include <chrono>
#include <optional>
#include <variant>

namespace marks {

// The quantities behind the factors of a place, one struct each. The words for them are made by
// app/wording.

/// Share of the water within a cast that can be fished, and how deep that is.
struct FishableWater {
    double share = 0.0; ///< 0 to 1; at 0 only the limit means anything.
    units::Depth shallowest;
    units::Depth deepest;
    units::Depth limit;
    friend bool operator==(const FishableWater&, const FishableWater&) = default;
};
/// Edge of a drop-off within a cast; none at a length of 0.
struct DropOffNear {
    units::Length edge;
    units::Depth top;
    units::Depth foot;
    friend bool operator==(const DropOffNear&, const DropOffNear&) = default;
};
/// Edge of weed within a cast; none at a length of 0.
struct WeedEdgeNear {
    units::Length edge;
    friend bool operator==(const WeedEdgeNear&, const WeedEdgeNear&) = default;
};
/// Place features within a cast, and the kind that takes most; nothing where there are none.
struct FeaturesNear {
    units::Area area;
    std::optional<structure::ZoneKind> mostOf;
    friend bool operator==(const FeaturesNear&, const FeaturesNear&) = default;
};
/// Which way the wind blows over the slope.
struct WindOnSlope {
    enum class Way { up, down, neither };
    units::Speed wind;
    Way way = Way::neither;
    double slope = 0.0; ///< Rise over run.
    friend bool operator==(const WindOnSlope&, const WindOnSlope&) = default;
};
/// There is no wind to speak of.
struct NoWind {
    friend bool operator==(const NoWind&, const NoWind&) = default;
};
/// Nobody said where the wind will come from, or how strong it will be: it counts neither way.
struct WindNotKnown {
    friend bool operator==(const WindNotKnown&, const WindNotKnown&) = default;
};
/// Nobody said how strong the wind will be: waves and shelter are not counted.
struct WavesNotKnown {
    friend bool operator==(const WavesNotKnown&, const WavesNotKnown&) = default;
};
/// What is known of the waves at a place.
struct WaveState {
    units::Length fetch;  ///< Effective.
    units::Length height; ///< Significant.
    friend bool operator==(const WaveState&, const WaveState&) = default;
};
/// The waves in each wind of the hours planned; nothing where they are not known.
struct WavesOfDay {
    WavesOfDay() = default;
    /// Of a day of one wind.
    WavesOfDay(const std::optional<WaveState>& all) : first(all) {} // NOLINT(*-explicit-*)
    WavesOfDay(const WaveState& all) : first(all) {}                // NOLINT(*-explicit-*)
    WavesOfDay(std::nullopt_t) {}                                   // NOLINT(*-explicit-*)
    WavesOfDay(const std::optional<WaveState>& before, const std::optional<WaveState>& after)
        : first(before), later(after) {}
    std::optional<WaveState> first;
    std::optional<WaveState> later; ///< Once the wind has turned.
};
/// What is to be said of one wind.
using WindReason = std::variant<WindOnSlope, NoWind, WindNotKnown, WavesNotKnown, WaveState>;
/// The wind turns, or gets up, within the hours planned.
struct InTwoWinds {
    std::chrono::seconds turn{}; ///< Since midnight.
    WindReason before;
    WindReason after;
    friend bool operator==(const InTwoWinds&, const InTwoWinds&) = default;
};
/// What the log lets expect here, and over the whole water.
struct CatchHere {
    double per10RodHours = 0.0;
    double meanPer10RodHours = 0.0;
    friend bool operator==(const CatchHere&, const CatchHere&) = default;
};
/// The log tells nothing of catches yet.
struct LogIsSilent {
    friend bool operator==(const LogIsSilent&, const LogIsSilent&) = default;
};
/// Between what the rate here may lie, with 80 %.
struct RateBetween {
    double lowPer10RodHours = 0.0;
    double highPer10RodHours = 0.0;
    friend bool operator==(const RateBetween&, const RateBetween&) = default;
};
/// Nobody fished here yet.
struct NeverTried {
    friend bool operator==(const NeverTried&, const NeverTried&) = default;
};
/// How far the depths within a cast may be off; nothing where that is not known.
struct DepthsKnownTo {
    std::optional<units::Length> halfWidth; ///< 95 %.
    friend bool operator==(const DepthsKnownTo&, const DepthsKnownTo&) = default;
};
/// The kind of bottom under the boat; nothing over open water.
struct UnderTheBoat {
    std::optional<structure::ZoneKind> kind;
    friend bool operator==(const UnderTheBoat&, const UnderTheBoat&) = default;
};
/// The hours planned.
struct HoursPlanned {
    friend bool operator==(const HoursPlanned&, const HoursPlanned&) = default;
};
/// What looks best of many looks better than it is.
struct BestOfMany {
    friend bool operator==(const BestOfMany&, const BestOfMany&) = default;
};

/// First: nothing is told.
using Reason = std::variant<std::monostate, FishableWater, DropOffNear, WeedEdgeNear, FeaturesNear,
                            WindOnSlope, NoWind, WindNotKnown, WavesNotKnown, WaveState, InTwoWinds,
                            CatchHere, LogIsSilent, RateBetween, NeverTried, DepthsKnownTo,
                            UnderTheBoat, HoursPlanned, BestOfMany>;

} // namespace marks
