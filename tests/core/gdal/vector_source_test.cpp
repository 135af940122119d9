// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gdal/vector_source.h"

#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

namespace gdal {

namespace {

constexpr const char* threeThings = R"({"type": "FeatureCollection", "features": [
{"type": "Feature", "properties": {"depth": 3.5, "kind": "soft", "time": "2026-09-05T07:42:00Z"},
 "geometry": {"type": "Point", "coordinates": [3.1, 55.2, -3.5]}},
{"type": "Feature", "properties": {"kind": "rock"},
 "geometry": {"type": "MultiPolygon", "coordinates": [
  [[[3.0, 55.0], [3.1, 55.0], [3.1, 55.1], [3.0, 55.0]]],
  [[[4.0, 55.0], [4.9, 55.0], [4.9, 55.9], [4.0, 55.0]], [[4.5, 55.2], [4.6, 55.2], [4.6, 55.3], [4.5, 55.2]]]]}},
{"type": "Feature", "properties": {}, "geometry": {"type": "LineString", "coordinates": [[3.0, 55.0], [3.1, 55.1]]}}
]})";

std::vector<Feature> allOf(VectorSource& source) {
    std::vector<Feature> features;
    base::Progress progress;
    const auto done = source.forEach(
        0,
        [&](const Feature& feature) {
            features.push_back(feature);
            return true;
        },
        progress);
    EXPECT_TRUE(done) << done.error().sentence();
    return features;
}

TEST(VectorSource, GivesGeometryAndFieldsAsPlainValues) {
    const support::ScratchFolder scratch;
    auto source = VectorSource::open(scratch.file("things.geojson", threeThings));
    ASSERT_TRUE(source) << source.error().sentence();
    EXPECT_EQ(source->format(), "GeoJSON");
    ASSERT_EQ(source->layers().size(), 1U);
    EXPECT_EQ(source->layers()[0].fields, (std::vector<std::string>{"depth", "kind", "time"}));
    const auto features = allOf(*source);
    ASSERT_EQ(features.size(), 3U);
    ASSERT_EQ(features[0].points.size(), 1U);
    EXPECT_EQ(features[0].points[0].place, (geo::LonLat{3.1, 55.2}));
    EXPECT_EQ(features[0].points[0].z, -3.5);
    EXPECT_EQ(std::get<double>(features[0].values[0]), 3.5);
    EXPECT_EQ(std::get<std::string>(features[0].values[1]), "soft");
    EXPECT_EQ(std::get<std::string>(features[0].values[2]), "2026-09-05T07:42:00.000Z");
    ASSERT_EQ(features[1].pieces.size(), 2U);
    EXPECT_EQ(features[1].pieces[0].outer.size(), 3U);
    ASSERT_EQ(features[1].pieces[1].islands.size(), 1U);
    EXPECT_TRUE(std::holds_alternative<std::monostate>(features[1].values[0]));
    ASSERT_EQ(features[2].lines.size(), 1U);
    EXPECT_EQ(features[2].lines[0][1].place, (geo::LonLat{3.1, 55.1}));
    EXPECT_FALSE(features[2].offEarth);
}

TEST(VectorSource, TakesTheReferenceSystemThatTheUserNames) {
    const support::ScratchFolder scratch;
    const auto path = scratch.file(
        "utm.csvt.geojson", R"({"type": "Point", "coordinates": [559557.9688, 5939395.4780]})");
    auto source = VectorSource::open(path, 32629);
    ASSERT_TRUE(source) << source.error().sentence();
    const auto features = allOf(*source);
    ASSERT_EQ(features.size(), 1U);
    EXPECT_NEAR(features[0].points.at(0).place.lon_deg, -8.1, 1e-8);
    EXPECT_NEAR(features[0].points.at(0).place.lat_deg, 53.6, 1e-8);
}

TEST(VectorSource, TellsOfCoordinatesThatAreNotOnTheEarth) {
    const support::ScratchFolder scratch;
    auto source = VectorSource::open(
        scratch.file("far.geojson", R"({"type": "Point", "coordinates": [559557.9, 5939395.4]})"));
    ASSERT_TRUE(source);
    const auto features = allOf(*source);
    ASSERT_EQ(features.size(), 1U);
    EXPECT_TRUE(features[0].offEarth);
}

TEST(VectorSource, RefusesWhatIsNoVectorFile) {
    const support::ScratchFolder scratch;
    for (const auto& path : {scratch.file("a.geojson", ""), scratch.file("b.shp", "junk\x01\x02"),
                             scratch.path() / "missing.gpkg"}) {
        const auto source = VectorSource::open(path);
        ASSERT_FALSE(source) << path;
        EXPECT_EQ(source.error().kind, base::ErrorKind::unusableInput);
        EXPECT_FALSE(source.error().whatToDo.empty());
    }
}

TEST(VectorSource, TellsOfAReferenceSystemThatIsNone) {
    const support::ScratchFolder scratch;
    auto source = VectorSource::open(
        scratch.file("p.geojson", R"({"type": "Point", "coordinates": [3.0, 55.0]})"), 99999);
    ASSERT_TRUE(source);
    base::Progress progress;
    const auto done = source->forEach(
        0, [](const Feature&) { return true; }, progress);
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().where, "EPSG:99999");
}

} // namespace

} // namespace gdal
