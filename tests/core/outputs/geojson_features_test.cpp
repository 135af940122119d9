// SPDX-License-Identifier: GPL-3.0-or-later
// Every member of every feature, read back by a reader of its own: no two figures are alike, so
// that none can stand in the place of another.
#include "core/outputs/write_geojson.h"

#include "tests/support/scratch_folder.h"

#include <cmath>

#include <nlohmann/json.hpp>

#include <gtest/gtest.h>

namespace {

using nlohmann::json;
using support::ScratchFolder;
using units::Area;
using units::Depth;
using units::Length;

geo::Ring box(double west_m, double south_m, double east_m, double north_m) {
    return {{west_m, south_m}, {east_m, south_m}, {east_m, north_m}, {west_m, north_m}};
}

/// Metres on the ground to degrees by the radii of the ellipsoid of WGS 84 (a = 6378137 m,
/// e^2 = 0.00669437999) at 55.2 N: good to a few centimetres this near to the middle.
json onEarth(double x_m, double y_m) {
    const double e2 = 0.00669437999014;
    const double lat = 55.2 * std::numbers::pi / 180.0;
    const double w2 = 1.0 - e2 * std::sin(lat) * std::sin(lat);
    const double across_m = 6378137.0 / std::sqrt(w2);
    const double along_m = 6378137.0 * (1.0 - e2) / std::pow(w2, 1.5);
    return {3.1 + x_m / (across_m * std::cos(lat)) * 180.0 / std::numbers::pi,
            55.2 + y_m / along_m * 180.0 / std::numbers::pi};
}

void expectPlaces(const json& found, const std::vector<std::pair<double, double>>& places) {
    ASSERT_EQ(found.size(), places.size()) << found;
    for (std::size_t i = 0; i < places.size(); ++i) {
        const json wanted = onEarth(places[i].first, places[i].second);
        ASSERT_EQ(found[i].size(), 2U) << "longitude and latitude, and no height";
        EXPECT_NEAR(found[i][0], wanted[0], 3e-7) << i;
        EXPECT_NEAR(found[i][1], wanted[1], 3e-7) << i;
    }
}

class GeojsonFeatures : public testing::Test {
protected:
    json read() const { return json::parse(ScratchFolder::textOf(path)); }
    geo::WaterFrame frame = geo::WaterFrame::centredOn({3.1, 55.2}).value();
    ScratchFolder folder;
    std::filesystem::path path = folder.path() / "out.geojson";
};

TEST_F(GeojsonFeatures, AreasRunCounterClockwiseWithTheirIslandsTheOtherWay) {
    contours::BandPolygons near{Depth::metres(1.25), Depth::metres(3.5), {}};
    near.pieces = {{box(-80, -40, 90, 60), {{{10, 10}, {10, 30}, {20, 30}, {20, 10}}}}};
    contours::BandPolygons last{Depth::metres(3.5), std::nullopt, {}};
    // Given clockwise: to be turned; two pieces of one band stay one feature.
    last.pieces = {{{{0, 0}, {0, 5}, {5, 5}}, {}}, {box(20, 0, 30, 8), {}}};
    ASSERT_TRUE(outputs::writeBandsGeojson(path, std::vector{near, last}, frame).has_value());
    const json features = read()["features"];
    ASSERT_EQ(features.size(), 2U);
    EXPECT_EQ(features[0]["type"], "Feature");
    EXPECT_EQ(features[0]["properties"], (json{{"from_m", 1.25}, {"to_m", 3.5}}));
    EXPECT_EQ(features[0]["geometry"]["type"], "Polygon");
    const json& rings = features[0]["geometry"]["coordinates"];
    ASSERT_EQ(rings.size(), 2U);
    expectPlaces(rings[0], {{-80, -40}, {90, -40}, {90, 60}, {-80, 60}, {-80, -40}});
    expectPlaces(rings[1], {{10, 10}, {10, 30}, {20, 30}, {20, 10}, {10, 10}});
    EXPECT_EQ(features[1]["properties"], (json{{"from_m", 3.5}, {"to_m", nullptr}}));
    EXPECT_EQ(features[1]["geometry"]["type"], "MultiPolygon");
    const json& pieces = features[1]["geometry"]["coordinates"];
    ASSERT_EQ(pieces.size(), 2U);
    expectPlaces(pieces[0][0], {{5, 5}, {0, 5}, {0, 0}, {5, 5}});
    expectPlaces(pieces[1][0], {{20, 0}, {30, 0}, {30, 8}, {20, 8}, {20, 0}});
}

TEST_F(GeojsonFeatures, ContoursAreLinesWithTheirDepths) {
    const std::vector<contours::Contour> lines{
        {Depth::metres(2.125), {{-30, -50}, {0, 5}, {0, 5}, {20, 70}}, false},
        {Depth::feet(30.0), {{-30, -50}, {-20, -50}, {-20, 20}, {-30, -50}}, true},
        {Depth::metres(9.0), {{1, 1}, {1, 1}}, false}};
    ASSERT_TRUE(outputs::writeContoursGeojson(path, lines, frame).has_value());
    const json features = read()["features"];
    ASSERT_EQ(features.size(), 2U) << "a line of one place is none";
    EXPECT_EQ(features[0]["properties"], (json{{"depth_m", 2.125}}));
    EXPECT_EQ(features[0]["geometry"]["type"], "LineString");
    expectPlaces(features[0]["geometry"]["coordinates"], {{-30, -50}, {0, 5}, {20, 70}});
    EXPECT_EQ(features[1]["properties"], (json{{"depth_m", 9.144}}));
    expectPlaces(features[1]["geometry"]["coordinates"],
                 {{-30, -50}, {-20, -50}, {-20, 20}, {-30, -50}});
}

TEST_F(GeojsonFeatures, EveryPieceOfTheShoreIsAFeatureWithTheNameOfTheWater) {
    const std::vector<geo::LonLatPiece> shore{
        {{{3.1, 55.2}, {3.11, 55.2}, {3.11, 55.21}}, {}},
        {{{3.2, 55.2}, {3.22, 55.2}, {3.22, 55.23}},
         {{{3.21, 55.205}, {3.215, 55.21}, {3.215, 55.205}}}}};
    ASSERT_TRUE(outputs::writeShorelineGeojson(path, shore, "Crake \"Tarn\"\\").has_value());
    const json features = read()["features"];
    ASSERT_EQ(features.size(), 2U);
    EXPECT_EQ(features[0]["properties"], (json{{"name", "Crake \"Tarn\"\\"}}));
    EXPECT_EQ(features[0]["geometry"],
              (json{{"type", "Polygon"},
                    {"coordinates", {{{3.1, 55.2}, {3.11, 55.2}, {3.11, 55.21}, {3.1, 55.2}}}}}));
    EXPECT_EQ(features[1]["properties"], features[0]["properties"]);
    // A ring that comes closed is closed once.
    const std::vector<geo::LonLatPiece> closed{
        {{{3.1, 55.2}, {3.11, 55.2}, {3.11, 55.21}, {3.1, 55.2}}, {}}};
    ASSERT_TRUE(outputs::writeShorelineGeojson(path, closed, "").has_value());
    EXPECT_EQ(read()["features"][0]["geometry"], features[0]["geometry"]);
    EXPECT_EQ(features[1]["geometry"]["coordinates"].size(), 2U);
}

TEST_F(GeojsonFeatures, ZonesTellEverythingThatIsKnownOfThem) {
    structure::Zone edge;
    edge.kind = structure::ZoneKind::dropOff;
    edge.name = "Drop-off 7";
    edge.pieces = {{box(0, 0, 30, 10), {}}};
    edge.shallowest = Depth::metres(3.141);
    edge.deepest = Depth::metres(8.252);
    edge.area = Area::squareMetres(1234.56);
    edge.edgeLength = Length::metres(77.74);
    edge.meanTrust_m = 0.4567;
    structure::Zone hole = edge;
    hole.kind = structure::ZoneKind::hole;
    hole.name = "Hole 2";
    hole.edgeLength = {};
    ASSERT_TRUE(outputs::writeZonesGeojson(path, std::vector{edge, hole}, frame).has_value());
    const json features = read()["features"];
    ASSERT_EQ(features.size(), 2U);
    EXPECT_EQ(features[0]["properties"], (json{{"kind", "drop-off"},
                                               {"name", "Drop-off 7"},
                                               {"area_m2", 1234.6},
                                               {"shallowest_m", 3.141},
                                               {"deepest_m", 8.252},
                                               {"edge_m", 77.7},
                                               {"trust_m", 0.457}}));
    EXPECT_EQ(features[1]["properties"]["kind"], "hole");
    EXPECT_EQ(features[1]["properties"]["name"], "Hole 2");
    EXPECT_TRUE(features[1]["properties"]["edge_m"].is_null()) << "it has no top edge";
    expectPlaces(features[0]["geometry"]["coordinates"][0],
                 {{0, 0}, {30, 0}, {30, 10}, {0, 10}, {0, 0}});
}

TEST_F(GeojsonFeatures, SectionsTellEverythingThatIsKnownOfThem) {
    sections::Section reach;
    reach.name = "Long Reach";
    reach.number = 7;
    reach.pieces = {{box(0, 0, 30, 10), {}}};
    reach.area = Area::squareMetres(43210.98);
    reach.meanDepth = Depth::metres(4.3216);
    reach.maxDepth = Depth::metres(7.654);
    reach.shore = Length::metres(321.04);
    reach.dropOff = Length::metres(98.76);
    reach.weedShare = 0.12344;
    reach.trustShare = {0.51, 0.32, 0.17};
    sections::Section bay = reach;
    bay.name = "Bay";
    const std::vector both{reach, bay};
    std::vector<water::SectionUse> uses(2);
    uses[0].stays = 12;
    ASSERT_TRUE(outputs::writeSectionsGeojson(path, both, uses, frame).has_value());
    json features = read()["features"];
    ASSERT_EQ(features.size(), 2U);
    EXPECT_EQ(features[0]["properties"], (json{{"name", "Long Reach"},
                                               {"number", 7},
                                               {"area_m2", 43211.0},
                                               {"mean_depth_m", 4.322},
                                               {"max_depth_m", 7.654},
                                               {"shoreline_m", 321.0},
                                               {"drop_off_m", 98.8},
                                               {"weed_share", 0.1234},
                                               {"trust_sounded", 0.51},
                                               {"trust_inferred", 0.32},
                                               {"trust_guess", 0.17},
                                               {"stays", 12},
                                               {"never_fished", false}}));
    EXPECT_EQ(features[1]["properties"]["name"], "Bay");
    EXPECT_EQ(features[1]["properties"]["stays"], 0);
    EXPECT_EQ(features[1]["properties"]["never_fished"], true);
    // What is known of one section says nothing of two.
    ASSERT_TRUE(
        outputs::writeSectionsGeojson(path, both, std::span(uses).first(1), frame).has_value());
    EXPECT_FALSE(read()["features"][0]["properties"].contains("stays"));
}

TEST_F(GeojsonFeatures, EachWriterSaysWhereItCannotWrite) {
    const auto nowhere = folder.path() / "no" / "such.geojson";
    for (const auto& written : {outputs::writeShorelineGeojson(nowhere, {}, ""),
                                outputs::writeContoursGeojson(nowhere, {}, frame),
                                outputs::writeBandsGeojson(nowhere, {}, frame),
                                outputs::writeZonesGeojson(nowhere, {}, frame),
                                outputs::writeSectionsGeojson(nowhere, {}, {}, frame)}) {
        ASSERT_FALSE(written.has_value());
        EXPECT_EQ(written.error().kind, base::ErrorKind::unwritableOutput);
        EXPECT_NE(written.error().sentence().find(nowhere.string()), std::string::npos);
    }
    ASSERT_TRUE(outputs::writeContoursGeojson(path, {}, frame).has_value());
    EXPECT_EQ(read(), (json{{"type", "FeatureCollection"},
                            {"description", "Drawn from an angler's own soundings: not for "
                                            "navigation. Local rules go first."},
                            {"features", json::array()}}));
}

} // namespace
