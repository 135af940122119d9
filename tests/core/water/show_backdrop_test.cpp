// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/show_backdrop.h"

#include "core/gdal/raster_file.h"
#include "tests/support/scratch_folder.h"

#include <fstream>

#include <gtest/gtest.h>

namespace {

using support::ScratchFolder;

const geo::WaterFrame frame = geo::WaterFrame::centredOn({3.1, 55.2}).value();
const geo::Box lake{-300.0, -200.0, 300.0, 200.0};

/// 1 km square of 10 m cells round the origin: dark in the west, light in the east.
std::filesystem::path twoTone(const ScratchFolder& folder, double east_m = 0.0,
                              const std::string& wkt = frame.wkt()) {
    std::vector<float> values;
    for (int i = 0; i < 100 * 100; ++i) {
        values.push_back(i % 100 < 50 ? 10.0F : 200.0F);
    }
    gdal::RasterToWrite raster;
    raster.west_m = east_m - 500.0;
    raster.north_m = 500.0;
    raster.cell_m = 10.0;
    raster.cols = 100;
    raster.rows = 100;
    raster.values = values;
    raster.wkt = wkt;
    auto path = folder.path() / "two-tone.tif";
    EXPECT_TRUE(gdal::writeRasterFile(path, raster).has_value());
    return path;
}

std::filesystem::path textFile(const ScratchFolder& folder, const char* name,
                               const std::string& text) {
    auto path = folder.path() / name;
    std::ofstream(path) << text;
    return path;
}

unsigned greyAt(const water::Backdrop& backdrop, geo::WaterPoint p) {
    const auto col =
        static_cast<std::size_t>((p.x_m - backdrop.window.west_m) / backdrop.window.pixel_m);
    const auto row =
        static_cast<std::size_t>((backdrop.window.north_m - p.y_m) / backdrop.window.pixel_m);
    return backdrop.argb[row * static_cast<std::size_t>(backdrop.window.cols) + col];
}

TEST(Backdrop, APictureLiesWhereItBelongsInTheWatersFrame) {
    const ScratchFolder folder;
    const auto path = twoTone(folder);
    base::Progress silent;
    const auto place = water::lookAtBackdrop(path, frame, lake, silent);
    ASSERT_TRUE(place.has_value()) << place.error().sentence();
    EXPECT_NEAR(place->whole.west_m, -500.0, 0.01);
    EXPECT_NEAR(place->whole.north_m, 500.0, 0.01);
    const auto backdrop = water::showBackdrop(path, *place, {-600.0, 400.0, 4.0, 300, 200}, silent);
    ASSERT_TRUE(backdrop.has_value()) << backdrop.error().sentence();
    EXPECT_EQ(greyAt(*backdrop, {-300.0, 0.0}) >> 24U, 255U);
    EXPECT_LT(greyAt(*backdrop, {-300.0, 0.0}) & 255U, 10U);
    EXPECT_GT(greyAt(*backdrop, {300.0, 0.0}) & 255U, 245U);
    EXPECT_EQ(greyAt(*backdrop, {-580.0, 0.0}) >> 24U, 0U) << "nothing beyond its edge";
}

TEST(Backdrop, APictureInAnotherProjectionIsBroughtIntoTheFrame) {
    const ScratchFolder folder;
    const geo::WaterFrame other = geo::WaterFrame::centredOn({3.12, 55.21}).value();
    const geo::WaterPoint shift = frame.toWater(other.centre());
    const auto path = twoTone(folder, 0.0, other.wkt());
    base::Progress silent;
    const auto place = water::lookAtBackdrop(path, frame, lake, silent);
    ASSERT_TRUE(place.has_value()) << place.error().sentence();
    EXPECT_NEAR(place->whole.west_m, shift.x_m - 500.0, 2.0);
    const auto backdrop = water::showBackdrop(
        path, *place, {shift.x_m - 600.0, shift.y_m + 400.0, 4.0, 300, 200}, silent);
    ASSERT_TRUE(backdrop.has_value());
    EXPECT_LT(greyAt(*backdrop, {shift.x_m - 300.0, shift.y_m}) & 255U, 10U);
    EXPECT_GT(greyAt(*backdrop, {shift.x_m + 300.0, shift.y_m}) & 255U, 245U);
}

TEST(Backdrop, LaysTheFrameForAWaterThatHasNone) {
    const ScratchFolder folder;
    base::Progress silent;
    const auto place = water::lookAtBackdrop(twoTone(folder), std::nullopt, {}, silent);
    ASSERT_TRUE(place.has_value()) << place.error().sentence();
    EXPECT_NEAR(place->frame.centre().lon_deg, 3.1, 0.011);
    EXPECT_NEAR(place->frame.centre().lat_deg, 55.2, 0.011);
}

TEST(Backdrop, OneFarAwaySaysHowFar) {
    const ScratchFolder folder;
    base::Progress silent;
    const auto place = water::lookAtBackdrop(twoTone(folder, 40000.0), frame, lake, silent);
    ASSERT_FALSE(place.has_value());
    EXPECT_EQ(place.error().kind, base::ErrorKind::unusableInput);
    EXPECT_NE(place.error().sentence().find("39 km from the water"), std::string::npos)
        << place.error().sentence();
}

TEST(Backdrop, OneThatDoesNotSayWhereItLiesIsRefusedInWords) {
    const ScratchFolder folder;
    base::Progress silent;
    const auto plain = water::lookAtBackdrop(textFile(folder, "plain.pgm", "P5\n2 2\n255\nabcd"),
                                             frame, lake, silent);
    ASSERT_FALSE(plain.has_value());
    EXPECT_NE(plain.error().sentence().find("does not say where on the Earth"), std::string::npos)
        << plain.error().sentence();
    const auto noSystem = water::lookAtBackdrop(
        textFile(folder, "grid.asc",
                 "ncols 2\nnrows 2\nxllcorner 0\nyllcorner 0\ncellsize 10\n1 2\n3 4\n"),
        frame, lake, silent);
    ASSERT_FALSE(noSystem.has_value());
    EXPECT_NE(noSystem.error().sentence().find("reference system"), std::string::npos)
        << noSystem.error().sentence();
    const auto text =
        water::lookAtBackdrop(textFile(folder, "no.txt", "not a map"), frame, lake, silent);
    ASSERT_FALSE(text.has_value());
    EXPECT_NE(text.error().sentence().find("neither a picture nor a map"), std::string::npos);
    EXPECT_FALSE(
        water::lookAtBackdrop(folder.path() / "missing.tif", frame, lake, silent).has_value());
}

TEST(Backdrop, LinesAndAreasOfAVectorFileBecomeLines) {
    const ScratchFolder folder;
    const auto path = textFile(folder, "roads.geojson",
                               R"({"type":"FeatureCollection","features":[
{"type":"Feature","properties":{},"geometry":{"type":"LineString","coordinates":[[3.098,55.2],[3.102,55.2]]}},
{"type":"Feature","properties":{},"geometry":{"type":"Polygon","coordinates":[[[3.1,55.2],[3.101,55.2],[3.101,55.201],[3.1,55.2]]]}},
{"type":"Feature","properties":{},"geometry":{"type":"LineString","coordinates":[[3.3,55.2],[3.31,55.2]]}}]})");
    base::Progress silent;
    const auto place = water::lookAtBackdrop(path, frame, lake, silent);
    ASSERT_TRUE(place.has_value()) << place.error().sentence();
    const auto backdrop = water::showBackdrop(path, *place, {-600.0, 400.0, 4.0, 300, 200}, silent);
    ASSERT_TRUE(backdrop.has_value()) << backdrop.error().sentence();
    EXPECT_TRUE(backdrop->argb.empty());
    ASSERT_EQ(backdrop->lines.size(), 2U) << "the third lies out of sight";
    EXPECT_EQ(backdrop->lines[1].front(), backdrop->lines[1].back()) << "areas are closed";
}

} // namespace
