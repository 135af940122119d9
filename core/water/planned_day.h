// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/light/sun.h"
#include "core/marks/mark.h"
#include "core/marks/plan.h"

#include <string>
#include <vector>

namespace water {

/// Tomorrow worked out: the marks with their reasons, anchors and rods, and the order of the day.
struct PlannedDay {
    marks::Plan plan;               ///< What was asked.
    std::vector<marks::Mark> marks; ///< Best first.
    marks::DayPlan day;
    light::SunTimes light;
    std::size_t looked = 0;            ///< Candidates that got ropes and rods.
    std::size_t unanchorable = 0;      ///< Of them, where no two anchors would hold the boat.
    std::vector<std::string> cautions; ///< For the whole day, the gravest first.
};

} // namespace water
