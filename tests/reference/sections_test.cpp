// SPDX-License-Identifier: GPL-3.0-or-later
// Sections of real and invented lakes against pieces cut from the same fishable water by k-means
// (Lloyd, S. P. 1982, Least squares quantization in PCM, IEEE Trans. Inform. Theory 28, 129-137):
// same number, straight-line distance. Compactness 4 pi A / P^2 (Polsby and Popper 1991) with the
// length of border counted in cell sides on both, so that neither gains from smoothing.
#include "core/gdal/raster_file.h"
#include "core/grid/connected_pieces.h"
#include "core/sections/divide_water.h"

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <numbers>
#include <numeric>
#include <random>

#include <gtest/gtest.h>

namespace {

constexpr double limit_m = 9.144;

struct Lake {
    grid::DepthGrid depth;
    grid::Mask mask;
    std::vector<std::size_t> fishable;
};

std::optional<Lake> lakeIn(const std::string& file) {
    const std::filesystem::path path = std::filesystem::path(MEREMARK_SHARED_DIR) / file;
    if (!std::filesystem::exists(path)) {
        return std::nullopt;
    }
    const auto raster = gdal::readRasterFile(path).value();
    const grid::GridFrame f(raster.transform[0], raster.transform[3], raster.transform[1],
                            raster.cols, raster.rows);
    Lake lake{grid::DepthGrid(f), {}, {}};
    grid::Grid<std::uint8_t> active(f, 0);
    for (std::size_t i = 0; i < f.size(); ++i) {
        if (const float depth_m = raster.bands.front()[i]; depth_m > 0.0F) {
            lake.depth.raw_m()[i] = depth_m;
            active[i] = 1;
            if (static_cast<double>(depth_m) <= limit_m) {
                lake.fishable.push_back(i);
            }
        }
    }
    lake.mask = grid::Mask::from(active);
    return lake;
}

sections::SectionMap divided(const Lake& lake, double wanted_ha) {
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

/// K-means of the fishable cells from several random starts (each middle drawn with a probability
/// as the squared distance from those before: k-means++, Arthur and Vassilvitskii 2007); the start
/// that ends with the least sum of squared distances counts. Every third cell speaks for three.
class KMeans {
public:
    KMeans(const Lake& lake, std::size_t count, unsigned seed) : middles_(count) {
        const grid::GridFrame& f = lake.depth.frame();
        for (std::size_t i = 0; i < lake.fishable.size(); i += 3) {
            places_.push_back(f.centre(f.cellAt(lake.fishable[i])));
        }
        start(seed);
        for (int round = 0; round < 40; ++round) {
            improve();
        }
    }

    [[nodiscard]] double sum() const { return sum_; }
    [[nodiscard]] std::size_t nearest(geo::WaterPoint p) const {
        std::size_t best = 0;
        for (std::size_t k = 1; k < middles_.size(); ++k) {
            best = squared(p, middles_[k]) < squared(p, middles_[best]) ? k : best;
        }
        return best;
    }

private:
    static double squared(geo::WaterPoint a, geo::WaterPoint b) {
        return (a.x_m - b.x_m) * (a.x_m - b.x_m) + (a.y_m - b.y_m) * (a.y_m - b.y_m);
    }

    void start(unsigned seed) {
        std::mt19937 random(seed);
        std::vector<double> away(places_.size(), 1.0);
        for (std::size_t k = 0; k < middles_.size(); ++k) {
            std::discrete_distribution<std::size_t> draw(away.begin(), away.end());
            middles_[k] = places_[draw(random)];
            for (std::size_t i = 0; i < places_.size(); ++i) {
                const double d = squared(places_[i], middles_[k]);
                away[i] = k == 0 ? d : std::min(away[i], d);
            }
        }
    }

    void improve() {
        std::vector<std::array<double, 3>> sums(middles_.size());
        sum_ = 0.0;
        for (const geo::WaterPoint p : places_) {
            const std::size_t k = nearest(p);
            sum_ += squared(p, middles_[k]);
            sums[k] = {sums[k][0] + p.x_m, sums[k][1] + p.y_m, sums[k][2] + 1.0};
        }
        for (std::size_t k = 0; k < middles_.size(); ++k) {
            if (sums[k][2] > 0.0) {
                middles_[k] = {sums[k][0] / sums[k][2], sums[k][1] / sums[k][2]};
            }
        }
    }

    std::vector<geo::WaterPoint> places_;
    std::vector<geo::WaterPoint> middles_;
    double sum_ = 0.0;
};

grid::PieceGrid kMeans(const Lake& lake, std::size_t count) {
    KMeans best(lake, count, 1);
    for (const unsigned seed : {2U, 3U}) {
        KMeans other(lake, count, seed);
        if (other.sum() < best.sum()) {
            best = std::move(other);
        }
    }
    const grid::GridFrame& f = lake.depth.frame();
    grid::PieceGrid pieces(f, -1);
    for (const std::size_t i : lake.fishable) {
        pieces[i] = static_cast<std::int32_t>(best.nearest(f.centre(f.cellAt(i))));
    }
    return pieces;
}

struct Figures {
    double explained = 0.0;
    double compactness = 0.0;
};

Figures figuresOf(const Lake& lake, const grid::PieceGrid& pieces, std::size_t count) {
    const grid::GridFrame& f = pieces.frame();
    struct Sums {
        double cells = 0.0;
        double depth = 0.0;
        double squares = 0.0;
        double sides = 0.0;
    };
    std::vector<Sums> sums(count);
    Sums all;
    for (const std::size_t i : lake.fishable) {
        const double depth_m = static_cast<double>(lake.depth.raw_m()[i]);
        const grid::Cell c = f.cellAt(i);
        int sides = 0;
        for (const grid::Cell n : {grid::Cell{c.col - 1, c.row}, grid::Cell{c.col + 1, c.row},
                                   grid::Cell{c.col, c.row - 1}, grid::Cell{c.col, c.row + 1}}) {
            sides += !f.holds(n) || pieces[n] != pieces[i] ? 1 : 0;
        }
        for (Sums* s : {&sums[static_cast<std::size_t>(pieces[i])], &all}) {
            s->cells += 1.0;
            s->depth += depth_m;
            s->squares += depth_m * depth_m;
            s->sides += sides;
        }
    }
    const auto scatter = [](const Sums& s) {
        return s.cells > 0.0 ? s.squares - s.depth * s.depth / s.cells : 0.0;
    };
    double within = 0.0;
    std::vector<double> compactness;
    for (const Sums& s : sums) {
        within += scatter(s);
        if (s.cells > 0.0) {
            compactness.push_back(4.0 * std::numbers::pi * s.cells / (s.sides * s.sides));
        }
    }
    std::sort(compactness.begin(), compactness.end());
    return {1.0 - within / scatter(all), compactness[compactness.size() / 2]};
}

class SectionsOfALake : public testing::TestWithParam<const char*> {};

/// True where every fishable cell is in a section, each connected part of one is near the wanted
/// size or all that nature has left there, and no more parts than sections but for crumbs.
void expectWholeAndNearTheWantedSize(const Lake& lake, double wanted_ha) {
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
    const Figures ours = figuresOf(*lake, map.sectionOfCell, count);
    const Figures straight = figuresOf(*lake, kMeans(*lake, count), count);
    EXPECT_GE(ours.compactness, 0.8 * straight.compactness);
    EXPECT_GE(ours.explained, (straight.explained < 0.6 ? 1.3 : 1.0) * straight.explained);
    // The division's own account of itself is about the same water.
    EXPECT_NEAR(map.report.explained, ours.explained, 0.02);
    EXPECT_NEAR(map.report.straightExplained, straight.explained, 0.05);
}

INSTANTIATE_TEST_SUITE_P(Lakes, SectionsOfALake,
                         testing::Values("bench/truth-A.tif", "bench/truth-B.tif",
                                         "bench/truth-C.tif", "bench/truth-D.tif",
                                         "data/csls_long_wi/truth.tif"));

} // namespace
