// SPDX-License-Identifier: GPL-3.0-or-later
// What goes through the fence to GDAL and comes back: no data, signs, reference systems, fields.
#include "core/gdal/coordinates.h"
#include "core/gdal/raster_file.h"
#include "core/gdal/session.h"
#include "core/gdal/vector_source.h"

#include "tests/support/scratch_folder.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <string>

#include <gtest/gtest.h>
#include <sys/stat.h>

namespace gdal {

namespace {

using support::ScratchFolder;

TEST(RasterFence, AnAsciiGridIsReadFromItsSouthWestCornerWithItsGaps) {
    const ScratchFolder folder;
    const auto path = folder.file("g.asc", "ncols 3\nnrows 2\nxllcorner 100\nyllcorner 200\n"
                                           "cellsize 10\nNODATA_value -99\n1 2 -99\n4 5 6.5\n");
    const auto read = readRasterFile(path);
    ASSERT_TRUE(read) << read.error().sentence();
    EXPECT_EQ(read->cols, 3);
    EXPECT_EQ(read->rows, 2);
    EXPECT_EQ(read->transform, (std::array<double, 6>{100.0, 10.0, 0.0, 220.0, 0.0, -10.0}));
    EXPECT_TRUE(read->wkt.empty());
    const std::vector<float>& v = read->bands.at(0);
    EXPECT_EQ(v[0], 1.0F);
    EXPECT_TRUE(std::isnan(v[2]));
    EXPECT_EQ(v[3], 4.0F);
    EXPECT_EQ(v[5], 6.5F);
}

TEST(RasterFence, WithoutAValueForNothingAllValuesCountAndBandsAreThoseAskedFor) {
    const ScratchFolder folder;
    // A plain picture of three bands, two pixels: red, green, blue each.
    const auto path =
        folder.file("p.ppm", std::string("P6\n2 1\n255\n\x01\x02\x03\x00\xff\x05", 17));
    const auto one = readRasterFile(path);
    ASSERT_TRUE(one) << one.error().sentence();
    ASSERT_EQ(one->bands.size(), 1U);
    EXPECT_EQ(one->bands[0], (std::vector<float>{1.0F, 0.0F}));
    const auto all = readRasterFile(path, 9);
    ASSERT_TRUE(all);
    ASSERT_EQ(all->bands.size(), 3U);
    EXPECT_EQ(all->bands[1], (std::vector<float>{2.0F, 255.0F}));
    EXPECT_EQ(all->bands[2], (std::vector<float>{3.0F, 5.0F}));
    EXPECT_EQ(readRasterFile(path, 2)->bands.size(), 2U);
    EXPECT_EQ(readRasterFile(path, 0)->bands.size(), 1U);
}

TEST(RasterFence, IsUprightOnlyWithoutAnyTurn) {
    Raster raster;
    EXPECT_TRUE(raster.isUpright());
    raster.transform[2] = 0.1;
    EXPECT_FALSE(raster.isUpright());
    raster.transform[2] = 0.0;
    raster.transform[4] = -0.1;
    EXPECT_FALSE(raster.isUpright());
}

TEST(RasterFence, WhatIsWrittenCarriesItsSystemAndItsValueForNothing) {
    const ScratchFolder folder;
    const std::vector<float> values{1.0F, std::numeric_limits<float>::infinity(), -3.0F, 4.0F};
    RasterToWrite raster{100.0, 220.0, 10.0, 2, 2, values, -7.0F, {}, "depth, metres"};
    raster.wkt =
        "PROJCS[\"made up\",GEOGCS[\"WGS 84\",DATUM[\"WGS_1984\",SPHEROID[\"WGS 84\","
        "6378137,298.257223563]],PRIMEM[\"Greenwich\",0],UNIT[\"degree\","
        "0.0174532925199433]],PROJECTION[\"Transverse_Mercator\"],PARAMETER["
        "\"latitude_of_origin\",55.2],PARAMETER[\"central_meridian\",3.1],PARAMETER["
        "\"scale_factor\",1],PARAMETER[\"false_easting\",0],PARAMETER[\"false_northing\",0]"
        ",UNIT[\"metre\",1]]";
    const auto path = folder.path() / "d.tif";
    ASSERT_TRUE(writeRasterFile(path, raster));
    const auto read = readRasterFile(path);
    ASSERT_TRUE(read);
    EXPECT_NE(read->wkt.find("55.2"), std::string::npos);
    EXPECT_TRUE(std::isnan(read->bands[0][1])) << "what is not finite is no depth";
    EXPECT_EQ(read->bands[0][2], -3.0F);
    EXPECT_EQ(read->transform, (std::array<double, 6>{100.0, 10.0, 0.0, 220.0, 0.0, -10.0}));
    // A 7 below zero is what stands for nothing in this file: it reads as nothing.
    const std::vector<float> sevens{-7.0F};
    ASSERT_TRUE(writeRasterFile(path, {0.0, 1.0, 1.0, 1, 1, sevens, -7.0F, {}, {}}));
    EXPECT_TRUE(std::isnan(readRasterFile(path)->bands[0][0]));
    ASSERT_TRUE(writeRasterFile(path, {0.0, 1.0, 1.0, 1, 1, sevens, -9999.0F, {}, {}}));
    EXPECT_EQ(readRasterFile(path)->bands[0][0], -7.0F);
    EXPECT_NE(ScratchFolder::textOf(path).find("-9999"), std::string::npos);
    raster.noData = -9999.0F;
    ASSERT_TRUE(writeRasterFile(path, raster));
    EXPECT_NE(ScratchFolder::textOf(path).find("depth, metres"), std::string::npos);
}

TEST(RasterFence, SizesThatDoNotFitAreRefused) {
    const ScratchFolder folder;
    const std::vector<float> four(4, 1.0F);
    for (const auto& [cols, rows, cell_m] : {std::tuple{2, 3, 1.0},
                                             {3, 2, 1.0},
                                             {0, 0, 1.0},
                                             {-2, -2, 1.0},
                                             {2, 2, 0.0},
                                             {2, 2, -1.0}}) {
        const auto refused = writeRasterFile(folder.path() / "x.tif",
                                             {0.0, 0.0, cell_m, cols, rows, four, -1.0F, {}, {}});
        ASSERT_FALSE(refused);
        EXPECT_EQ(refused.error().kind, base::ErrorKind::wrongUse);
    }
    EXPECT_EQ(readRasterFile(folder.path() / "x.tif").error().what, "there is no such file");
}

std::vector<Feature> allOf(VectorSource& source, std::size_t layer = 0) {
    std::vector<Feature> features;
    base::Progress silent;
    const auto done = source.forEach(
        layer, [&](const Feature& f) { return features.push_back(f), true; }, silent);
    EXPECT_TRUE(done) << done.error().sentence();
    return features;
}

std::string geometry(const std::string& type, const std::string& coordinates) {
    return R"({"type":"Feature","properties":{},"geometry":{"type":")" + type +
           R"(","coordinates":)" + coordinates + "}}";
}

