// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/outputs/write_geojson.h"

#include "core/gdal/vector_source.h"
#include "tests/support/found_water.h"
#include "tests/support/scratch_folder.h"

#include <algorithm>
#include <cmath>

#include <nlohmann/json.hpp>

#include <gtest/gtest.h>

namespace {

using nlohmann::json;
using support::FoundWater;
using support::ScratchFolder;

json readJson(const std::filesystem::path& path) {
    return json::parse(ScratchFolder::textOf(path));
}

/// Positive for a ring that runs counter-clockwise.
double turnOf(const json& ring) {
    double turn = 0.0;
    for (std::size_t i = 0; i + 1 < ring.size(); ++i) {
        turn += (ring[i][0].get<double>() - ring[0][0].get<double>()) *
                    (ring[i + 1][1].get<double>() - ring[0][1].get<double>()) -
                (ring[i + 1][0].get<double>() - ring[0][0].get<double>()) *
                    (ring[i][1].get<double>() - ring[0][1].get<double>());
    }
    return turn;
}

/// RFC 7946, 3.1.6: closed, at least four positions, outer counter-clockwise, holes clockwise.
void expectRightPolygon(const json& polygon) {
    ASSERT_FALSE(polygon.empty());
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const json& ring = polygon[i];
        ASSERT_GE(ring.size(), 4U);
        EXPECT_EQ(ring.front(), ring.back());
        EXPECT_EQ(ring.front().size(), 2U);
        EXPECT_EQ(turnOf(ring) > 0.0, i == 0);
    }
}

TEST(WriteGeojson, TurnsEveryRingTheWayTheStandardWants) {
    const ScratchFolder folder;
    const FoundWater known;
    std::vector<geo::LonLatPiece> turned = known.water.shoreline;
    std::ranges::reverse(turned[0].outer);
    std::ranges::reverse(turned[0].islands[0]);
    for (const auto& shoreline : {known.water.shoreline.all(), turned}) {
        const auto path = folder.path() / "shoreline.geojson";
        ASSERT_TRUE(outputs::writeShorelineGeojson(path, shoreline, known.water.name).has_value());
        const json read = readJson(path);
        EXPECT_EQ(read["type"], "FeatureCollection");
        EXPECT_FALSE(read.contains("crs"));
        ASSERT_EQ(read["features"].size(), 1U);
        const json& feature = read["features"][0];
        EXPECT_EQ(feature["properties"]["name"], known.water.name);
        ASSERT_EQ(feature["geometry"]["coordinates"].size(), 2U);
        expectRightPolygon(feature["geometry"]["coordinates"]);
    }
}

TEST(WriteGeojson, KeepsPlacesToACentimetre) {
    const ScratchFolder folder;
    const FoundWater known;
    const auto path = folder.path() / "shoreline.geojson";
    ASSERT_TRUE(
        outputs::writeShorelineGeojson(path, known.water.shoreline, known.water.name).has_value());
    auto source = gdal::VectorSource::open(path);
    ASSERT_TRUE(source.has_value()) << source.error().sentence();
    base::Progress quiet;
    std::size_t pieces = 0;
    ASSERT_TRUE(source
                    ->forEach(
                        0,
                        [&](const gdal::Feature& feature) {
                            pieces += feature.pieces.size();
                            for (const geo::LonLat& place : feature.pieces.at(0).outer) {
                                const auto found = std::ranges::find_if(
                                    known.water.shoreline[0].outer, [&](const geo::LonLat& p) {
                                        return std::fabs(p.lon_deg - place.lon_deg) <= 0.51e-7 &&
                                               std::fabs(p.lat_deg - place.lat_deg) <= 0.51e-7;
                                    });
                                EXPECT_NE(found, known.water.shoreline[0].outer.end());
                            }
                            return true;
                        },
                        quiet)
                    .has_value());
    EXPECT_EQ(pieces, 1U);
}

