// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gdal/trace.h"

#include "core/base/number_text.h"
#include "core/gdal/session.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include <cpl_string.h>
#include <fmt/format.h>
#include <gdal_alg.h>
#include <gdal_priv.h>
#include <ogrsf_frmts.h>

namespace gdal {

namespace {

using base::ErrorKind;

int CPL_STDCALL toldToProgress(double share, const char* /*message*/, void* progress) {
    auto& told = *static_cast<base::Progress*>(progress);
    told.tell(share);
    return told.stopAsked() ? FALSE : TRUE;
}

base::Result<void> checkField(const TraceField& field) {
    const bool fits = field.cols > 0 && field.rows > 0 && field.cell_m > 0.0 &&
                      field.values.size() == static_cast<std::size_t>(field.cols) *
                                                 static_cast<std::size_t>(field.rows);
    if (!fits) {
        return base::fail(
            ErrorKind::wrongUse, "the grid's values do not fill its columns and rows",
            fmt::format("{} x {} cells, {} values", field.cols, field.rows, field.values.size()),
            "draw the water again");
    }
    return {};
}

std::vector<double> inOrder(std::span<const double> levels) {
    std::vector<double> sorted(levels.begin(), levels.end());
    std::erase_if(sorted, [](double level) { return !std::isfinite(level); });
    std::sort(sorted.begin(), sorted.end());
    sorted.erase(std::unique(sorted.begin(), sorted.end()), sorted.end());
    return sorted;
}

/// The field as a raster in memory.
GDALDatasetUniquePtr rasterOf(const TraceField& field) {
    GDALDriver* driver = GetGDALDriverManager()->GetDriverByName("MEM");
    GDALDatasetUniquePtr raster(
        driver == nullptr ? nullptr
                          : driver->Create("", field.cols, field.rows, 1, GDT_Float32, nullptr));
    if (!raster) {
        return nullptr;
    }
    std::array<double, 6> transform{field.west_m,  field.cell_m, 0.0,
                                    field.north_m, 0.0,          -field.cell_m};
    raster->SetGeoTransform(transform.data());
    std::vector<float> row(static_cast<std::size_t>(field.cols));
    for (int r = 0; r < field.rows; ++r) {
        std::copy_n(field.values.begin() + static_cast<std::ptrdiff_t>(r) * field.cols, field.cols,
                    row.begin());
        if (raster->GetRasterBand(1)->RasterIO(GF_Write, 0, r, field.cols, 1, row.data(),
                                               field.cols, 1, GDT_Float32, 0, 0,
                                               nullptr) != CE_None) {
            return nullptr;
        }
    }
    return raster;
}

constexpr int idField = 0;
constexpr int lowField = 1;
constexpr int highField = 2;

/// A place in memory for what is traced.
GDALDatasetUniquePtr emptyLayer() {
    GDALDriver* driver = GetGDALDriverManager()->GetDriverByName("Memory");
    GDALDatasetUniquePtr store(
        driver == nullptr ? nullptr : driver->Create("", 0, 0, 0, GDT_Unknown, nullptr));
    OGRLayer* layer = store ? store->CreateLayer("traced", nullptr, wkbUnknown) : nullptr;
    if (layer == nullptr) {
        return nullptr;
    }
    OGRFieldDefn id("id", OFTInteger);
    OGRFieldDefn low("low", OFTReal);
    OGRFieldDefn high("high", OFTReal);
    layer->CreateField(&id);
    layer->CreateField(&low);
    layer->CreateField(&high);
    return store;
}

/// Runs GDAL's marching squares; the layer's features are what came of it.
base::Result<GDALDatasetUniquePtr> traced(const TraceField& field,
                                          const std::vector<double>& levels, bool asPolygons,
                                          base::Progress& progress) {
    const Session session;
    GDALDatasetUniquePtr raster = rasterOf(field);
    GDALDatasetUniquePtr store = emptyLayer();
    const auto failed = [&] {
        return std::unexpected(session.error(ErrorKind::unusableInput,
                                             "the contours cannot be traced", "",
                                             "draw the water "
                                             "again"));
    };
    if (!raster || !store) {
        return failed();
    }
    std::string list;
    for (const double level : levels) {
        list += (list.empty() ? "" : ",") + base::exactText(level);
    }
    CPLStringList options;
    options.SetNameValue("FIXED_LEVELS", list.c_str());
    options.SetNameValue("ID_FIELD", std::to_string(idField).c_str());
    if (asPolygons) {
        options.SetNameValue("POLYGONIZE", "YES");
        options.SetNameValue("ELEV_FIELD_MIN", std::to_string(lowField).c_str());
        options.SetNameValue("ELEV_FIELD_MAX", std::to_string(highField).c_str());
    } else {
        options.SetNameValue("ELEV_FIELD", std::to_string(lowField).c_str());
    }
    const CPLErr fault = GDALContourGenerateEx(GDALRasterBand::ToHandle(raster->GetRasterBand(1)),
                                               OGRLayer::ToHandle(store->GetLayer(0)),
                                               options.List(), toldToProgress, &progress);
    if (progress.stopAsked()) {
        return std::unexpected(base::cancelled());
    }
    if (fault != CE_None) {
        return failed();
    }
    return store;
}

geo::Path pathOf(const OGRSimpleCurve& line) {
    geo::Path path;
    for (const OGRPoint& point : line) {
        const geo::WaterPoint p{point.getX(), point.getY()};
        if (path.empty() || !(path.back() == p)) {
            path.push_back(p);
        }
    }
    return path;
}

/// The ring without its repeated end, running the way asked for.
geo::Ring ringOf(const OGRLinearRing& line, bool counterClockwise) {
    geo::Ring ring = pathOf(line);
    while (ring.size() > 1 && ring.front() == ring.back()) {
        ring.pop_back();
    }
    if (ring.size() >= 3 && (geo::signedArea_m2(ring) > 0.0) != counterClockwise) {
        std::reverse(ring.begin(), ring.end());
    }
    return ring;
}

void takePieces(const OGRGeometry& geometry, std::vector<geo::Piece>& pieces) {
    if (wkbFlatten(geometry.getGeometryType()) == wkbMultiPolygon) {
        for (const OGRPolygon* polygon : *geometry.toMultiPolygon()) {
            takePieces(*polygon, pieces);
        }
        return;
    }
    if (wkbFlatten(geometry.getGeometryType()) != wkbPolygon) {
        return;
    }
    geo::Piece piece;
    for (const OGRLinearRing* line : *geometry.toPolygon()) {
        const bool isOuter = piece.outer.empty();
        geo::Ring ring = ringOf(*line, isOuter);
        if (ring.size() < 3) {
            if (isOuter) {
                return;
            }
            continue;
        }
        if (isOuter) {
            piece.outer = std::move(ring);
        } else {
            piece.islands.push_back(std::move(ring));
        }
    }
    if (!piece.outer.empty()) {
        pieces.push_back(std::move(piece));
    }
}

/// Position of the level, which went through text, among `levels`.
std::optional<std::size_t> positionOf(double level, const std::vector<double>& levels) {
    for (std::size_t i = 0; i < levels.size(); ++i) {
        if (std::fabs(levels[i] - level) <= 1e-9 * std::fmax(1.0, std::fabs(level))) {
            return i;
        }
    }
    return std::nullopt;
}

} // namespace

base::Result<std::vector<TracedLine>>
traceLines(const TraceField& field, std::span<const double> levels, base::Progress& progress) {
    if (auto checked = checkField(field); !checked) {
        return std::unexpected(checked.error());
    }
    const std::vector<double> sorted = inOrder(levels);
    std::vector<TracedLine> lines;
    if (sorted.empty()) {
        return lines;
    }
    const auto store = traced(field, sorted, false, progress);
    if (!store) {
        return std::unexpected(store.error());
    }
    for (const auto& feature : *(*store)->GetLayer(0)) {
        const OGRGeometry* geometry = feature->GetGeometryRef();
        const auto at = positionOf(feature->GetFieldAsDouble(lowField), sorted);
        if (geometry == nullptr || !at ||
            wkbFlatten(geometry->getGeometryType()) != wkbLineString) {
            continue;
        }
        TracedLine line{sorted[*at], pathOf(*geometry->toLineString()), false};
        line.closed = line.path.size() > 3 && line.path.front() == line.path.back();
        if (line.path.size() > 1) {
            lines.push_back(std::move(line));
        }
    }
    std::stable_sort(lines.begin(), lines.end(),
                     [](const TracedLine& a, const TracedLine& b) { return a.level < b.level; });
    return lines;
}

base::Result<std::vector<TracedPolygon>>
tracePolygons(const TraceField& field, std::span<const double> levels, base::Progress& progress) {
    if (auto checked = checkField(field); !checked) {
        return std::unexpected(checked.error());
    }
    const std::vector<double> sorted = inOrder(levels);
    std::vector<TracedPolygon> polygons;
    if (sorted.size() < 2) {
        return polygons;
    }
    for (std::size_t i = 0; i + 1 < sorted.size(); ++i) {
        polygons.push_back({sorted[i], sorted[i + 1], {}});
    }
    const auto store = traced(field, sorted, true, progress);
    if (!store) {
        return std::unexpected(store.error());
    }
    for (const auto& feature : *(*store)->GetLayer(0)) {
        const OGRGeometry* geometry = feature->GetGeometryRef();
        const auto low = positionOf(feature->GetFieldAsDouble(lowField), sorted);
        const auto high = positionOf(feature->GetFieldAsDouble(highField), sorted);
        if (geometry != nullptr && low && high && *high == *low + 1) {
            takePieces(*geometry, polygons[*low].pieces);
        }
    }
    return polygons;
}

} // namespace gdal
