// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/water/document/water.h"

#include <string_view>

namespace water {

/// One member of a water, or of what is nested in it: a change of it alone, and the steps that
/// depend on it, in their order with a blank after each; last "plan" where the plan of the day
/// does.
struct StampRow {
    std::string_view member;
    void (*change)(Water&);
    std::string_view steps;
};

inline constexpr std::string_view fromReduce =
    "reduce draw bands level structure weed sections plan ";
inline constexpr std::string_view fromDraw = "draw bands level structure weed sections plan ";
inline constexpr std::string_view fromBands = "bands level structure sections plan ";
inline constexpr std::string_view levelAndPlan = "level plan ";
inline constexpr std::string_view fromStructure = "structure sections plan ";
inline constexpr std::string_view fromWeed = "weed sections plan ";
inline constexpr std::string_view fromSections = "sections plan ";
inline constexpr std::string_view onlyPlan = "plan ";
inline constexpr std::string_view noStep;

} // namespace water
