// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/reduction/reduced_survey.h"
#include "core/soundings/survey_day.h"

#include <filesystem>
#include <span>
#include <string_view>

namespace outputs {

/// Soundings for the crowdsourced bathymetry of IHO publication B-12 (ed. 3.0.0, table 2): degrees,
/// depth in metres, positive down, UTC to the millisecond. As B-12 prefers raw data, depths are
/// those that the sounder showed, without any correction. It asks for a time, so that soundings
/// without one are left out, and those that are set aside.
/// \param survey reduced from these days, for what is set aside; null gives all of them.

/// True where there is anything to write.
[[nodiscard]] bool hasB12Soundings(std::span<const soundings::SurveyDay> days,
                                   const reduction::ReducedSurvey* survey);

/// A GeoJSON feature collection of points with "depth" and "time".
/// \return unwritableOutput.
[[nodiscard]] base::Result<void> writeB12Geojson(const std::filesystem::path& path,
                                                 std::span<const soundings::SurveyDay> days,
                                                 const reduction::ReducedSurvey* survey);

/// A text table with the columns LON, LAT, DEPTH, TIME. \return unwritableOutput.
[[nodiscard]] base::Result<void> writeB12Table(const std::filesystem::path& path,
                                               std::span<const soundings::SurveyDay> days,
                                               const reduction::ReducedSurvey* survey);

} // namespace outputs
