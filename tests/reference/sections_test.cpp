// SPDX-License-Identifier: GPL-3.0-or-later
// Sections of real and invented lakes against pieces cut from the same fishable water by k-means
// (Lloyd, S. P. 1982, Least squares quantization in PCM, IEEE Trans. Inform. Theory 28, 129-137):
// same number, straight-line distance. Compactness 4 pi A / P^2 (Polsby and Popper 1991) with the
// length of border counted in cell sides on both, so that neither gains from smoothing.
#include "core/gdal/raster_file.h"
#include "core/grid/connected_pieces.h"
#include "core/sections/divide_water.h"
#include "tests/support/ruler_pieces.h"

#include <filesystem>

#include <gtest/gtest.h>

namespace {

constexpr double limit_m = 9.144;

std::optional<support::KnownLake> lakeIn(const std::string& file) {
    const std::filesystem::path path = std::filesystem::path(MEREMARK_SHARED_DIR) / file;
    if (!std::filesystem::exists(path)) {
        return std::nullopt;
    }
    return support::knownLake(gdal::readRasterFile(path).value(), limit_m);
}

sections::SectionMap divided(const support::KnownLake& lake, double wanted_ha) {
    const geo::WaterFrame frame = geo::WaterFrame::centredOn({3.1, 55.2}).value();
    const geo::Box box = lake.depth.frame().box();
    const auto outline = geo::Outline::make(std::vector{geo::Piece{{{box.west_m, box.south_m},
                                                                    {box.east_m, box.south_m},
                                                                    {box.east_m, box.north_m},
                                                                    {box.west_m, box.north_m}},
                                                                   {}}},
                                            frame);
    const auto bands = contours::Bands::make({units::Depth::metres(2)}, units::Depth::feet(30));
    sections::SectionSettings settings;
    settings.wantedArea = units::Area::hectares(wanted_ha);
    base::Progress silent;
    return sections::divideWater({.depth = lake.depth,
                                  .mask = lake.mask,
                                  .outline = *outline,
                                  .frame = frame,
                                  .bands = *bands},
                                 settings, silent)
        .value();
}

class SectionsOfALake : public testing::TestWithParam<const char*> {};

/// True where every fishable cell is in a section, each connected part of one is near the wanted
/// size or all that nature has left there, and no more parts than sections but for crumbs.
void expectWholeAndNearTheWantedSize(const support::KnownLake& lake, double wanted_ha) {
    const double wanted_m2 = wanted_ha * 1e4;
    const sections::SectionMap map = divided(lake, wanted_ha);
    grid::Grid<std::int32_t> isFishable(lake.depth.frame(), -1);
    std::size_t covered = 0;
    for (const std::size_t i : lake.fishable) {
        covered += map.sectionOfCell[i] != sections::noSection ? 1 : 0;
        isFishable[i] = 0;
    }
    EXPECT_EQ(covered, lake.fishable.size());
    const grid::ConnectedPieces water = grid::connectedPieces(isFishable);
    const grid::ConnectedPieces parts = grid::connectedPieces(map.sectionOfCell);
    const double cell_m2 = lake.depth.frame().cellArea_m2();
    const double crumb_m2 = sections::SectionSettings().leastPocket * wanted_m2;
    std::size_t crumbs = 0;
    std::size_t outside = 0;
    for (const std::vector<std::size_t>& part : parts.cells) {
        const double area_m2 = static_cast<double>(part.size()) * cell_m2;
        const auto& pocket = water.cells[static_cast<std::size_t>(water.pieceOfCell[part.front()])];
        crumbs += area_m2 < crumb_m2 ? 1 : 0;
        outside +=
            area_m2 > 1.6 * wanted_m2 || (area_m2 < 0.5 * wanted_m2 && pocket.size() != part.size())
                ? 1
                : 0;
    }
    EXPECT_EQ(outside, 0U) << "of " << parts.cells.size();
    // More parts than sections are crumbs that nature has cut off.
    EXPECT_LE(parts.cells.size(), map.sections.size() + crumbs);
}

TEST_P(SectionsOfALake, CoverTheFishableWaterOnceInConnectedPiecesNearTheWantedSize) {
    const auto lake = lakeIn(GetParam());
    if (!lake) {
        GTEST_SKIP() << "needs " << GetParam() << " in " MEREMARK_SHARED_DIR;
    }
    for (const double wanted_ha : {2.0, 4.0, 8.0}) {
        SCOPED_TRACE(testing::Message() << wanted_ha << " ha");
        expectWholeAndNearTheWantedSize(*lake, wanted_ha);
    }
}

TEST_P(SectionsOfALake, AreCompactAndTellShallowFromDeepBetterThanKMeans) {
    const auto lake = lakeIn(GetParam());
    if (!lake) {
        GTEST_SKIP() << "needs " << GetParam() << " in " MEREMARK_SHARED_DIR;
    }
    const sections::SectionMap map = divided(*lake, 4.0);
    const std::size_t count = map.sections.size();
    const support::PieceFigures ours = support::figuresOf(*lake, map.sectionOfCell, count);
    const support::PieceFigures straight =
        support::figuresOf(*lake, support::rulerPieces(*lake, count), count);
    EXPECT_GE(ours.compactness, 0.8 * straight.compactness);
    EXPECT_GE(ours.explained, (straight.explained < 0.6 ? 1.3 : 1.0) * straight.explained);
    // The division's own account of itself is about the same water.
    EXPECT_NEAR(map.report.explained, ours.explained, 0.02);
    EXPECT_NEAR(map.report.straightExplained, straight.explained, 0.05);
}

/// A few large sections leave little choice: they tell a fifth more where a ruler tells little, and
/// never less, but for a bottom so even that neither has anything to tell.
TEST_P(SectionsOfALake, TellMoreOfTheDepthsThanKMeansAlsoWhereTheyAreFewAndLarge) {
    const auto lake = lakeIn(GetParam());
    if (!lake) {
        GTEST_SKIP() << "needs " << GetParam() << " in " MEREMARK_SHARED_DIR;
    }
    for (const double wanted_ha : {8.0, 10.0}) {
        SCOPED_TRACE(testing::Message() << wanted_ha << " ha");
        const sections::SectionMap map = divided(*lake, wanted_ha);
        const std::size_t count = map.sections.size();
        const support::PieceFigures ours = support::figuresOf(*lake, map.sectionOfCell, count);
        const support::PieceFigures straight =
            support::figuresOf(*lake, support::rulerPieces(*lake, count), count);
        constexpr double nothingToTell = 0.02;
        EXPECT_EQ(ours.torn, 0U);
        EXPECT_GE(ours.compactness, 0.8 * straight.compactness);
        EXPECT_GE(ours.explained + (straight.explained < nothingToTell ? nothingToTell : 0.0),
                  (straight.explained < 0.6 ? 1.2 : 1.0) * straight.explained);
    }
}

INSTANTIATE_TEST_SUITE_P(Lakes, SectionsOfALake,
                         testing::Values("bench/truth-A.tif", "bench/truth-B.tif",
                                         "bench/truth-C.tif", "bench/truth-D.tif",
                                         "data/csls_long_wi/truth.tif"));

} // namespace
