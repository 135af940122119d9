// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/marks/told_marks.h"
#include "core/water/document/derived.h"
#include "core/water/document/water.h"

#include <array>
#include <filesystem>
#include <string_view>

namespace outputs {

/// All files that a water can be given away in.
inline constexpr std::array<std::string_view, 14> givenNames{
    "depth.tif",         "trust.tif",         "soundings.csv",    "soundings-b12.geojson",
    "soundings-b12.csv", "shoreline.geojson", "contours.geojson", "bands.geojson",
    "hypsography.csv",   "zones.geojson",     "sections.geojson", "marks.gpx",
    "log.csv",           "read-me.txt"};
/// The one that stands in a folder only where all others are whole.
inline constexpr std::string_view lastGiven = "read-me.txt";

/// Writes the water in open formats into `folder`, which is made where it is not there; all depths
/// below chart level. What has not been derived gives no file, and an older file of that name goes.
/// All files appear together or none does (base::PendingFolder); others in the folder stay.
/// \return unwritableOutput, cancelled, wrongUse for a water without a frame.
[[nodiscard]] base::Result<void> writeAll(const water::Water& water, const water::Derived& derived,
                                          const marks::ToldMarks& told,
                                          const std::filesystem::path& folder,
                                          base::Progress& progress);

} // namespace outputs
