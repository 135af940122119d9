// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/geo/lon_lat.h"

#include <cstddef>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace gdal {

/// What one field of one feature holds: nothing, a number, or text (times as ISO 8601).
using FieldValue = std::variant<std::monostate, double, std::string>;

/// A place with the third coordinate where the file gives one.
struct PlaceWithZ {
    geo::LonLat place;
    std::optional<double> z;
};

/// One thing of a vector file as plain values in WGS 84, east before north. Collections are taken
/// apart into their points, lines and pieces; curves become short straight steps.
struct Feature {
    std::size_t number = 0; ///< Counted from 1 in reading order.
    std::vector<PlaceWithZ> points;
    std::vector<std::vector<PlaceWithZ>> lines;
    std::vector<geo::LonLatPiece> pieces;
    std::vector<FieldValue> values; ///< One for each of the layer's fields, in their order.
    bool offEarth = false;          ///< Some coordinate could not be brought to the Earth.
};

struct Layer {
    std::string name;
    std::vector<std::string> fields;
    std::optional<std::size_t> featureCount; ///< Where the file can tell without being read.
    bool hasReferenceSystem = false;
};

/// A vector file of any kind that GDAL reads: shapefile, GeoPackage, GeoJSON, KML, DXF... Read from
/// front to end, one feature at a time. Not for several threads at once.
class VectorSource {
public:
    /// \param epsg number of the reference system that the coordinates are in, over what the file
    /// itself says. \return unusableInput where the file is not there, is no vector file, or has no
    /// layer.
    [[nodiscard]] static base::Result<VectorSource> open(const std::filesystem::path& path,
                                                         std::optional<int> epsg = std::nullopt);
    ~VectorSource();
    VectorSource(VectorSource&&) noexcept;
    VectorSource& operator=(VectorSource&&) noexcept;
    VectorSource(const VectorSource&) = delete;
    VectorSource& operator=(const VectorSource&) = delete;

    /// Short name of the format: "GeoJSON", "GPKG", "ESRI Shapefile".
    [[nodiscard]] const std::string& format() const;
    [[nodiscard]] const std::vector<Layer>& layers() const;
    /// Calls `take` for every feature of a layer until it gives false.
    /// \return unusableInput where the file breaks off, cancelled where `progress` says so.
    [[nodiscard]] base::Result<void> forEach(std::size_t layer,
                                             const std::function<bool(const Feature&)>& take,
                                             base::Progress& progress);

private:
    struct Inside;
    explicit VectorSource(std::unique_ptr<Inside> inside);
    std::unique_ptr<Inside> inside_;
};

} // namespace gdal
