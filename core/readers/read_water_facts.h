// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/readers/water_facts.h"

#include <filesystem>
#include <vector>

namespace readers {

/// The facts of a water from JSON: "name", "invented", "time_zone", "chart_level_m",
/// "secchi_depth_m", "launch" {"lon", "lat"}, "places" [{"name", "lon", "lat"}]; all but the name
/// may be missing. \return unusableInput where the text is no such JSON.
[[nodiscard]] base::Result<WaterFacts> readWaterFacts(const std::filesystem::path& path);

/// The days of a survey from a table with the columns day, file and, where known, water_level_m,
/// water_temperature_c, draft_m, assumed_sound_speed_m_s, depth_unit (m, ft, fathom).
/// \return unusableInput where a column is missing or a row makes no sense (`where` names its
/// line).
[[nodiscard]] base::Result<std::vector<SurveyDayFacts>>
readSurveyDayFacts(const std::filesystem::path& path);

} // namespace readers