std::string collection(const std::string& features) {
    return R"({"type":"FeatureCollection","features":[)" + features + "]}";
}

TEST(VectorFence, EveryGeometryComesApartIntoItsPointsLinesAndPieces) {
    const ScratchFolder folder;
    auto source = VectorSource::open(folder.file(
        "g.geojson",
        collection(geometry("MultiPoint", "[[1,2],[3,4]]") + "," +
                   geometry("MultiLineString", "[[[1,2],[3,4]],[[5,6],[7,8],[9,9]]]") + "," +
                   geometry("Polygon", "[[[0,0],[4,0],[4,4],[0,0]],[[1,0.5],[2,0.5],[2,1],[1,0.5]],"
                                       "[[3,1],[3.5,1],[3.5,2],[3,1]]]") +
                   "," +
                   R"({"type":"Feature","properties":{},"geometry":{"type":"GeometryCollection",)"
                   R"("geometries":[{"type":"Point","coordinates":[7,8,5]},)"
                   R"({"type":"LineString","coordinates":[[7,8],[8,9]]}]}},)"
                   R"({"type":"Feature","properties":{},"geometry":null})")));
    ASSERT_TRUE(source) << source.error().sentence();
    EXPECT_EQ(source->layers().at(0).featureCount, 5U);
    EXPECT_TRUE(source->layers()[0].hasReferenceSystem);
    const auto f = allOf(*source);
    ASSERT_EQ(f.size(), 5U);
    for (std::size_t i = 0; i < 5; ++i) {
        EXPECT_EQ(f[i].number, i + 1);
        EXPECT_FALSE(f[i].offEarth);
    }
    ASSERT_EQ(f[0].points.size(), 2U);
    EXPECT_FALSE(f[0].points[0].z) << "without a third coordinate there is none, not 0";
    EXPECT_EQ(f[0].points[1].place, (geo::LonLat{3.0, 4.0}));
    ASSERT_EQ(f[1].lines.size(), 2U);
    EXPECT_EQ(f[1].lines[1].size(), 3U);
    ASSERT_EQ(f[2].pieces.size(), 1U);
    EXPECT_EQ(f[2].pieces[0].outer, (geo::LonLatRing{{0, 0}, {4, 0}, {4, 4}}));
    ASSERT_EQ(f[2].pieces[0].islands.size(), 2U);
    EXPECT_EQ(f[2].pieces[0].islands[1], (geo::LonLatRing{{3, 1}, {3.5, 1}, {3.5, 2}}));
    ASSERT_TRUE(f[3].points.size() == 1 && f[3].lines.size() == 1);
    EXPECT_EQ(f[3].points[0].z, 5.0);
    EXPECT_TRUE(f[4].points.empty() && f[4].lines.empty() && f[4].pieces.empty());
}

