// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/anchoring/anchor_set.h"
#include "core/marks/factor.h"
#include "core/rods/rod_spread.h"
#include "core/sections/section.h"

#include <string>
#include <vector>

namespace marks {

/// A place worth looking at for anchoring, before ropes and rods are worked out.
struct Candidate {
    geo::WaterPoint place;
    double promise = 0.0; ///< What the place alone is worth, 0 to 1: chooses which candidates get
                          ///< ropes and rods.
};

/// A place to anchor, with its depth and its reasons.
struct Mark {
    int rank = 0; ///< 1 is best.
    geo::WaterPoint place;
    geo::LonLat lonLat;
    units::Depth depth; ///< Today.
    units::Depth trust; ///< 95 % half-width of that depth.
    sections::SectionNumber section = sections::noSection;
    std::string sectionName;
    std::vector<structure::ZoneKind> zones; ///< Kinds within a cast, each once.
    double score = 0.0;                     ///< Weighted mean of the factors, 0 to 1.
    std::vector<Factor> factors;
    units::Length fetch;      ///< Effective.
    units::Length waveHeight; ///< Significant.
    anchoring::AnchorSet anchors;
    rods::RodSpread spread;
    std::vector<std::string> cautions;
};

/// One stop of the day.
struct DayStop {
    int rank = 0; ///< Of the mark.
    units::Moment arrive;
    units::Moment leave;
    units::Length move; ///< Over water from the stop before, or from the launch.
};

/// The day: stops in the order in which the boat goes.
struct DayPlan {
    std::vector<DayStop> stops;
    units::Length moves; ///< All of them, back to the launch included.
};

} // namespace marks
