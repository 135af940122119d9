// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/reduction/reduction_terms.h"
#include "core/water/document/derived.h"
#include "core/water/document/water.h"

namespace water {

/// The outline to draw inside of.
struct WaterOutline {
    geo::Outline outline;
    bool isAssumed = false;
};

/// What the water says of its depths: chart level, and what its days agreed to.
[[nodiscard]] reduction::ReductionSettings reductionOf(const Water& water);

/// Survey days of which nobody noted the water level, nor agreed how they lie to the others. A day
/// alone is its own chart level.
[[nodiscard]] std::size_t daysWithoutLevel(const Water& water);

/// Not 0 in cells whose nearest sounding, counted in steps from cell to cell, is of such a day.
[[nodiscard]] grid::Grid<std::uint8_t>
levelUnknownOn(const grid::GridFrame& cells, const Water& water, const CheckedSurvey& checked);

/// The shoreline, or where there is none, a line assumed 15 m outside the soundings.
/// \return the error of Outline::make(); unusableInput where there are too few soundings to assume
/// one.
[[nodiscard]] base::Result<WaterOutline> outlineOf(const Water& water);

/// Depths reduced, faults set aside, crossings found and compared.
[[nodiscard]] base::Result<CheckedSurvey>
checkSurvey(const Water& water, const geo::Outline& outline, base::Progress& progress);

/// The kept soundings and those by lead line, which are passes of their own.
[[nodiscard]] std::vector<soundings::KeptSounding> soundingsToDraw(const Water& water,
                                                                   const CheckedSurvey& checked);

/// Contours at the band edges and at round depths between them, bands, area and volume, all below
/// a level that stands `rise` above chart level.
[[nodiscard]] base::Result<WaterForm> formOf(contours::CountsIn unit, const contours::Bands& bands,
                                             const surface::DrawnWater& drawn,
                                             const geo::Outline& outline, units::Length rise,
                                             base::Progress& progress);

} // namespace water
