// SPDX-License-Identifier: GPL-3.0-or-later
// Draws one case of the gridding bench: bench_case CASE_FOLDER DEPTH.tif TRUST.tif [CELL_M]
#include "core/gdal/raster_file.h"
#include "core/surface/draw_water.h"

#include <cmath>
#include <cstdio>
#include <fstream>
#include <string>

#include <fmt/format.h>
#include <nlohmann/json.hpp>

namespace {

geo::LonLatRing ringFrom(const nlohmann::json& ring) {
    geo::LonLatRing places;
    for (const nlohmann::json& place : ring) {
        places.push_back({place.at(0).get<double>(), place.at(1).get<double>()});
    }
    if (places.size() > 1 && places.front() == places.back()) {
        places.pop_back();
    }
    return places;
}

void addPolygon(const nlohmann::json& polygon, std::vector<geo::LonLatPiece>& pieces) {
    geo::LonLatPiece piece;
    for (std::size_t k = 0; k < polygon.size(); ++k) {
        if (k == 0) {
            piece.outer = ringFrom(polygon[k]);
        } else {
            piece.islands.push_back(ringFrom(polygon[k]));
        }
    }
    pieces.push_back(std::move(piece));
}

std::vector<geo::LonLatPiece> shoreFrom(const std::string& path) {
    std::ifstream file(path);
    const nlohmann::json json = nlohmann::json::parse(file);
    std::vector<geo::LonLatPiece> pieces;
    for (const nlohmann::json& feature : json.at("features")) {
        const nlohmann::json& geometry = feature.at("geometry");
        if (geometry.at("type") == "Polygon") {
            addPolygon(geometry.at("coordinates"), pieces);
        } else {
            for (const nlohmann::json& polygon : geometry.at("coordinates")) {
                addPolygon(polygon, pieces);
            }
        }
    }
    return pieces;
}

/// Columns lon, lat, depth_m; a new pass where the track jumps by more than 30 m.
std::vector<soundings::KeptSounding> soundingsFrom(const std::string& path,
                                                   const geo::WaterFrame& frame) {
    std::ifstream file(path);
    std::string line;
    std::getline(file, line);
    std::vector<soundings::KeptSounding> soundings;
    while (std::getline(file, line)) {
        soundings::KeptSounding s;
        if (std::sscanf(line.c_str(), "%lf,%lf,%lf", &s.place.lon_deg, &s.place.lat_deg,
                        &s.depth_m) != 3) {
            continue;
        }
        const geo::WaterPoint p = frame.toWater(s.place);
        s.x_m = p.x_m;
        s.y_m = p.y_m;
        if (!soundings.empty()) {
            const soundings::KeptSounding& last = soundings.back();
            s.pass = last.pass + (std::hypot(s.x_m - last.x_m, s.y_m - last.y_m) > 30.0 ? 1 : 0);
        }
        soundings.push_back(s);
    }
    return soundings;
}

int failed(const base::Error& error) {
    fmt::print(stderr, "{}\n", error.sentence());
    return 1;
}

base::Result<void> writeGrid(const std::string& path, const grid::GridFrame& frame,
                             const std::vector<float>& values, const geo::WaterFrame& water) {
    gdal::RasterToWrite raster;
    raster.west_m = frame.west_m();
    raster.north_m = frame.north_m();
    raster.cell_m = frame.cell_m();
    raster.cols = frame.cols();
    raster.rows = frame.rows();
    raster.values = values;
    raster.wkt = water.wkt();
    raster.description = "metres";
    return gdal::writeRasterFile(path, raster);
}

int run(const std::string& folder, const std::string& depthPath, const std::string& trustPath,
        const surface::DrawSettings& settings) {
    const std::vector<geo::LonLatPiece> shore = shoreFrom(folder + "/shore.geojson");
    const auto water = geo::WaterFrame::around(shore.front().outer);
    if (!water) {
        return failed(water.error());
    }
    const auto outline = geo::Outline::make(shore, *water);
    if (!outline) {
        return failed(outline.error());
    }
    base::Progress progress;
    const auto drawn = surface::drawWater(
        *outline, soundingsFrom(folder + "/soundings.csv", *water), settings, progress);
    if (!drawn) {
        return failed(drawn.error());
    }
    const surface::DrawReport& report = drawn->report;
    fmt::print("cell {} m, {} cells, a {}, b2 {}, held out mean {:.3f} m, {} used, {} outside, {} "
               "spikes, {} iterations, draw {:.2f} s, trust {:.2f} s\n",
               report.cell.inMetres(), report.cells, report.stiffness, report.contourStiffness,
               report.heldOut.value_or(surface::HeldOutError{}).mean_m, report.soundingsUsed,
               report.soundingsOutside, report.spikes.size(), report.iterations, report.drawSeconds,
               report.trustSeconds);
    for (const auto& [path, values] :
         {std::pair(depthPath, &drawn->depth.raw_m()),
          std::pair(trustPath, &drawn->trust.halfWidths_m().values())}) {
        if (const auto written = writeGrid(path, drawn->depth.frame(), *values, *water); !written) {
            return failed(written.error());
        }
    }
    return 0;
}

} // namespace

int main(int argc, char** argv) {
    if (argc < 4) {
        std::fputs("usage: bench_case CASE_FOLDER DEPTH.tif TRUST.tif [CELL_M]\n", stderr);
        return 2;
    }
    try {
        surface::DrawSettings settings;
        if (argc > 4) {
            settings.cell = units::Length::metres(std::stod(argv[4]));
        }
        return run(argv[1], argv[2], argv[3], settings);
    } catch (const std::exception& e) {
        std::fprintf(stderr, "%s\n", e.what());
        return 1;
    }
}