TEST(VectorFence, FieldsKeepTheirTypeAndWhatIsAbsentIsNothing) {
    const ScratchFolder folder;
    const auto feature = [](const std::string& properties) {
        return R"({"type":"Feature","properties":)" + properties +
               R"(,"geometry":{"type":"Point","coordinates":[3,55]}})";
    };
    auto source = VectorSource::open(folder.file(
        "f.geojson",
        collection(
            feature(R"({"whole":7,"big":5000000000,"real":-2.5,"text":"007","day":"2026-09-05",)"
                    R"("at":"2026-09-05T07:42:01.250+01:00","clock":"07:42:00","yes":true})") +
            "," + feature(R"({"whole":null,"text":"","at":"2026-09-05T07:42:00-03:30"})") + "," +
            feature(R"({"at":"2026-09-05T07:42:00"})"))));
    ASSERT_TRUE(source) << source.error().sentence();
    const auto& names = source->layers().at(0).fields;
    const auto f = allOf(*source);
    ASSERT_EQ(f.size(), 3U);
    const auto value = [&](std::size_t which, const std::string& name) {
        const auto at = std::ranges::find(names, name) - names.begin();
        return f.at(which).values.at(static_cast<std::size_t>(at));
    };
    EXPECT_EQ(value(0, "whole"), FieldValue(7.0));
    EXPECT_EQ(value(0, "big"), FieldValue(5e9));
    EXPECT_EQ(value(0, "real"), FieldValue(-2.5));
    EXPECT_EQ(value(0, "text"), FieldValue(std::string("007")));
    EXPECT_EQ(value(0, "day"), FieldValue(std::string("2026-09-05")));
    EXPECT_EQ(value(0, "at"), FieldValue(std::string("2026-09-05T07:42:01.250+01:00")));
    EXPECT_EQ(value(0, "clock"), FieldValue(std::string("07:42:00.000")));
    EXPECT_EQ(value(1, "at"), FieldValue(std::string("2026-09-05T07:42:00.000-03:30")));
    EXPECT_EQ(value(2, "at"), FieldValue(std::string("2026-09-05T07:42:00.000")));
    EXPECT_EQ(value(1, "text"), FieldValue(std::string()));
    for (const char* absent : {"whole", "big", "real", "day"}) {
        EXPECT_EQ(value(1, absent), FieldValue()) << absent;
    }
}

