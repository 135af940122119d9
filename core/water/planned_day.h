// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/light/sun.h"
#include "core/marks/mark.h"
#include "core/marks/plan.h"
#include "core/water/stamp.h"

#include <string>
#include <vector>

namespace water {

/// Tomorrow worked out: the marks with their reasons, anchors and rods, and the order of the day.
struct PlannedDay {
    /// Of all that it was made from: it holds as long as this is Stamps::ofPlan() of the water.
    Stamp madeFrom;
    marks::Plan plan;               ///< What was asked.
    std::vector<marks::Mark> marks; ///< Best first.
    marks::DayPlan day;
    light::SunTimes light;
    std::size_t looked = 0;            ///< Candidates that got ropes and rods.
    std::size_t unanchorable = 0;      ///< Of them, where no two anchors would hold the boat.
    std::vector<std::string> cautions; ///< What can kill, the gravest first, each once; at most 7.
    std::vector<std::string> rules;    ///< Of this water, for that day.
    std::vector<std::string> fishCare; ///< What the fish need to live.
    std::vector<std::string> notes;    ///< Own marks that cannot be anchored on, no time or no way.
};

} // namespace water
