// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/geo/water_frame.h"
#include "core/marks/told_marks.h"
#include "core/surface/survey_line.h"

#include <filesystem>
#include <string_view>

namespace outputs {

/// The marks as GPX 1.1 waypoints by rank, "1 Section 3": depth, trust and anchors in an extension
/// of our own; cautions, ropes, rods and reasons in the description. Never writes a depth as an
/// elevation. \return unwritableOutput.
[[nodiscard]] base::Result<void> writeMarksGpx(const std::filesystem::path& path,
                                               const marks::ToldMarks& told,
                                               const geo::WaterFrame& frame,
                                               std::string_view waterName);

/// The same for a day that is laid out: waypoints named so that they sort in the order of the day,
/// "01 mark 3 Heron Bay", those that it leaves out after it by rank, and the way of the boat as one
/// route, launch to launch, with turning points between. \return unwritableOutput.
[[nodiscard]] base::Result<void>
writeDayGpx(const std::filesystem::path& path, const marks::ToldMarks& told,
            const marks::DayPlan& day, const geo::WaterFrame& frame, std::string_view waterName);

/// Where to sound next as one GPX 1.1 route to follow: from the launch along each line, "1 start"
/// and "1 end", and back, with turning points on the ways between. \return unwritableOutput.
[[nodiscard]] base::Result<void> writeTripGpx(const std::filesystem::path& path,
                                              const surface::SurveyTrip& trip,
                                              const geo::WaterFrame& frame,
                                              std::string_view waterName);

} // namespace outputs