TEST(VectorFence, EveryLayerIsReadInItsOwnReferenceSystem) {
    const ScratchFolder folder;
    auto source = VectorSource::open(folder.file(
        "two.kml", "<kml xmlns=\"http://www.opengis.net/kml/2.2\"><Document>"
                   "<Folder><name>a</name><Placemark><Point><coordinates>3.1,55.2,-4</coordinates>"
                   "</Point></Placemark></Folder>"
                   "<Folder><name>b</name><Placemark><Point><coordinates>3.2,55.3</coordinates>"
                   "</Point></Placemark></Folder></Document></kml>"));
    ASSERT_TRUE(source) << source.error().sentence();
    ASSERT_EQ(source->layers().size(), 2U);
    EXPECT_EQ(source->layers()[1].name, "b");
    EXPECT_EQ(allOf(*source, 0).at(0).points.at(0).place, (geo::LonLat{3.1, 55.2}));
    EXPECT_EQ(allOf(*source, 1).at(0).points.at(0).place, (geo::LonLat{3.2, 55.3}));
    base::Progress silent;
    const auto none = source->forEach(
        2, [](const Feature&) { return true; }, silent);
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().kind, base::ErrorKind::wrongUse);
    EXPECT_EQ(none.error().where, "two.kml");
}

// Metres of UTM zone 29 in a file that says so (RFC 7946's forerunner), and over what it says.
TEST(VectorFence, TheFilesOwnSystemCountsUnlessTheUserNamesAnother) {
    const ScratchFolder folder;
    const auto path = folder.file(
        "utm.geojson", R"({"type":"FeatureCollection","crs":{"type":"name","properties":{"name":)"
                       R"("urn:ogc:def:crs:EPSG::32629"}},"features":[)" +
                           geometry("Point", "[559557.9688,5939395.4780,-3]") + "]}");
    auto own = VectorSource::open(path);
    ASSERT_TRUE(own);
    const Feature f = allOf(*own).at(0);
    EXPECT_NEAR(f.points.at(0).place.lon_deg, -8.1, 1e-8);
    EXPECT_NEAR(f.points.at(0).place.lat_deg, 53.6, 1e-8);
    EXPECT_EQ(f.points.at(0).z, -3.0);
    EXPECT_FALSE(f.offEarth);
    auto named = VectorSource::open(path, 32630); // six degrees farther east
    ASSERT_TRUE(named);
    EXPECT_NEAR(allOf(*named).at(0).points.at(0).place.lon_deg, -2.1, 1e-8);
    auto plain = VectorSource::open(folder.file("p.csv", "X,Y,WKT\n1,2,POINT (3 55)\n"));
    ASSERT_TRUE(plain) << plain.error().sentence();
    EXPECT_FALSE(plain->layers().at(0).hasReferenceSystem);
}

/// Asks to stop from the n-th time that it is asked on.
class StopsAt : public base::Progress {
public:
    explicit StopsAt(int asked) : left_(asked) {}
    bool stopAsked() const override { return --left_ <= 0; }
    void tell(double share) override { shares.push_back(share); }
    std::vector<double> shares;

private:
    mutable int left_;
};

TEST(VectorFence, StopsWhereTheTakerHasEnoughOrTheUserAsks) {
    const ScratchFolder folder;
    std::string features;
    for (int i = 0; i < 3000; ++i) {
        features += (i > 0 ? "," : "") + geometry("Point", "[3,55]");
    }
    auto source = VectorSource::open(folder.file("many.geojson", collection(features)));
    ASSERT_TRUE(source);
    base::Progress silent;
    std::size_t taken = 0;
    ASSERT_TRUE(source->forEach(
        0, [&](const Feature&) { return ++taken < 5; }, silent));
    EXPECT_EQ(taken, 5U);
    taken = 0;
    StopsAt second(2);
    const auto stopped = source->forEach(
        0, [&](const Feature&) { return ++taken > 0; }, second);
    ASSERT_FALSE(stopped);
    EXPECT_EQ(stopped.error().kind, base::ErrorKind::cancelled);
    EXPECT_EQ(taken, 2047U) << "read from the front again, and stopped at the second asking";
    ASSERT_EQ(second.shares.size(), 1U);
    EXPECT_NEAR(second.shares[0], 1024.0 / 3000.0, 1e-9);
    EXPECT_EQ(allOf(*source).size(), 3000U);
}

TEST(VectorFence, RefusesInTheWordsOfWhatIsWrong) {
    const ScratchFolder folder;
    EXPECT_EQ(VectorSource::open(folder.path() / "no.shp").error().what, "there is no such file");
    const auto junk = VectorSource::open(folder.file("j.geojson", "{\"type\": \"Fea"));
    ASSERT_FALSE(junk);
    EXPECT_TRUE(junk.error().what.starts_with("it is no vector file that can be read"));
}

