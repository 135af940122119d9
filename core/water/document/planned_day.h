// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/light/sun.h"
#include "core/marks/belief_record.h"
#include "core/marks/exclusion.h"
#include "core/marks/mark.h"
#include "core/marks/plan.h"
#include "core/water/document/day_caution.h"
#include "core/water/document/plan_note.h"
#include "core/water/document/stamp.h"

#include <vector>

namespace water {

/// Tomorrow worked out: the marks with their reasons, anchors and rods, and the order of the day.
struct PlannedDay {
    /// Of all that it was made from: it holds as long as this is Stamps::ofPlan() of the water.
    Stamp madeFrom;
    marks::Plan plan;               ///< What was asked.
    std::vector<marks::Mark> marks; ///< Best first.
    marks::DayPlan day;
    /// The user gave an order once, but for other marks than these: it does not hold.
    bool isOrderOfOtherMarks = false;
    light::SunTimes light;
    std::size_t looked = 0;           ///< Candidates that got ropes and rods.
    std::size_t unanchorable = 0;     ///< Of them, where no two anchors would hold the boat.
    std::vector<DayCaution> cautions; ///< What can kill, the gravest first, each once; at most 7.
    std::vector<DayRule> rules;       ///< Of this water, for that day.
    std::vector<FishCare> fishCare;   ///< What the fish need to live.
    std::vector<RefusedMark> refused; ///< Own marks that cannot be anchored on.
    /// Fish per 10 rod-hours that the log lets expect where nothing is known; nothing while it has
    /// no stay on this water.
    std::optional<double> meanPer10RodHours;
    std::vector<marks::BeliefRecord> beliefs; ///< What was said beside what the log says.
    /// How much water each condition leaves out.
    marks::ExcludedAreas excluded{};
    std::vector<PlanNote> basis; ///< What the list stands on.
};

} // namespace water
