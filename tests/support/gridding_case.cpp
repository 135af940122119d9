// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/gridding_case.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <filesystem>
#include <fstream>

#include <nlohmann/json.hpp>

namespace support {

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
void addSoundings(const std::filesystem::path& path, const geo::WaterFrame& frame,
                  std::vector<soundings::KeptSounding>& soundings) {
    std::ifstream file(path);
    std::string line;
    std::getline(file, line);
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
}

std::vector<std::filesystem::path> soundingFilesIn(const std::string& folder) {
    std::vector<std::filesystem::path> files;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        const std::string name = entry.path().filename().string();
        if (name.starts_with("soundings") && name.ends_with(".csv")) {
            files.push_back(entry.path());
        }
    }
    std::sort(files.begin(), files.end());
    return files;
}

} // namespace

base::Result<GriddingCase> readGriddingCase(const std::string& folder) {
    if (!std::ifstream(folder + "/shore.geojson")) {
        return base::fail(base::ErrorKind::unusableInput, "there is no such case", folder,
                          "see ../shared/bench/cases");
    }
    const std::vector<geo::LonLatPiece> shore = shoreFrom(folder + "/shore.geojson");
    auto frame = geo::WaterFrame::around(shore.front().outer);
    if (!frame) {
        return std::unexpected(frame.error());
    }
    auto outline = geo::Outline::make(shore, *frame);
    if (!outline) {
        return std::unexpected(outline.error());
    }
    GriddingCase made{std::move(*frame), std::move(*outline), {}};
    for (const std::filesystem::path& file : soundingFilesIn(folder)) {
        addSoundings(file, made.frame, made.soundings);
    }
    return made;
}

} // namespace support