TEST(VectorFence, FollowsNoFileToAnother) {
    const ScratchFolder folder;
    const auto shore =
        folder.file("shore.geojson",
                    R"({"type":"Polygon","coordinates":[[[3,55],[3.1,55],[3.1,55.1],[3,55]]]})");
    ASSERT_TRUE(VectorSource::open(shore));
    const auto leading = folder.file("leads.vrt", "<OGRVRTDataSource><OGRVRTLayer name=\"shore\">"
                                                  "<SrcDataSource>" +
                                                      shore.string() +
                                                      "</SrcDataSource></OGRVRTLayer>"
                                                      "</OGRVRTDataSource>");
    const auto opened = VectorSource::open(leading);
    ASSERT_FALSE(opened);
    EXPECT_EQ(opened.error().kind, base::ErrorKind::unusableInput);
    EXPECT_FALSE(VectorSource::open("/vsicurl/http://127.0.0.1:9/shore.geojson"));
    EXPECT_FALSE(VectorSource::open("WFS:http://127.0.0.1:9/shore"));
}

TEST(VectorFence, ReadsAFileThatRefersToAServerWithoutIt) {
    const ScratchFolder folder;
    const auto shore = folder.file(
        "shore.geojson",
        R"({"type":"Feature","properties":{},"crs":{"type":"link","properties":{"href":)"
        R"("http://127.0.0.1:9/crs","type":"ogcwkt"}},"geometry":)"
        R"({"type":"Polygon","coordinates":[[[3,55],[3.1,55],[3.1,55.1],[3,55]]]}})");
    const auto source = VectorSource::open(shore);
    ASSERT_TRUE(source) << source.error().sentence();
    EXPECT_EQ(source->layers().size(), 1U);
}

TEST(VectorFence, WaitsForNoPipe) {
    const ScratchFolder folder;
    const auto pipe = folder.path() / "pipe.geojson";
    ASSERT_EQ(::mkfifo(pipe.c_str(), 0600), 0);
    EXPECT_EQ(VectorSource::open(pipe).error().what, "it is a pipe or a device and no file");
    EXPECT_EQ(readRasterFile(pipe).error().what, "it is a pipe or a device and no file");
}

// GPX of the same fixes as in metres: PROJ's own documentation, cs2cs of EPSG:4326 to UTM.
TEST(CoordinatesFence, ReadASystemFromItsTextAndRefuseWhatIsNone) {
    const auto wgs = Coordinates::ofEpsg(4326);
    ASSERT_TRUE(wgs);
    EXPECT_FALSE(wgs->toEarth({181.0, 0.0}));
    EXPECT_FALSE(wgs->toEarth({0.0, 91.0}));
    EXPECT_FALSE(wgs->toEarth({0.0, INFINITY}));
    EXPECT_FALSE(wgs->fromEarth({181.0, 0.0}));
    // The Irish grid's true origin, 53 deg 30 N 8 W on its own datum, is 200 km E and 250 km N.
    const auto irish = Coordinates::ofEpsg(29903);
    ASSERT_TRUE(irish) << irish.error().sentence();
    const auto origin = irish->toEarth({200000.0, 250000.0});
    ASSERT_TRUE(origin);
    EXPECT_NEAR(origin->lon_deg, -8.0, 0.002); // the datum lies some 60 m off
    EXPECT_NEAR(origin->lat_deg, 53.5, 0.002);
    const auto back = irish->fromEarth(*origin);
    EXPECT_NEAR(back->x, 200000.0, 0.01);
    EXPECT_NEAR(back->y, 250000.0, 0.01);
    const auto none =
        Coordinates::ofWkt("PROJCS[no text of any system that there is, and more and more of it]");
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().kind, base::ErrorKind::unusableInput);
    EXPECT_EQ(none.error().where.size(), 60U);
}

TEST(Session, KeepsTheFirstComplaintUntilItIsToldToForget) {
    Session session;
    EXPECT_FALSE(session.hasFailed());
    EXPECT_EQ(session.error(base::ErrorKind::damagedWater, "a", "b", "c").sentence(), "b: a; c");
    EXPECT_FALSE(Coordinates::ofEpsg(1)); // complains to a session of its own
    EXPECT_FALSE(session.hasFailed());
    EXPECT_TRUE(session.complaint().empty());
}

} // namespace

} // namespace gdal