TEST(WriteGeojson, PutsDepthsIntoProperties) {
    const ScratchFolder folder;
    const FoundWater known;
    const auto path = folder.path() / "out.geojson";
    const geo::WaterFrame& frame = known.made.frame;
    ASSERT_TRUE(outputs::writeContoursGeojson(path, known.found.form->contours, frame).has_value());
    json read = readJson(path);
    ASSERT_EQ(read["features"].size(), 2U);
    EXPECT_EQ(read["features"][1]["properties"]["depth_m"], 4.5);
    EXPECT_EQ(read["features"][1]["geometry"]["type"], "LineString");
    const json& closed = read["features"][1]["geometry"]["coordinates"];
    EXPECT_EQ(closed.front(), closed.back());

    ASSERT_TRUE(
        outputs::writeBandsGeojson(path, known.found.form->bandPolygons, frame).has_value());
    read = readJson(path);
    ASSERT_EQ(read["features"].size(), 2U);
    EXPECT_EQ(read["features"][0]["properties"]["to_m"], 6.0);
    EXPECT_TRUE(read["features"][1]["properties"]["to_m"].is_null());
    expectRightPolygon(read["features"][0]["geometry"]["coordinates"]);
}

TEST(WriteGeojson, WritesZonesAndSectionsByName) {
    const ScratchFolder folder;
    const FoundWater known;
    const auto path = folder.path() / "out.geojson";
    ASSERT_TRUE(outputs::writeZonesGeojson(path, known.found.structure->zones, known.made.frame)
                    .has_value());
    json read = readJson(path);
    EXPECT_EQ(read["features"][0]["properties"]["kind"], "drop-off");
    EXPECT_EQ(read["features"][0]["geometry"]["type"], "MultiPolygon");
    const structure::Zone& zone = known.found.structure->zones[0];
    EXPECT_NEAR(read["features"][0]["properties"]["trust_m"], zone.meanTrust_m, 0.0005);
    if (zone.edgeLength.inMetres() > 0.0) {
        EXPECT_NEAR(read["features"][0]["properties"]["edge_m"], zone.edgeLength.inMetres(), 0.05);
    } else {
        EXPECT_TRUE(read["features"][0]["properties"]["edge_m"].is_null());
    }
    for (const json& polygon : read["features"][0]["geometry"]["coordinates"]) {
        expectRightPolygon(polygon);
    }
    ASSERT_TRUE(
        outputs::writeSectionsGeojson(path, known.found.sections->sections, {}, known.made.frame)
            .has_value());
    read = readJson(path);
    EXPECT_EQ(read["features"][0]["properties"]["name"], "Heron Bay");
    EXPECT_EQ(read["features"][0]["properties"]["area_m2"], 50000.0);
    EXPECT_FALSE(read["features"][0]["properties"].contains("never_fished")) << "nobody knows";
}

TEST(WriteGeojson, TellsWhichSectionsWereNeverFished) {
    const ScratchFolder folder;
    const FoundWater known;
    const auto path = folder.path() / "out.geojson";
    const auto& all = known.found.sections->sections;
    std::vector<water::SectionUse> uses(all.size());
    uses[0].stays = 3;
    ASSERT_TRUE(outputs::writeSectionsGeojson(path, all, uses, known.made.frame).has_value());
    const json read = readJson(path);
    for (std::size_t i = 0; i < all.size(); ++i) {
        const json& properties = read["features"][i]["properties"];
        EXPECT_EQ(properties["never_fished"], i != 0);
        EXPECT_EQ(properties["stays"], i == 0 ? 3 : 0);
        EXPECT_NEAR(properties["shoreline_m"], all[i].shore.inMetres(), 0.05);
        EXPECT_NEAR(properties["drop_off_m"], all[i].dropOff.inMetres(), 0.05);
        EXPECT_NEAR(properties["weed_share"], all[i].weedShare, 5e-5);
    }
}

TEST(WriteGeojson, LeavesOutARingThatVanishesAtSevenDecimals) {
    const ScratchFolder folder;
    const auto path = folder.path() / "out.geojson";
    const geo::LonLatPiece speck{{{3.1, 55.2}, {3.1 + 1e-9, 55.2}, {3.1, 55.2 + 1e-9}}, {}};
    const geo::LonLatPiece pond{{{3.1, 55.2}, {3.2, 55.2}, {3.1, 55.3}}, {speck.outer}};
    ASSERT_TRUE(
        outputs::writeShorelineGeojson(path, std::vector{speck, pond}, "\xff pond").has_value());
    const json read = readJson(path);
    ASSERT_EQ(read["features"].size(), 1U);
    EXPECT_EQ(read["features"][0]["geometry"]["coordinates"].size(), 1U);
}

} // namespace
