// SPDX-License-Identifier: GPL-3.0-or-later
// Waters drawn from soundings, real (Lake Caputh) and of the gridding bench: their sections hold
// together, are of the wanted size but for what nature has cut off, come out the same twice, and
// stay where they are when one sounding in fifty is another.
#include "core/grid/connected_pieces.h"
#include "core/sections/divide_water.h"
#include "core/surface/draw_water.h"

#include "tests/support/gridding_case.h"

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <map>
#include <random>

#include <gtest/gtest.h>

namespace {

using sections::SectionMap;
using soundings::KeptSounding;

struct Case {
    const char* name;
    const char* folder; ///< With shore.geojson and soundings*.csv (lon, lat, depth_m).
};

void PrintTo(const Case& c, std::ostream* out) {
    *out << c.folder;
}

std::filesystem::path folderOf(const Case& c) {
    return std::filesystem::path(MEREMARK_SHARED_DIR) / c.folder;
}

/// Coarse and with a fixed stiffness: quick, and the same ground for both drawings.
surface::DrawnWater drawn(const support::GriddingCase& water,
                          const std::vector<KeptSounding>& soundings) {
    surface::DrawSettings settings;
    settings.cell = units::Length::metres(8.0);
    settings.stiffness = 300.0;
    settings.contourStiffness = 30.0;
    settings.withTrust = false;
    base::Progress silent;
    return surface::drawWater(water.outline, soundings, settings, silent).value();
}

SectionMap divided(const support::GriddingCase& water, const surface::DrawnWater& ground,
                   double wanted_ha) {
    sections::SectionSettings settings;
    settings.wantedArea = units::Area::hectares(wanted_ha);
    base::Progress silent;
    return sections::divideWater({.depth = ground.depth,
                                  .mask = ground.mask,
                                  .outline = water.outline,
                                  .frame = water.frame,
                                  .bands = contours::Bands()},
                                 settings, silent)
        .value();
}

/// One in a hundred left out, one in a hundred off by some decimetres.
std::vector<KeptSounding> changed(const std::vector<KeptSounding>& soundings, unsigned seed) {
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> draw(0.0, 1.0);
    std::normal_distribution<double> error_m(0.0, 0.3);
    std::vector<KeptSounding> out;
    for (KeptSounding s : soundings) {
        const double fate = draw(random);
        if (fate < 0.01) {
            continue;
        }
        if (fate < 0.02) {
            s.depth_m = std::max(0.1, s.depth_m + error_m(random));
        }
        out.push_back(s);
    }
    return out;
}

/// Share of the cells that are not in the section which holds most of what their section was, each
/// new section standing for one old section only.
double movedShare(const SectionMap& before, const SectionMap& after) {
    std::map<std::pair<int, int>, std::size_t> both;
    std::size_t all = 0;
    for (std::size_t i = 0; i < before.sectionOfCell.size(); ++i) {
        const int was = before.sectionOfCell[i];
        if (was != sections::noSection) {
            ++both[{was, after.sectionOfCell[i]}];
            ++all;
        }
    }
    std::vector<std::pair<std::size_t, std::pair<int, int>>> largest;
    for (const auto& [pair, cells] : both) {
        largest.emplace_back(cells, pair);
    }
    std::sort(largest.rbegin(), largest.rend());
    std::map<int, bool> oldTaken;
    std::map<int, bool> newTaken;
    std::size_t stayed = 0;
    for (const auto& [cells, pair] : largest) {
        if (pair.second >= 0 && !oldTaken[pair.first] && !newTaken[pair.second]) {
            oldTaken[pair.first] = newTaken[pair.second] = true;
            stayed += cells;
        }
    }
    return 1.0 - static_cast<double>(stayed) / static_cast<double>(all);
}

class SectionsOfADrawnWater : public testing::TestWithParam<Case> {
protected:
    void SetUp() override {
        if (!std::filesystem::exists(folderOf(GetParam()) / "shore.geojson")) {
            GTEST_SKIP() << "needs " << GetParam().folder << " in " MEREMARK_SHARED_DIR;
        }
    }
};

/// Parts of sections that are too large, or too small though more of the same water goes on.
std::size_t outOfSize(const SectionMap& map, const grid::ConnectedPieces& fishable,
                      double wanted_m2) {
    const double cell_m2 = map.sectionOfCell.frame().cellArea_m2();
    const auto parts = grid::connectedPieces(map.sectionOfCell).cells;
    return static_cast<std::size_t>(
        std::count_if(parts.begin(), parts.end(), [&](const auto& part) {
            const double area_m2 = static_cast<double>(part.size()) * cell_m2;
            const auto pocket = static_cast<std::size_t>(fishable.pieceOfCell[part.front()]);
            const bool isPocket = fishable.cells[pocket].size() == part.size();
            return area_m2 > 1.6 * wanted_m2 || (area_m2 < 0.5 * wanted_m2 && !isPocket);
        }));
}

TEST_P(SectionsOfADrawnWater, CoverItOnceNearEveryWantedSizeAndComeOutTheSameTwice) {
    const support::GriddingCase water =
        support::readGriddingCase(folderOf(GetParam()).string()).value();
    const surface::DrawnWater ground = drawn(water, water.soundings);
    const auto limit_m = static_cast<float>(contours::Bands().limit().inMetres());
    grid::Grid<std::int32_t> isFishable(ground.depth.frame(), -1);
    for (std::size_t i = 0; i < isFishable.size(); ++i) {
        const float depth_m = ground.depth.raw_m()[i];
        isFishable[i] = depth_m >= 0.0F && depth_m <= limit_m ? 0 : -1;
    }
    const grid::ConnectedPieces fishable = grid::connectedPieces(isFishable);
    for (const double wanted_ha : {2.0, 4.0, 8.0}) {
        const SectionMap map = divided(water, ground, wanted_ha);
        std::size_t wrong = 0;
        for (std::size_t i = 0; i < isFishable.size(); ++i) {
            wrong += (isFishable[i] == 0) != (map.sectionOfCell[i] != sections::noSection) ? 1 : 0;
        }
        EXPECT_EQ(wrong, 0U) << wanted_ha << " ha";
        double bank_m = 0.0;
        for (const sections::Section& section : map.sections) {
            bank_m += section.shore.inMetres();
        }
        // a steep bank may be deeper than the limit in the very cell that it runs through
        EXPECT_GT(bank_m, 0.95 * water.outline.shoreLength().inMetres());
        EXPECT_LT(bank_m, 1.001 * water.outline.shoreLength().inMetres());
        const std::size_t outside = outOfSize(map, fishable, wanted_ha * 1e4);
        RecordProperty("out_of_size_at_" + std::to_string(static_cast<int>(wanted_ha)) + "_ha",
                       static_cast<int>(outside));
        EXPECT_EQ(outside, 0U) << wanted_ha << " ha";
        EXPECT_EQ(map.sectionOfCell, divided(water, ground, wanted_ha).sectionOfCell);
    }
}

TEST_P(SectionsOfADrawnWater, StayWhereTheyAreWhenOneSoundingInFiftyIsAnother) {
    const support::GriddingCase water =
        support::readGriddingCase(folderOf(GetParam()).string()).value();
    const SectionMap before = divided(water, drawn(water, water.soundings), 4.0);
    for (const unsigned seed : {1U, 2U}) {
        const SectionMap after = divided(water, drawn(water, changed(water.soundings, seed)), 4.0);
        const double moved = movedShare(before, after);
        RecordProperty("moved_percent_" + std::to_string(seed), std::to_string(100.0 * moved));
        EXPECT_LT(moved, 0.1) << "seed " << seed;
    }
}

INSTANTIATE_TEST_SUITE_P(Waters, SectionsOfADrawnWater,
                         testing::Values(Case{"Caputh", "data/caputh_de"},
                                         Case{"A", "bench/cases/A-lines"},
                                         Case{"B", "bench/cases/B-irreg"},
                                         Case{"C", "bench/cases/C-lines"},
                                         Case{"D", "bench/cases/D-lines"}),
                         [](const auto& given) { return std::string(given.param.name); });

} // namespace
