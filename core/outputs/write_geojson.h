// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/contours/band.h"
#include "core/contours/contour.h"
#include "core/geo/water_frame.h"
#include "core/sections/section.h"
#include "core/structure/zone.h"
#include "core/water/questions/section_use.h"

#include <filesystem>
#include <span>
#include <string_view>

namespace outputs {

/// Each writes one GeoJSON file after RFC 7946: WGS 84, longitude first, seven decimals, outer
/// rings counter-clockwise and islands clockwise, first position repeated at the end. Depths are
/// properties, never a third coordinate. \return unwritableOutput.

/// One feature for each piece of water, with property `name`.
[[nodiscard]] base::Result<void> writeShorelineGeojson(const std::filesystem::path& path,
                                                       std::span<const geo::LonLatPiece> shoreline,
                                                       std::string_view name);
/// Lines with property `depth_m`.
[[nodiscard]] base::Result<void> writeContoursGeojson(const std::filesystem::path& path,
                                                      std::span<const contours::Contour> contours,
                                                      const geo::WaterFrame& frame);
/// Areas with `from_m` and `to_m`, which is null for the last band.
[[nodiscard]] base::Result<void> writeBandsGeojson(const std::filesystem::path& path,
                                                   std::span<const contours::BandPolygons> bands,
                                                   const geo::WaterFrame& frame);
/// Areas with `kind`, `name`, `area_m2`, `shallowest_m`, `deepest_m`, `edge_m` (null for kinds
/// without a top edge), `trust_m`.
[[nodiscard]] base::Result<void> writeZonesGeojson(const std::filesystem::path& path,
                                                   std::span<const structure::Zone> zones,
                                                   const geo::WaterFrame& frame);
/// Areas with `name`, `area_m2`, `mean_depth_m`, `max_depth_m`, `shoreline_m`, `drop_off_m`,
/// `weed_share`, `trust_sounded`, `trust_inferred`, `trust_guess` (shares), and, where `uses` has
/// one entry for each section, `stays` and `never_fished`.
[[nodiscard]] base::Result<void> writeSectionsGeojson(const std::filesystem::path& path,
                                                      std::span<const sections::Section> sections,
                                                      std::span<const water::SectionUse> uses,
                                                      const geo::WaterFrame& frame);

} // namespace outputs
