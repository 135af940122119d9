// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/outputs/geojson_text.h"

#include "core/outputs/not_for_navigation.h"

#include "core/base/number_text.h"

#include <algorithm>

#include <fmt/format.h>
#include <nlohmann/json.hpp>

namespace outputs {

namespace {

constexpr int decimals = 7; ///< Of a degree: a centimetre.

struct Position {
    std::string lon;
    std::string lat;
    friend bool operator==(const Position&, const Position&) = default;
    [[nodiscard]] std::string text() const { return "[" + lon + "," + lat + "]"; }
};

/// What is left of a line at seven decimals: no place twice in a row.
std::vector<Position> positionsOf(std::span<const geo::LonLat> line) {
    std::vector<Position> positions;
    for (const geo::LonLat& place : line) {
        positions.push_back(
            {base::fixedText(place.lon_deg, decimals), base::fixedText(place.lat_deg, decimals)});
    }
    const auto repeated = std::ranges::unique(positions);
    positions.erase(repeated.begin(), repeated.end());
    return positions;
}

std::string joined(const std::vector<Position>& positions) {
    std::string text;
    for (const Position& position : positions) {
        text += (text.empty() ? "" : ",") + position.text();
    }
    return "[" + text + "]";
}

/// Twice the area in square degrees about the first place; positive where it runs
/// counter-clockwise.
double turnOf(const geo::LonLatRing& ring) {
    double turn = 0.0;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const geo::LonLat a = ring[i];
        const geo::LonLat b = ring[(i + 1) % ring.size()];
        turn += (a.lon_deg - ring[0].lon_deg) * (b.lat_deg - ring[0].lat_deg) -
                (b.lon_deg - ring[0].lon_deg) * (a.lat_deg - ring[0].lat_deg);
    }
    return turn;
}

/// A closed ring that runs as wanted; empty where fewer than three places are left of it.
std::string ringText(geo::LonLatRing ring, bool counterClockwise) {
    if ((turnOf(ring) > 0.0) != counterClockwise) {
        std::ranges::reverse(ring);
    }
    std::vector<Position> positions = positionsOf(ring);
    while (positions.size() > 1 && positions.front() == positions.back()) {
        positions.pop_back();
    }
    if (positions.size() < 3) {
        return {};
    }
    positions.push_back(positions.front());
    return joined(positions);
}

/// The rings of a polygon; empty where there is nothing of it.
std::string polygonText(const geo::LonLatPiece& piece) {
    std::string rings = ringText(piece.outer, true);
    if (rings.empty()) {
        return {};
    }
    for (const geo::LonLatRing& island : piece.islands) {
        const std::string ring = ringText(island, false);
        rings += ring.empty() ? "" : "," + ring;
    }
    return "[" + rings + "]";
}

/// Text that is not UTF-8 keeps a mark in the place of each odd byte.
std::string quoted(std::string_view text) {
    return nlohmann::json(std::string(text))
        .dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
}

} // namespace

void Properties::add(std::string_view name, std::string_view value) {
    inside_ += fmt::format("{}{}:{}", inside_.empty() ? "" : ",", quoted(name), value);
}

Properties& Properties::with(std::string_view name, std::string_view text) {
    add(name, quoted(text));
    return *this;
}

Properties& Properties::with(std::string_view name, double number, int places) {
    add(name, base::fixedText(number, places));
    return *this;
}

Properties& Properties::with(std::string_view name, std::optional<double> number, int places) {
    add(name, number ? base::fixedText(*number, places) : "null");
    return *this;
}

Properties& Properties::withTruth(std::string_view name, bool isSo) {
    add(name, isSo ? "true" : "false");
    return *this;
}

void FeatureCollection::add(std::string_view geometry, const Properties& properties) {
    features_ += fmt::format("{}\n{{\"type\":\"Feature\",\"properties\":{},\"geometry\":{}}}",
                             features_.empty() ? "" : ",", properties.text(), geometry);
}

void FeatureCollection::addPieces(std::span<const geo::LonLatPiece> pieces,
                                  const Properties& properties) {
    std::vector<std::string> polygons;
    for (const geo::LonLatPiece& piece : pieces) {
        if (std::string polygon = polygonText(piece); !polygon.empty()) {
            polygons.push_back(std::move(polygon));
        }
    }
    if (polygons.size() == 1) {
        add(fmt::format(R"({{"type":"Polygon","coordinates":{}}})", polygons.front()), properties);
    } else if (!polygons.empty()) {
        add(fmt::format(R"({{"type":"MultiPolygon","coordinates":[{}]}})",
                        fmt::join(polygons, ",")),
            properties);
    }
}

void FeatureCollection::addPieces(const std::vector<geo::Piece>& pieces,
                                  const geo::WaterFrame& frame, const Properties& properties) {
    std::vector<geo::LonLatPiece> onEarth;
    for (const geo::Piece& piece : pieces) {
        onEarth.push_back(geo::toEarth(piece, frame));
    }
    addPieces(onEarth, properties);
}

void FeatureCollection::addLine(std::span<const geo::LonLat> line, const Properties& properties) {
    const std::vector<Position> positions = positionsOf(line);
    if (positions.size() >= 2) {
        add(fmt::format(R"({{"type":"LineString","coordinates":{}}})", joined(positions)),
            properties);
    }
}

std::string FeatureCollection::text() const {
    // A foreign member, which RFC 7946, 6.1, allows and readers pass over.
    return R"({"type":"FeatureCollection","description":")" + std::string(notForNavigation) +
           R"(","features":[)" + features_ + "\n]}\n";
}

} // namespace outputs
