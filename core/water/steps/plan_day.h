// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/water/document/derived.h"
#include "core/water/document/planned_day.h"
#include "core/water/document/water.h"
#include "core/water/steps/workings.h"

namespace water {

/// A launch may lie so far from the water, for the way from the bank to the boat and for a shore
/// that is roughly drawn; ours.
inline constexpr units::Length farthestLaunch = units::Length::metres(200.0);

/// How far a launch lies from the shore; nought on the water. Where it lies beyond what the frame
/// can take, over the Earth from the middle of the water.
[[nodiscard]] units::Length ashore(const geo::WaterFrame& frame, const geo::Outline& outline,
                                   geo::LonLat launch);

/// Tomorrow's marks for the plan that is asked: places proposed, anchors and rods worked out for
/// each, ranked, put in order. It goes before the one in the water; its rods are held to the house
/// rules.
/// \param derived made up to Step::sections.
/// \return wrongUse where something is not derived yet or a setting is out of range; unusableInput
/// where no place can be anchored on (why, and what to change) or the launch lies elsewhere (how
/// far); cancelled.
/// \param workings of an earlier plan, of this water or another, to use what still holds; they are
/// those of this plan afterwards. Null: nothing is kept.
[[nodiscard]] base::Result<PlannedDay> planDay(const Water& water, const Derived& derived,
                                               const marks::Plan& asked, base::Progress& progress,
                                               Workings* workings = nullptr);

} // namespace water
