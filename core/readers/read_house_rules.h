// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/logbook/house_rules.h"

#include <filesystem>

namespace readers {

/// The fishery's rules from JSON; every entry may be missing: "rods_per_boat" number, "season"
/// {"from": "MM-DD", "to": "MM-DD"}, "closed_waters" [{"name", "reason", "geometry": a GeoJSON
/// Polygon or MultiPolygon}], "species" [{"name", "keep", "least_length_mm", "note"}], "notes"
/// [text]. What is said of species becomes notes. \return unusableInput where the text is no JSON
/// or an entry makes no sense (`where` names it).
[[nodiscard]] base::Result<logbook::HouseRules> readHouseRules(const std::filesystem::path& path);

} // namespace readers
