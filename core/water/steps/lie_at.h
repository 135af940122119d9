// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/anchoring/boat_settings.h"
#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/marks/mark.h"
#include "core/marks/plan.h"
#include "core/rods/rod_settings.h"
#include "core/water/document/water.h"
#include "core/water/steps/day_ground.h"

namespace water {

// How the boat lies at a place, and where her baits go: by the program, or as the user laid them.

/// What lies are worked out on.
struct LieWork {
    const Water& water;
    const DayGround& day;
    const marks::Tackle& tackle; ///< Its rods held to the house rules.
    base::Progress& progress;
};

/// The tackle of a plan as settings of the jobs that work with it.
[[nodiscard]] anchoring::BoatSettings boatOf(const marks::Tackle& tackle);
[[nodiscard]] rods::RodSettings rodsOf(const marks::Tackle& tackle);

/// What the user laid of his mark at this place; null where he laid nothing, or no mark of his is
/// there.
[[nodiscard]] const LaidByHand* laidAt(const Water& water, geo::WaterPoint place);
[[nodiscard]] const LaidByHand* laidAt(const Water& water, const marks::Candidate& candidate);

/// Anchors and waves in one wind. Only a mark that the user himself put into closed water gets its
/// anchors there, with a caution. \param laid may be null. \return unusableInput where nothing
/// holds the boat there.
[[nodiscard]] base::Result<marks::Lying> lyingIn(const logbook::Wind& wind, geo::WaterPoint place,
                                                 const LaidByHand* laid, const LieWork& work);

/// The rods of a boat at these anchors. \param laid may be null.
[[nodiscard]] base::Result<rods::RodSpread> rodsAt(const anchoring::AnchorSet& anchors,
                                                   const LaidByHand* laid, const LieWork& work);

} // namespace water
