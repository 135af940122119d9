// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/gridding_case.h"

#include <cmath>
#include <cstdio>
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
    auto soundings = soundingsFrom(folder + "/soundings.csv", *frame);
    return GriddingCase{std::move(*frame), std::move(*outline), std::move(soundings)};
}

} // namespace support
