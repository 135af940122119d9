// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/anchoring/anchor_set.h"
#include "core/marks/mark.h"
#include "core/water/document/water.h"
#include "core/water/steps/day_ground.h"

#include <vector>

namespace water {

/// What was brought up or felt as near to an anchor as this is taken for its ground; ours.
inline constexpr units::Length notedNear = units::Length::metres(15.0);

/// Rise over run of the drawn bottom at an anchor; nothing where its depth is a guess or there is
/// none.
[[nodiscard]] std::optional<double> slopeAt(const DayGround& day, geo::WaterPoint anchor);

/// The bottom at one of the anchors is known to be steeper than any anchor is to be trusted to, see
/// ProposeSettings.
[[nodiscard]] bool isTooSteep(const anchoring::AnchorSet& anchors, const DayGround& day);

/// Fills in what is known of the ground at the anchors of each mark, and what is to be minded of
/// it.
void tellOfAnchorGround(const Water& water, const DayGround& day, std::vector<marks::Mark>& marks);

} // namespace water
