// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gdal/raster_file.h"

#include "core/base/whole_file.h"
#include "core/gdal/open_data.h"
#include "core/gdal/session.h"

#include <cmath>
#include <limits>

#include <cpl_string.h>
#include <fmt/format.h>
#include <gdal_priv.h>

namespace gdal {

namespace {

using base::ErrorKind;

base::Result<void> checkSizes(const RasterToWrite& raster) {
    const bool fits = raster.cols > 0 && raster.rows > 0 && raster.cell_m > 0.0 &&
                      raster.values.size() == static_cast<std::size_t>(raster.cols) *
                                                  static_cast<std::size_t>(raster.rows);
    if (!fits) {
        return base::fail(
            ErrorKind::wrongUse, "the grid's values do not fill its columns and rows",
            fmt::format("{} x {} cells, {} values", raster.cols, raster.rows, raster.values.size()),
            "draw the water again");
    }
    return {};
}

bool fill(GDALDataset& dataset, const RasterToWrite& raster) {
    std::array<double, 6> transform{raster.west_m,  raster.cell_m, 0.0,
                                    raster.north_m, 0.0,           -raster.cell_m};
    GDALRasterBand& band = *dataset.GetRasterBand(1);
    bool ok = dataset.SetGeoTransform(transform.data()) == CE_None;
    if (!raster.wkt.empty()) {
        ok = dataset.SetProjection(raster.wkt.c_str()) == CE_None && ok;
    }
    ok = band.SetNoDataValue(static_cast<double>(raster.noData)) == CE_None && ok;
    if (!raster.description.empty()) {
        band.SetDescription(raster.description.c_str());
    }
    std::vector<float> row(static_cast<std::size_t>(raster.cols));
    for (int r = 0; r < raster.rows && ok; ++r) {
        const auto from = static_cast<std::size_t>(r) * row.size();
        for (std::size_t c = 0; c < row.size(); ++c) {
            const float value = raster.values[from + c];
            row[c] = std::isfinite(value) ? value : raster.noData;
        }
        ok = band.RasterIO(GF_Write, 0, r, raster.cols, 1, row.data(), raster.cols, 1, GDT_Float32,
                           0, 0, nullptr) == CE_None;
    }
    return ok;
}

} // namespace

base::Result<void> writeRasterFile(const std::filesystem::path& path, const RasterToWrite& raster) {
    if (auto checked = checkSizes(raster); !checked) {
        return checked;
    }
    const Session session;
    base::PendingFile pending(path);
    const auto failed = [&] {
        return std::unexpected(session.error(ErrorKind::unwritableOutput,
                                             "the grid cannot be written", path.string(),
                                             "check that the folder is there and has room"));
    };
    GDALDriver* driver = GetGDALDriverManager()->GetDriverByName("GTiff");
    if (driver == nullptr) {
        return failed();
    }
    CPLStringList options;
    options.SetNameValue("COMPRESS", "DEFLATE");
    options.SetNameValue("PREDICTOR", "3");
    options.SetNameValue("BIGTIFF", "IF_SAFER");
    GDALDatasetUniquePtr dataset(driver->Create(pending.beside().c_str(), raster.cols, raster.rows,
                                                1, GDT_Float32, options.List()));
    if (!dataset || !fill(*dataset, raster)) {
        dataset.reset();
        return failed();
    }
    dataset.reset(); // Writes what is left; complaints are heard by the session.
    if (session.hasFailed()) {
        return failed();
    }
    return pending.putInPlace();
}

base::Result<Raster> readRasterFile(const std::filesystem::path& path, int mostBands) {
    const Session session;
    const auto opened = openData(path, Holding::raster, session, "it is no raster that can be read",
                                 "give a GeoTIFF, an ASCII grid or the like");
    if (!opened) {
        return std::unexpected(opened.error());
    }
    const GDALDatasetUniquePtr& dataset = *opened;
    Raster raster;
    raster.cols = dataset->GetRasterXSize();
    raster.rows = dataset->GetRasterYSize();
    constexpr double mostCells = 4.0e8;
    if (static_cast<double>(raster.cols) * raster.rows > mostCells) {
        return base::fail(
            ErrorKind::unusableInput,
            fmt::format("it has {} x {} cells, more than can be held", raster.cols, raster.rows),
            path.string(), "cut the part around the water out of it");
    }
    dataset->GetGeoTransform(raster.transform.data());
    raster.wkt = dataset->GetProjectionRef();
    const int bands = std::min(dataset->GetRasterCount(), std::max(mostBands, 1));
    const auto cells =
        static_cast<std::size_t>(raster.cols) * static_cast<std::size_t>(raster.rows);
    for (int b = 1; b <= bands; ++b) {
        GDALRasterBand& band = *dataset->GetRasterBand(b);
        std::vector<float> values(cells);
        if (band.RasterIO(GF_Read, 0, 0, raster.cols, raster.rows, values.data(), raster.cols,
                          raster.rows, GDT_Float32, 0, 0, nullptr) != CE_None) {
            return std::unexpected(session.error(ErrorKind::unusableInput,
                                                 "the raster breaks off or is damaged",
                                                 path.string(), "get a whole copy of it"));
        }
        int hasNoData = FALSE;
        const auto noData = static_cast<float>(band.GetNoDataValue(&hasNoData));
        for (float& value : values) {
            if (hasNoData != FALSE && value == noData) {
                value = std::numeric_limits<float>::quiet_NaN();
            }
        }
        raster.bands.push_back(std::move(values));
    }
    return raster;
}

} // namespace gdal
