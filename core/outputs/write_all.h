// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/marks/told_marks.h"
#include "core/water/document/derived.h"
#include "core/water/document/water.h"

#include <filesystem>

namespace outputs {

/// Writes the water in open formats into `folder`, which is made where it is not there: depth.tif,
/// trust.tif, soundings.csv, soundings-b12.geojson, soundings-b12.csv, shoreline.geojson,
/// contours.geojson, bands.geojson, hypsography.csv, zones.geojson, sections.geojson, marks.gpx,
/// log.csv; all depths below chart level. What has not been derived gives no file; an older file of
/// that name is left. Each file appears whole or not at all. \return unwritableOutput, cancelled,
/// wrongUse for a water without a frame.
[[nodiscard]] base::Result<void> writeAll(const water::Water& water, const water::Derived& derived,
                                          const marks::ToldMarks& told,
                                          const std::filesystem::path& folder,
                                          base::Progress& progress);

} // namespace outputs
