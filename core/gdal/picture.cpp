// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gdal/picture.h"

#include "core/gdal/open_data.h"
#include "core/gdal/session.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <memory>

#include <cpl_string.h>
#include <fmt/format.h>
#include <gdal_alg.h>
#include <gdal_priv.h>
#include <gdal_utils.h>
#include <ogr_spatialref.h>

namespace gdal {

namespace {

using base::ErrorKind;

constexpr double mostPixels = 64.0e6;
/// From so many pixels of the file for one of the window on, one of them stands for all: to mix
/// them would mean to read the whole file.
constexpr double pickOneFrom = 64.0;
constexpr int edgeSteps = 8;

struct CloseDataset {
    void operator()(void* dataset) const { GDALClose(dataset); }
};
using Dataset = std::unique_ptr<void, CloseDataset>;

bool hasReferenceSystem(GDALDataset& dataset) {
    return dataset.GetSpatialRef() != nullptr || dataset.GetGCPSpatialRef() != nullptr;
}

base::Result<GDALDatasetUniquePtr> openPicture(const std::filesystem::path& path,
                                               const Session& session) {
    auto opened = openData(path, Holding::raster, session, "it is no picture that can be read",
                           "give a GeoTIFF, a JPEG with its world file or the like");
    if (!opened) {
        return opened;
    }
    GDALDatasetUniquePtr& dataset = *opened;
    std::array<double, 6> transform{};
    const bool hasPlace =
        dataset->GetGeoTransform(transform.data()) == CE_None || dataset->GetGCPCount() >= 3;
    if (!hasPlace) {
        return base::fail(ErrorKind::unusableInput,
                          "the picture does not say where on the Earth it lies", path.string(),
                          "give a georeferenced one: a GeoTIFF, or its world file beside it");
    }
    if (!hasReferenceSystem(*dataset)) {
        return base::fail(ErrorKind::unusableInput,
                          "the picture has coordinates but does not say of which reference system",
                          path.string(), "put its .prj file beside it, or save it as GeoTIFF");
    }
    return opened;
}

/// The least and greatest value of a band, looked for in a sample of it.
std::array<double, 2> rangeOf(GDALRasterBand& band) {
    std::array<double, 2> range{0.0, 0.0};
    if (GDALComputeRasterMinMax(&band, TRUE, range.data()) != CE_None || !(range[1] > range[0])) {
        range = {0.0, 255.0};
    }
    return range;
}

CPLStringList asBytes(GDALDataset& dataset) {
    CPLStringList options;
    const auto add = [&options](const std::string& word) { options.AddString(word.c_str()); };
    add("-of");
    add("VRT");
    if (dataset.GetRasterBand(1)->GetColorInterpretation() == GCI_PaletteIndex) {
        add("-expand");
        add("rgba");
        return options;
    }
    const int count = dataset.GetRasterCount();
    const int colours = count >= 3 ? 3 : 1;
    int alpha = 0;
    for (int b = colours + 1; b <= count; ++b) {
        if (dataset.GetRasterBand(b)->GetColorInterpretation() == GCI_AlphaBand) {
            alpha = b;
        }
    }
    for (int b = 1; b <= colours; ++b) {
        add("-b");
        add(std::to_string(b));
    }
    if (alpha > 0) {
        add("-b");
        add(std::to_string(alpha));
    }
    if (dataset.GetRasterBand(1)->GetRasterDataType() != GDT_Byte) {
        add("-ot");
        add("Byte");
        for (int b = 1; b <= colours; ++b) {
            const auto range = rangeOf(*dataset.GetRasterBand(b));
            for (const std::string& word :
                 {fmt::format("-scale_{}", b), fmt::format("{:.9g}", range[0]),
                  fmt::format("{:.9g}", range[1]), std::string("1"), std::string("255")}) {
                add(word);
            }
        }
        add("-a_nodata"); // A band's own value for nothing is one of its 256 now.
        add("0");
    }
    return options;
}

int tellProgress(double share, const char* message, void* data) {
    static_cast<void>(message);
    auto& progress = *static_cast<base::Progress*>(data);
    progress.tell(share);
    return progress.stopAsked() ? FALSE : TRUE;
}

CPLStringList warping(const PictureWindow& window, const std::string& wkt, bool isPickingOne) {
    CPLStringList options;
    const auto number = [](double value) { return fmt::format("{:.6f}", value); };
    for (const std::string& word :
         {std::string("-of"), std::string("MEM"), std::string("-t_srs"), wkt, std::string("-te"),
          number(window.west_m), number(window.north_m - window.rows * window.pixel_m),
          number(window.west_m + window.cols * window.pixel_m), number(window.north_m),
          std::string("-ts"), std::to_string(window.cols), std::to_string(window.rows),
          std::string("-dstalpha"), std::string("-r"),
          std::string(isPickingOne ? "near" : "bilinear")}) {
        options.AddString(word.c_str());
    }
    return options;
}

std::vector<std::uint8_t> bandOf(GDALDataset& dataset, int band) {
    const int cols = dataset.GetRasterXSize();
    const int rows = dataset.GetRasterYSize();
    std::vector<std::uint8_t> values(static_cast<std::size_t>(cols) *
                                     static_cast<std::size_t>(rows));
    if (dataset.GetRasterBand(band)->RasterIO(GF_Read, 0, 0, cols, rows, values.data(), cols, rows,
                                              GDT_Byte, 0, 0, nullptr) != CE_None) {
        values.clear();
    }
    return values;
}

std::vector<std::uint32_t> coloursOf(GDALDataset& warped) {
    const int count = warped.GetRasterCount(); // grey and alpha, or red, green, blue and alpha
    const bool isGrey = count < 4;
    const auto red = bandOf(warped, 1);
    const auto green = isGrey ? red : bandOf(warped, 2);
    const auto blue = isGrey ? red : bandOf(warped, 3);
    const auto alpha = bandOf(warped, count);
    std::vector<std::uint32_t> argb;
    if (red.empty() || green.size() != red.size() || blue.size() != red.size() ||
        alpha.size() != red.size()) {
        return argb;
    }
    argb.reserve(red.size());
    for (std::size_t i = 0; i < red.size(); ++i) {
        argb.push_back(static_cast<std::uint32_t>(alpha[i]) << 24U |
                       static_cast<std::uint32_t>(red[i]) << 16U |
                       static_cast<std::uint32_t>(green[i]) << 8U |
                       static_cast<std::uint32_t>(blue[i]));
    }
    return argb;
}

/// Pixels of the file for one of the window, as far as the edges tell.
double pixelsForOne(GDALDataset& dataset, const PictureWindow& window, const std::string& wkt) {
    CPLStringList options;
    options.SetNameValue("DST_SRS", wkt.c_str());
    void* transformer = GDALCreateGenImgProjTransformer2(static_cast<GDALDatasetH>(&dataset),
                                                         nullptr, options.List());
    if (transformer == nullptr) {
        return 1.0;
    }
    const double right = window.west_m + window.cols * window.pixel_m;
    std::array<double, 2> x{window.west_m, right};
    std::array<double, 2> y{window.north_m, window.north_m};
    std::array<double, 2> z{0.0, 0.0};
    std::array<int, 2> ok{0, 0};
    GDALGenImgProjTransform(transformer, TRUE, 2, x.data(), y.data(), z.data(), ok.data());
    GDALDestroyGenImgProjTransformer(transformer);
    if (ok[0] == FALSE || ok[1] == FALSE) {
        return 1.0;
    }
    const double along = std::hypot(x[1] - x[0], y[1] - y[0]) / window.cols;
    return along * along;
}

base::Result<void> checkWindow(const PictureWindow& window) {
    if (window.cols < 1 || window.rows < 1 || !(window.pixel_m > 0.0) ||
        static_cast<double>(window.cols) * window.rows > mostPixels) {
        return base::fail(ErrorKind::wrongUse, "the window has no pixels, or too many",
                          fmt::format("{} x {}", window.cols, window.rows),
                          "ask for what can be seen");
    }
    return {};
}

} // namespace

base::Result<std::vector<geo::LonLat>> pictureEdge(const std::filesystem::path& path) {
    const Session session;
    const auto dataset = openPicture(path, session);
    if (!dataset) {
        return std::unexpected(dataset.error());
    }
    std::vector<double> x;
    std::vector<double> y;
    const double cols = (*dataset)->GetRasterXSize();
    const double rows = (*dataset)->GetRasterYSize();
    const std::array<std::array<double, 2>, 5> corners{
        {{0.0, 0.0}, {cols, 0.0}, {cols, rows}, {0.0, rows}, {0.0, 0.0}}};
    for (std::size_t side = 0; side < 4; ++side) {
        for (int k = 0; k < edgeSteps; ++k) {
            const double t = static_cast<double>(k) / edgeSteps;
            x.push_back(corners[side][0] + t * (corners[side + 1][0] - corners[side][0]));
            y.push_back(corners[side][1] + t * (corners[side + 1][1] - corners[side][1]));
        }
    }
    CPLStringList options;
    options.SetNameValue("DST_SRS", SRS_WKT_WGS84_LAT_LONG);
    void* transformer = GDALCreateGenImgProjTransformer2(static_cast<GDALDatasetH>(dataset->get()),
                                                         nullptr, options.List());
    std::vector<double> z(x.size(), 0.0);
    std::vector<int> ok(x.size(), FALSE);
    if (transformer != nullptr) {
        GDALGenImgProjTransform(transformer, FALSE, static_cast<int>(x.size()), x.data(), y.data(),
                                z.data(), ok.data());
        GDALDestroyGenImgProjTransformer(transformer);
    }
    std::vector<geo::LonLat> edge;
    for (std::size_t i = 0; i < x.size(); ++i) {
        const geo::LonLat place{x[i], y[i]};
        if (ok[i] != FALSE && geo::isOnEarth(place)) {
            edge.push_back(place);
        }
    }
    if (edge.size() < 3) {
        return std::unexpected(session.error(ErrorKind::unusableInput,
                                             "the picture's place on the Earth cannot be told",
                                             path.string(), "save it as GeoTIFF in WGS 84"));
    }
    return edge;
}

base::Result<Picture> readPicture(const std::filesystem::path& path, const PictureWindow& window,
                                  const std::string& wkt, base::Progress& progress) {
    if (const auto checked = checkWindow(window); !checked) {
        return std::unexpected(checked.error());
    }
    const Session session;
    const auto dataset = openPicture(path, session);
    if (!dataset) {
        return std::unexpected(dataset.error());
    }
    const auto failed = [&] {
        return std::unexpected(session.error(ErrorKind::unusableInput,
                                             "the picture breaks off or is damaged", path.string(),
                                             "get a whole copy of it"));
    };
    GDALTranslateOptions* bytes = GDALTranslateOptionsNew(asBytes(**dataset).List(), nullptr);
    const Dataset asWanted(
        GDALTranslate("", static_cast<GDALDatasetH>(dataset->get()), bytes, nullptr));
    GDALTranslateOptionsFree(bytes);
    if (!asWanted) {
        return failed();
    }
    const bool isPickingOne = pixelsForOne(**dataset, window, wkt) > pickOneFrom;
    GDALWarpAppOptions* warp =
        GDALWarpAppOptionsNew(warping(window, wkt, isPickingOne).List(), nullptr);
    GDALWarpAppOptionsSetProgress(warp, tellProgress, &progress);
    std::array<GDALDatasetH, 1> sources{asWanted.get()};
    const Dataset warped(GDALWarp("", nullptr, 1, sources.data(), warp, nullptr));
    GDALWarpAppOptionsFree(warp);
    if (progress.stopAsked()) {
        return std::unexpected(base::cancelled());
    }
    if (!warped) {
        return failed();
    }
    Picture picture{window, coloursOf(*GDALDataset::FromHandle(warped.get()))};
    if (picture.argb.empty()) {
        return failed();
    }
    return picture;
}

} // namespace gdal
