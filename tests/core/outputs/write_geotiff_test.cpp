// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/outputs/write_geotiff.h"

#include "core/gdal/coordinates.h"
#include "core/gdal/raster_file.h"
#include "tests/support/scratch_folder.h"

#include <cmath>

#include <gtest/gtest.h>

namespace {

using support::ScratchFolder;

/// Five cells of 4 m by three, another figure in each of them; two of them are land.
class WriteGeotiff : public testing::Test {
protected:
    WriteGeotiff() {
        grid::Grid<float> halfWidth_m(cells, NAN);
        for (std::size_t i = 0; i < cells.size(); ++i) {
            if (i != 3 && i != 11) {
                depth.set(i, units::Depth::metres(1.25 + 0.5 * static_cast<double>(i)));
                halfWidth_m[i] = 0.125F + 0.0625F * static_cast<float>(i);
            }
        }
        trust =
            surface::TrustGrid(std::move(halfWidth_m),
                               grid::Grid<surface::TrustName>(cells, surface::TrustName::inferred));
    }
    /// What does not depend on which of the grids it is.
    void expectLiesWhereTheCellsDo(const gdal::Raster& raster) const {
        EXPECT_EQ(raster.cols, 5);
        EXPECT_EQ(raster.rows, 3);
        EXPECT_EQ(raster.transform, (std::array<double, 6>{-36.0, 4.0, 0.0, 68.0, 0.0, -4.0}));
        // Its reference system brings the corner of the cells to where the water's frame has it.
        const auto coordinates = gdal::Coordinates::ofWkt(raster.wkt);
        ASSERT_TRUE(coordinates.has_value());
        const auto corner = coordinates->fromEarth(frame.toEarth(geo::WaterPoint{-36.0, 68.0}));
        ASSERT_TRUE(corner.has_value());
        EXPECT_NEAR(corner->x, -36.0, 1e-3);
        EXPECT_NEAR(corner->y, 68.0, 1e-3);
    }
    geo::WaterFrame frame = geo::WaterFrame::centredOn({3.1, 55.2}).value();
    grid::GridFrame cells{-36.0, 68.0, 4.0, 5, 3};
    grid::DepthGrid depth{cells};
    surface::TrustGrid trust;
    ScratchFolder folder;
};

TEST_F(WriteGeotiff, DepthsAreMetresPositiveDownFromTheNorthWestCorner) {
    const auto path = folder.path() / "depth.tif";
    ASSERT_TRUE(outputs::writeDepthGeotiff(path, depth, frame).has_value());
    const auto raster = gdal::readRasterFile(path);
    ASSERT_TRUE(raster.has_value()) << raster.error().sentence();
    expectLiesWhereTheCellsDo(*raster);
    ASSERT_EQ(raster->bands.size(), 1U);
    for (std::size_t i = 0; i < cells.size(); ++i) {
        if (i == 3 || i == 11) {
            EXPECT_TRUE(std::isnan(raster->bands[0][i])) << i;
        } else {
            EXPECT_EQ(raster->bands[0][i], 1.25F + 0.5F * static_cast<float>(i)) << i;
        }
    }
    const std::string bytes = ScratchFolder::textOf(path);
    EXPECT_NE(bytes.find("depth below chart level, metres, positive down. Drawn from an angler's "
                         "own soundings: not for navigation."),
              std::string::npos);
    EXPECT_NE(bytes.find("-9999"), std::string::npos) << "the mark of land is said in the file";
}

TEST_F(WriteGeotiff, TrustIsTheHalfWidthOfEachCell) {
    const auto path = folder.path() / "trust.tif";
    ASSERT_TRUE(outputs::writeTrustGeotiff(path, trust, frame).has_value());
    const auto raster = gdal::readRasterFile(path);
    ASSERT_TRUE(raster.has_value()) << raster.error().sentence();
    expectLiesWhereTheCellsDo(*raster);
    for (std::size_t i = 0; i < cells.size(); ++i) {
        if (i == 3 || i == 11) {
            EXPECT_TRUE(std::isnan(raster->bands[0][i])) << i;
        } else {
            EXPECT_EQ(raster->bands[0][i], 0.125F + 0.0625F * static_cast<float>(i)) << i;
        }
    }
    EXPECT_NE(ScratchFolder::textOf(path).find("half-width of the 95 % band"), std::string::npos);
}

TEST_F(WriteGeotiff, SaysWhereItCannotWriteAndLeavesNothingBehind) {
    const auto path = folder.path() / "no" / "such" / "depth.tif";
    for (const auto& written : {outputs::writeDepthGeotiff(path, depth, frame),
                                outputs::writeTrustGeotiff(path, trust, frame)}) {
        ASSERT_FALSE(written.has_value());
        EXPECT_EQ(written.error().kind, base::ErrorKind::unwritableOutput);
        EXPECT_NE(written.error().sentence().find(path.string()), std::string::npos);
    }
    EXPECT_TRUE(std::filesystem::is_empty(folder.path()));
}

} // namespace
