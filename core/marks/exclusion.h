// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/marks/mark_input.h"
#include "core/marks/propose_settings.h"
#include "core/units/area.h"

#include <array>
#include <optional>
#include <string_view>

namespace marks {

class Clearance;

/// Why a boat is not to lie at a place of the water; the first in this order that holds.
enum class Exclusion {
    closed,        ///< Closed water, or within the boat's swing of it.
    tooShallow,    ///< To float.
    tooDeep,       ///< Deeper than the limit.
    noRoom,        ///< To swing without touching the bank.
    ropesTooShort, ///< To reach the bottom with the least scope, by the depth at the place: a bound
                   ///< that leaves a fifth for anchors on higher ground.
    tooRough,
    banned,   ///< By the user; last of what a place tells by itself, so that its area is what comes
              ///< back when the ban is lifted.
    tooSteep, ///< The bottom where an anchor would land, for any anchor: found by trial.
    noAnchors, ///< No room for the ropes between banks and closed water, or no rope: by trial.
};

inline constexpr std::array allExclusions{
    Exclusion::closed, Exclusion::tooShallow,    Exclusion::tooDeep,
    Exclusion::noRoom, Exclusion::ropesTooShort, Exclusion::tooRough,
    Exclusion::banned, Exclusion::tooSteep,      Exclusion::noAnchors};

/// How much water each of them takes, in that order.
using ExcludedAreas = std::array<units::Area, allExclusions.size()>;

/// "closed", "too_shallow", "too_deep", "no_room_to_swing", "ropes_too_short", "too_rough",
/// "banned", "too_steep_for_an_anchor", "no_room_for_anchors".
[[nodiscard]] std::string_view nameOf(Exclusion exclusion);

/// Nothing where the boat may lie, as far as the place itself tells. \param place on water today.
/// \param clearance of this water for the boat's room; null: everything is measured.
[[nodiscard]] std::optional<Exclusion> exclusionAt(const MarkInput& input, geo::WaterPoint place,
                                                   const Plan& plan,
                                                   const ProposeSettings& settings,
                                                   const Clearance* clearance = nullptr);

/// True where a boat may lie: water today, open, no deeper than the limit, deep enough, with room
/// to swing, within reach of the ropes, not too rough, and not banned by the user.
[[nodiscard]] bool mayLieAt(const MarkInput& input, geo::WaterPoint place, const Plan& plan,
                            const ProposeSettings& settings, const Clearance* clearance = nullptr);

/// Room that a boat needs to bank and closed water.
[[nodiscard]] inline units::Length roomFor(const Plan& plan, const ProposeSettings& settings) {
    return plan.tackle.boatLength * settings.swingRoom;
}

} // namespace marks
