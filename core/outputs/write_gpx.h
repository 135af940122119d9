// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/geo/water_frame.h"
#include "core/marks/mark.h"
#include "core/surface/survey_line.h"

#include <filesystem>
#include <span>
#include <string_view>

namespace outputs {

/// The marks as GPX 1.1 waypoints by rank, "1 Section 3": depth, trust and anchors in an extension
/// of our own, reasons in the description. Never writes a depth as an elevation.
/// \return unwritableOutput.
[[nodiscard]] base::Result<void> writeMarksGpx(const std::filesystem::path& path,
                                               std::span<const marks::Mark> marks,
                                               const geo::WaterFrame& frame,
                                               std::string_view waterName);

/// Lines worth sounding as one GPX 1.1 route for each, in the order of the trip.
/// \return unwritableOutput.
[[nodiscard]] base::Result<void> writeLinesGpx(const std::filesystem::path& path,
                                               std::span<const surface::SurveyLine> lines,
                                               const geo::WaterFrame& frame,
                                               std::string_view waterName);

} // namespace outputs
