// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gdal/open_data.h"

#include "core/base/readable_file.h"

#include <array>

namespace gdal {

namespace {

// GDAL's short names. Left out on purpose: VRT and everything else that names other files, servers
// and databases, documents that carry scripts, and what nobody has of a lake.
constexpr std::array<const char*, 18> vectorDrivers{
    "GeoJSON", "GeoJSONSeq", "TopoJSON", "ESRI Shapefile", "GPKG",     "GML", "KML",     "LIBKML",
    "GPX",     "FlatGeobuf", "DXF",      "MapInfo File",   "ESRIJSON", "S57", "OGR_GMT", "CSV",
    "CAD",     nullptr};
constexpr std::array<const char*, 23> rasterDrivers{
    "GTiff", "AAIGrid", "GSAG", "GSBG",    "GS7BG", "EHdr", "ENVI", "SRTMHGT",
    "XYZ",   "USGSDEM", "DTED", "netCDF",  "GPKG",  "PNG",  "JPEG", "JP2OpenJPEG",
    "WEBP",  "GIF",     "BMP",  "MBTiles", "ISG",   "PNM",  nullptr};

} // namespace

base::Result<GDALDatasetUniquePtr> openData(const std::filesystem::path& path, Holding holding,
                                            const Session& session, const std::string& what,
                                            const std::string& whatToDo) {
    if (auto size = base::sizeOfReadableFile(path); !size) {
        return std::unexpected(std::move(size.error()));
    }
    const bool isVector = holding == Holding::vectors;
    const unsigned kind = isVector ? GDAL_OF_VECTOR : GDAL_OF_RASTER;
    // An absolute path begins with a slash and is a file: nothing in it can be taken for a prefix.
    std::error_code fault;
    const std::filesystem::path whole = std::filesystem::absolute(path, fault);
    GDALDatasetUniquePtr dataset(
        GDALDataset::Open(whole.c_str(), kind | GDAL_OF_READONLY | GDAL_OF_VERBOSE_ERROR,
                          isVector ? vectorDrivers.data() : rasterDrivers.data()));
    if (!dataset || (!isVector && dataset->GetRasterCount() < 1)) {
        return std::unexpected(
            session.error(base::ErrorKind::unusableInput, what, path.string(), whatToDo));
    }
    return dataset;
}

} // namespace gdal
