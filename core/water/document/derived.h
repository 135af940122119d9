// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/error.h"
#include "core/contours/band.h"
#include "core/contours/contour.h"
#include "core/geo/outline.h"
#include "core/reduction/crossing.h"
#include "core/reduction/crossing_check.h"
#include "core/reduction/day_difference.h"
#include "core/reduction/position_delay.h"
#include "core/reduction/reduced_survey.h"
#include "core/reduction/tie_days.h"
#include "core/sections/section.h"
#include "core/structure/zone.h"
#include "core/surface/drawn_water.h"
#include "core/surface/hypsography.h"
#include "core/units/length.h"
#include "core/water/document/stamp.h"
#include "core/weed/weed_map.h"

#include <array>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace water {

/// The derivations in their order; each stands on those before it.
enum class Step {
    reduce,    ///< Depths to chart level, faults set aside, crossings.
    draw,      ///< The depth grid and its trust.
    bands,     ///< Contours, band polygons, area and volume.
    level,     ///< The same at today's level.
    structure, ///< Drop-offs, humps and the rest.
    weed,
    sections,
};

inline constexpr std::array allSteps{Step::reduce,    Step::draw, Step::bands,   Step::level,
                                     Step::structure, Step::weed, Step::sections};

/// "reduce", "draw" ... as the report's timing names them.
[[nodiscard]] std::string_view nameOf(Step step);

/// The survey with its depths reduced and its faults set aside, and how well it agrees with itself.
struct CheckedSurvey {
    reduction::ReducedSurvey survey;
    std::vector<soundings::KeptSounding> kept;
    std::vector<reduction::Crossing> crossings;
    reduction::CrossingCheck check;
    /// Survey days that disagree with each other as they are, agreed offsets counted.
    std::vector<reduction::DayDifference> differences;
    /// What the crossings would add to each survey day, and what that would bring: an offer.
    reduction::DayTie tie;
    /// How late each survey day's positions are, one for each: an offer too.
    std::vector<reduction::PositionDelay> delays;
    double setAsideSeconds = 0.0; ///< Wall time that reducing and setting aside took.
};

/// The form of the water at one level; all depths are below that level.
struct WaterForm {
    units::Length rise; ///< How far the level stands above chart level; below it: negative.
    /// The water as far as it reaches where the level stands below chart level, with what stands
    /// out of it as islands. Empty from chart level up, where it reaches to the shoreline: of the
    /// land beyond nothing is known.
    std::vector<geo::Piece> waterLeft;
    std::vector<contours::Contour> contours;
    std::vector<contours::BandPolygons> bandPolygons;
    std::vector<contours::BandMeasure> bandMeasures;
    surface::Hypsography hypsography;
};

/// Everything that can be computed from a Water, kept with the stamps of what each was computed
/// from. Cheap to copy; what it holds never changes, so that it may be read from any thread.
struct Derived {
    std::shared_ptr<const geo::Outline> outline; ///< The shore, or one drawn round the soundings.
    bool outlineIsAssumed = false;               ///< True where there was no shore to use.
    std::shared_ptr<const CheckedSurvey> checked;
    std::shared_ptr<const surface::DrawnWater> drawn;
    /// Not 0 in cells of the drawing whose nearest sounding is of a day without a water level; null
    /// where there is no such day, or the soundings have not been looked over.
    std::shared_ptr<const grid::Grid<std::uint8_t>> levelUnknown;
    /// Of the drawing, as the user wants them or as its depths ask for: chosen_scale.h tells which
    /// are in force.
    contours::Bands bands;
    units::Area sectionArea = units::Area::hectares(4.0);
    std::shared_ptr<const WaterForm> form;  ///< At chart level.
    std::shared_ptr<const WaterForm> today; ///< At the level of the plan; the same where that is 0.
    std::shared_ptr<const structure::ZoneMap> structure;
    std::shared_ptr<const weed::WeedMap> weed;
    std::shared_ptr<const sections::SectionMap> sections;
    std::map<Step, Stamp> stamps; ///< Of what is held.
    /// Steps that could not be made, and why; what they would hold is absent.
    std::map<Step, base::Error> failures;
    std::map<Step, double> seconds; ///< Wall time the last making of each took.
    std::vector<std::string> notes; ///< Plain sentences on what was assumed.

    /// True where what is held for `step` was made from just this water.
    [[nodiscard]] bool isCurrent(Step step, Stamp wanted) const;
};

} // namespace water
