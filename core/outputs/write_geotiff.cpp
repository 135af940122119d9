// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/outputs/write_geotiff.h"

#include "core/gdal/raster_file.h"
#include "core/outputs/not_for_navigation.h"

#include <utility>

namespace outputs {

namespace {

base::Result<void> writeGrid(const std::filesystem::path& path, const grid::GridFrame& cells,
                             std::span<const float> values, const geo::WaterFrame& frame,
                             std::string description) {
    gdal::RasterToWrite raster;
    raster.west_m = cells.west_m();
    raster.north_m = cells.north_m();
    raster.cell_m = cells.cell_m();
    raster.cols = cells.cols();
    raster.rows = cells.rows();
    raster.values = values;
    raster.wkt = frame.wkt();
    raster.description = std::move(description) + ". " + std::string(notForNavigation);
    return gdal::writeRasterFile(path, raster);
}

} // namespace

base::Result<void> writeDepthGeotiff(const std::filesystem::path& path,
                                     const grid::DepthGrid& depth, const geo::WaterFrame& frame) {
    return writeGrid(path, depth.frame(), depth.raw_m(), frame,
                     "depth below chart level, metres, positive down");
}

base::Result<void> writeTrustGeotiff(const std::filesystem::path& path,
                                     const surface::TrustGrid& trust,
                                     const geo::WaterFrame& frame) {
    return writeGrid(path, trust.frame(), trust.halfWidths_m().values(), frame,
                     "half-width of the 95 % band round the depth, metres");
}

base::Result<void> writeRiseGeotiff(const std::filesystem::path& path,
                                    const surface::BottomChange& change,
                                    const geo::WaterFrame& frame) {
    return writeGrid(path, change.rise_m.frame(), change.rise_m.values(), frame,
                     "rise of the bottom since the earlier survey, metres");
}

base::Result<void> writeRiseTrustGeotiff(const std::filesystem::path& path,
                                         const surface::BottomChange& change,
                                         const geo::WaterFrame& frame) {
    return writeGrid(path, change.halfWidth_m.frame(), change.halfWidth_m.values(), frame,
                     "half-width of the 95 % band round the rise of the bottom, metres");
}

} // namespace outputs
