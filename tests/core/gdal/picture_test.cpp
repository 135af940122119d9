// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures in a window: each colour in its place, nothing where the file shows nothing.
#include "core/gdal/picture.h"

#include "core/gdal/raster_file.h"
#include "core/geo/path.h"
#include "core/geo/water_frame.h"
#include "tests/support/scratch_folder.h"

#include <cmath>

#include <gtest/gtest.h>

namespace gdal {

namespace {

using support::ScratchFolder;

const geo::WaterFrame frame = geo::WaterFrame::centredOn({3.1, 55.2}).value();

/// A picture of 40 by 20 pixels of 5 m with its north-west corner at 100 m west, 50 m north: red in
/// the north-west, green in the north-east, blue in the south-west, grey 100 in the south-east.
std::filesystem::path fourColours(const ScratchFolder& folder) {
    std::string pixels;
    for (int row = 0; row < 20; ++row) {
        for (int col = 0; col < 40; ++col) {
            const bool isEast = col >= 20;
            const std::string colour =
                row < 10
                    ? (isEast ? std::string("\x01\xfe\x02", 3) : std::string("\xfd\x03\x04", 3))
                    : (isEast ? std::string("\x64\x64\x64", 3) : std::string("\x05\x06\xfc", 3));
            pixels += colour;
        }
    }
    // Plain bytes, and a header that says where they lie.
    static_cast<void>(folder.file(
        "p.hdr", "ENVI\nsamples = 40\nlines = 20\nbands = 3\nheader offset = 0\n"
                 "file type = ENVI Standard\ndata type = 1\ninterleave = bip\nbyte order = 0\n"
                 "map info = {Transverse Mercator, 1, 1, -100, 50, 5, 5, WGS-84}\n"
                 "coordinate system string = {" +
                     frame.wkt() + "}\n"));
    return folder.file("p.dat", pixels);
}

std::uint32_t at(const Picture& picture, geo::WaterPoint p) {
    const PictureWindow& w = picture.window;
    const auto col = static_cast<std::size_t>((p.x_m - w.west_m) / w.pixel_m);
    const auto row = static_cast<std::size_t>((w.north_m - p.y_m) / w.pixel_m);
    return picture.argb.at(row * static_cast<std::size_t>(w.cols) + col);
}

std::filesystem::path grey(const ScratchFolder& folder, std::vector<float> values, int cols,
                           double cell_m = 5.0) {
    RasterToWrite raster;
    raster.west_m = -100.0;
    raster.north_m = 50.0;
    raster.cell_m = cell_m;
    raster.cols = cols;
    raster.rows = static_cast<int>(values.size()) / cols;
    raster.values = values;
    raster.wkt = frame.wkt();
    auto path = folder.path() / "grey.tif";
    EXPECT_TRUE(writeRasterFile(path, raster));
    return path;
}

TEST(Picture, GivesEachColourInItsPlaceAndNothingBeyondTheEdge) {
    const ScratchFolder folder;
    const auto path = fourColours(folder);
    base::Progress silent;
    const PictureWindow window{-120.0, 60.0, 2.0, 120, 60};
    const auto picture = readPicture(path, window, frame.wkt(), silent);
    ASSERT_TRUE(picture) << picture.error().sentence();
    EXPECT_EQ(picture->window, window);
    EXPECT_EQ(picture->argb.size(), 7200U);
    EXPECT_EQ(at(*picture, {-60.0, 30.0}), 0xfffd0304U);
    EXPECT_EQ(at(*picture, {60.0, 30.0}), 0xff01fe02U);
    EXPECT_EQ(at(*picture, {-60.0, -30.0}), 0xff0506fcU);
    EXPECT_EQ(at(*picture, {60.0, -30.0}), 0xff646464U);
    EXPECT_EQ(at(*picture, {-110.0, 0.0}) >> 24U, 0U);
    EXPECT_EQ(at(*picture, {0.0, 55.0}) >> 24U, 0U);
    EXPECT_EQ(at(*picture, {110.0, 0.0}) >> 24U, 0U);
    EXPECT_EQ(at(*picture, {0.0, -55.0}) >> 24U, 0U);
}

TEST(Picture, OneBandBecomesGreyFromItsLeastToItsGreatestValue) {
    const ScratchFolder folder;
    std::vector<float> values;
    for (int i = 0; i < 40 * 20; ++i) {
        values.push_back(i % 40 < 10 ? -3.0F : i % 40 < 20 ? 2.0F : i % 40 < 30 ? 7.0F : NAN);
    }
    base::Progress silent;
    const auto picture =
        readPicture(grey(folder, values, 40), {-120.0, 60.0, 2.0, 120, 60}, frame.wkt(), silent);
    ASSERT_TRUE(picture) << picture.error().sentence();
    EXPECT_EQ(at(*picture, {-80.0, 0.0}), 0xff010101U);
    EXPECT_NEAR(at(*picture, {-25.0, 0.0}) & 255U, 128.0, 1.0);
    EXPECT_EQ(at(*picture, {25.0, 0.0}), 0xffffffffU);
    EXPECT_EQ(at(*picture, {80.0, 0.0}) >> 24U, 0U) << "no data";
}

TEST(Picture, OfVeryManyPixelsForOneOneIsPicked) {
    const ScratchFolder folder;
    std::vector<float> stripes;
    for (int i = 0; i < 400 * 200; ++i) {
        stripes.push_back(i % 2 == 0 ? 0.0F : 100.0F);
    }
    base::Progress silent;
    const auto path = grey(folder, stripes, 400, 0.5);
    const auto picked = readPicture(path, {-100.0, 50.0, 10.0, 20, 10}, frame.wkt(), silent);
    ASSERT_TRUE(picked);
    for (const std::uint32_t pixel : picked->argb) {
        EXPECT_TRUE((pixel & 255U) == 1U || (pixel & 255U) == 255U) << (pixel & 255U);
    }
    const auto mixed = readPicture(path, {-100.0, 50.0, 2.0, 100, 50}, frame.wkt(), silent);
    ASSERT_TRUE(mixed);
    EXPECT_NEAR(at(*mixed, {0.5, 0.5}) & 255U, 128.0, 20.0);
}

TEST(PictureEdge, GoesRoundTheFileOnce) {
    const ScratchFolder folder;
    const auto edge = pictureEdge(grey(folder, std::vector<float>(800, 1.0F), 40));
    ASSERT_TRUE(edge) << edge.error().sentence();
    ASSERT_EQ(edge->size(), 32U);
    geo::Ring ring = frame.toWater(*edge);
    EXPECT_NEAR(ring[0].x_m, -100.0, 0.01);
    EXPECT_NEAR(ring[0].y_m, 50.0, 0.01);
    EXPECT_NEAR(ring[8].x_m, 100.0, 0.01);
    EXPECT_NEAR(ring[16].y_m, -50.0, 0.01);
    EXPECT_NEAR(ring[20].x_m, 0.0, 0.01);
    EXPECT_NEAR(geo::signedArea_m2(ring), -20000.0, 1.0);
}

TEST(Picture, RefusesAWindowWithoutPixelsOrWithTooMany) {
    const ScratchFolder folder;
    base::Progress silent;
    const auto path = grey(folder, std::vector<float>(800, 1.0F), 40);
    for (const PictureWindow& window : {PictureWindow{0, 0, 1.0, 0, 5},
                                        {0, 0, 1.0, 5, 0},
                                        {0, 0, 0.0, 5, 5},
                                        {0, 0, -1.0, 5, 5},
                                        {0, 0, 1.0, 8001, 8000},
                                        {0, 0, std::nan(""), 5, 5}}) {
        const auto refused = readPicture(path, window, frame.wkt(), silent);
        ASSERT_FALSE(refused);
        EXPECT_EQ(refused.error().kind, base::ErrorKind::wrongUse);
    }
    EXPECT_EQ(
        readPicture(folder.path() / "no.tif", {0, 0, 1.0, 5, 5}, frame.wkt(), silent).error().what,
        "there is no such file");
}

class StopsAtOnce : public base::Progress {
public:
    bool stopAsked() const override { return true; }
};

TEST(Picture, StopsWhenAsked) {
    const ScratchFolder folder;
    StopsAtOnce stop;
    const auto stopped = readPicture(grey(folder, std::vector<float>(800, 1.0F), 40),
                                     {-100.0, 50.0, 2.0, 100, 50}, frame.wkt(), stop);
    ASSERT_FALSE(stopped);
    EXPECT_EQ(stopped.error().kind, base::ErrorKind::cancelled);
}

} // namespace

} // namespace gdal
