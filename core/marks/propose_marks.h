// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/marks/looked_at.h"
#include "core/marks/mark.h"
#include "core/marks/mark_input.h"
#include "core/marks/plan.h"
#include "core/marks/prospect.h"
#include "core/units/area.h"

#include <array>
#include <optional>
#include <string_view>
#include <vector>

namespace marks {

/// How to look for places. Defaults are our choice (no source).
struct ProposeSettings {
    /// Candidates that go on to ropes and rods, 1 to 5000. 240: thirty for each of eight marks.
    int most = 240;
    /// Places looked at on a large water, 100 to 1 million: the lattice widens to keep to it.
    int mostLookedAt = 40000;
    /// Least distance between two candidates as a share of the cast, 0.1 to 4.
    double leastApart = 0.5;
    /// Shallowest water to lie in, 0.3 to 5 m.
    units::Depth shallowest = units::Depth::metres(1.0);
    /// Room from the boat's middle to the shore, in boat lengths, 0 to 5: a swing must not end on
    /// the bank.
    double swingRoom = 1.0;
    /// Significant wave height from which an open boat does not lie between two anchors, 0.05 to 5
    /// m.
    units::Length roughest = units::Length::metres(0.35);
};

/// One sentence for each setting or part of the plan out of its range; none where all is well.
[[nodiscard]] std::vector<std::string> problemsIn(const ProposeSettings& settings,
                                                  const Plan& plan);

/// Why a boat is not to lie at a place of the water; the first in this order that holds.
enum class Exclusion {
    closed,        ///< Closed water, or within the boat's swing of it.
    tooShallow,    ///< To float.
    tooDeep,       ///< Deeper than the limit.
    noRoom,        ///< To swing without touching the bank.
    ropesTooShort, ///< To reach the bottom with the least scope, by the depth at the place: a bound
                   ///< that leaves a fifth for anchors on higher ground.
    tooRough,
    banned, ///< By the user; last, so that its area is what comes back when the ban is lifted.
};

inline constexpr std::array allExclusions{
    Exclusion::closed,        Exclusion::tooShallow, Exclusion::tooDeep, Exclusion::noRoom,
    Exclusion::ropesTooShort, Exclusion::tooRough,   Exclusion::banned};

/// "closed", "too_shallow", "too_deep", "no_room_to_swing", "ropes_too_short", "too_rough",
/// "banned".
[[nodiscard]] std::string_view nameOf(Exclusion exclusion);

/// Nothing where the boat may lie. \param place on water today.
[[nodiscard]] std::optional<Exclusion> exclusionAt(const MarkInput& input, geo::WaterPoint place,
                                                   const Plan& plan,
                                                   const ProposeSettings& settings);

/// How much of the water each condition excludes, in the order of allExclusions, each place counted
/// for the first that holds; from up to about ten thousand places on a lattice.
[[nodiscard]] std::array<units::Area, allExclusions.size()>
excludedAreas(const MarkInput& input, const Plan& plan, const ProposeSettings& settings);

/// True where a boat may lie: water today, open, no deeper than the limit, deep enough, with room
/// to swing, within reach of the ropes, not too rough, and not banned by the user.
[[nodiscard]] bool mayLieAt(const MarkInput& input, geo::WaterPoint place, const Plan& plan,
                            const ProposeSettings& settings);

/// The places worth looking at where a boat may lie: on and beside drop-off and weed edges, on
/// features, on the borders of bands, and on a lattice half a cast wide over all fishable water.
/// Neither the log nor what matters to the user has a say. The same water turned by a right angle
/// about the frame's origin, with its wind, gives the same places turned. \return wrongUse for
/// settings or a plan out of range; cancelled.
[[nodiscard]] base::Result<std::vector<LookedAt>> lookRound(const MarkInput& input,
                                                            const Plan& plan,
                                                            const ProposeSettings& settings,
                                                            base::Progress& progress);

/// What each of these places promises, but for what matters to the user. \return cancelled.
[[nodiscard]] base::Result<std::vector<Prospect>> prospectsOf(const MarkInput& input,
                                                              const Plan& plan,
                                                              const std::vector<LookedAt>& lookedAt,
                                                              base::Progress& progress);

/// Of the places looked at, those that are to get ropes and rods: thinned by promise, best first
/// and never nearer to each other than the settings say. The promise of a place is its worth, see
/// Prospect. Conditions exclude before anything is thinned. Pinned places come first, unmoved,
/// wherever they lie in the water.
/// \param prospects of the places looked at, one for each. \param pinned places that the user put.
/// \return wrongUse for settings or a plan out of range; unusableInput where a boat may lie
/// nowhere; cancelled.
[[nodiscard]] base::Result<std::vector<Candidate>>
proposeMarks(const MarkInput& input, const Plan& plan, const std::vector<LookedAt>& lookedAt,
             const std::vector<Prospect>& prospects, const std::vector<Candidate>& pinned,
             const ProposeSettings& settings, base::Progress& progress);

/// All three.
[[nodiscard]] base::Result<std::vector<Candidate>>
proposeMarks(const MarkInput& input, const Plan& plan, const std::vector<Candidate>& pinned,
             const ProposeSettings& settings, base::Progress& progress);

} // namespace marks
