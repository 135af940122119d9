// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gdal/raster_file.h"

#include "tests/support/scratch_folder.h"

#include <cmath>

#include <gtest/gtest.h>

namespace gdal {

namespace {

TEST(RasterFile, GivesBackWhatWasWritten) {
    const support::ScratchFolder scratch;
    const std::vector<float> values{1.5F, 2.25F, std::nanf(""), 4.0F, 5.0F, 6.5F};
    RasterToWrite raster{500000.0, 6651411.0, 2.5, 3, 2, values, -9999.0F, {}, "depth"};
    const auto path = scratch.path() / "depth.tif";
    const auto written = writeRasterFile(path, raster);
    ASSERT_TRUE(written) << written.error().sentence();
    const auto read = readRasterFile(path);
    ASSERT_TRUE(read) << read.error().sentence();
    EXPECT_EQ(read->cols, 3);
    EXPECT_EQ(read->rows, 2);
    EXPECT_TRUE(read->isUpright());
    EXPECT_DOUBLE_EQ(read->transform[0], 500000.0);
    EXPECT_DOUBLE_EQ(read->transform[1], 2.5);
    EXPECT_DOUBLE_EQ(read->transform[3], 6651411.0);
    EXPECT_DOUBLE_EQ(read->transform[5], -2.5);
    ASSERT_EQ(read->bands.size(), 1U);
    for (std::size_t i = 0; i < values.size(); ++i) {
        if (std::isnan(values[i])) {
            EXPECT_TRUE(std::isnan(read->bands[0][i]));
        } else {
            EXPECT_EQ(read->bands[0][i], values[i]);
        }
    }
}

TEST(RasterFile, LeavesNothingBehindWhereItCannotBeWritten) {
    const support::ScratchFolder scratch;
    const std::vector<float> values{1.0F};
    const RasterToWrite raster{0.0, 0.0, 1.0, 1, 1, values, -9999.0F, {}, {}};
    const auto written = writeRasterFile(scratch.path() / "nowhere" / "depth.tif", raster);
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().kind, base::ErrorKind::unwritableOutput);
    EXPECT_FALSE(written.error().whatToDo.empty());
    EXPECT_TRUE(std::filesystem::is_empty(scratch.path()));
}

TEST(RasterFile, KeepsTheOldFileWhereTheNewOneFails) {
    const support::ScratchFolder scratch;
    const auto path = scratch.file("depth.tif", "what was there");
    const std::vector<float> values{1.0F};
    const auto refused = writeRasterFile(path, {0.0, 0.0, 1.0, 2, 2, values, -9999.0F, {}, {}});
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().kind, base::ErrorKind::wrongUse);
    EXPECT_EQ(support::ScratchFolder::textOf(path), "what was there");
}

TEST(RasterFile, RefusesWhatIsNoRaster) {
    const support::ScratchFolder scratch;
    const auto read = readRasterFile(scratch.file("depth.tif", "this is no raster"));
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().kind, base::ErrorKind::unusableInput);
    EXPECT_FALSE(readRasterFile(scratch.path() / "missing.tif"));
}

TEST(RasterFile, ReadsARealElevationGridWithItsGaps) {
    const std::filesystem::path path =
        std::filesystem::path(MEREMARK_SHARED_DIR) / "data/csls_long_wi/truth.tif";
    if (!std::filesystem::exists(path)) {
        GTEST_SKIP() << "no open data at " << path;
    }
    const auto read = readRasterFile(path);
    ASSERT_TRUE(read) << read.error().sentence();
    EXPECT_EQ(read->cols, 404);
    EXPECT_EQ(read->rows, 248);
    EXPECT_NE(read->wkt.find("3071"), std::string::npos);
    float deepest_m = 0.0F;
    for (const float depth_m : read->bands.front()) {
        deepest_m = std::fmax(deepest_m, std::isnan(depth_m) ? 0.0F : depth_m);
    }
    EXPECT_NEAR(static_cast<double>(deepest_m), 2.99, 0.01); // its SOURCE.md
}

} // namespace

} // namespace gdal
