// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/water_frame.h"
#include "core/store/connection.h"
#include "core/store/geometry_blob.h"

#include <cstdint>
#include <string_view>

namespace store {

/// What the OGC GeoPackage Encoding Standard 1.3 (12-128r17) asks of every file.
inline constexpr std::int64_t geoPackageId = 0x47504B47; ///< "GPKG", application_id.
inline constexpr std::int64_t geoPackageVersion = 10300; ///< user_version.

/// Reference system of all features.
inline constexpr std::int64_t wgs84Srs = 4326;
/// Reference system of the grids: the water's own frame. Ours; above every EPSG number.
inline constexpr std::int64_t frameSrs = 900001;

/// Marks the file as a GeoPackage and makes the tables that the standard prescribes.
void layGeoPackage(Connection& connection);

/// Makes the table known as a layer of features in WGS 84, geometry column `geom`.
/// \param type POINT, LINESTRING, POLYGON, MULTIPOLYGON.
void registerFeatures(Connection& connection, std::string_view table, std::string_view type,
                      std::string_view description);
/// Makes the table known as one without geometry.
void registerAttributes(Connection& connection, std::string_view table,
                        std::string_view description);

/// Writes the box of a layer and the time of its change into the table of contents.
void setExtent(Connection& connection, std::string_view table, const LonLatBox& box);
/// The time of change alone.
void setChanged(Connection& connection, std::string_view table);

/// Describes the water's frame among the reference systems.
void setFrame(Connection& connection, const geo::WaterFrame& frame);

} // namespace store
