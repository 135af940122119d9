// SPDX-License-Identifier: GPL-3.0-or-later
// Waters drawn from soundings, real (Lake Caputh) and of the gridding bench, drawn once more after
// what happens between two evenings: a few soundings are others, a day comes in, the shore was
// traced some metres off. Yesterday's numbers must still speak of the same water.
#include "core/sections/divide_water.h"
#include "core/sections/number_sections.h"
#include "core/surface/draw_water.h"

#include "tests/support/gridding_case.h"

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <optional>
#include <random>
#include <set>

#include <gtest/gtest.h>

namespace {

using sections::SectionMap;
using soundings::KeptSounding;
using Soundings = std::vector<KeptSounding>;

constexpr double wantedShare = 0.95; ///< Of the area keeps its number.

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

class NumbersOfSections : public testing::TestWithParam<Case> {
protected:
    void SetUp() override {
        if (!std::filesystem::exists(folderOf(GetParam()) / "shore.geojson")) {
            GTEST_SKIP() << "needs " << GetParam().folder << " in " MEREMARK_SHARED_DIR;
        }
        water_ = support::readGriddingCase(folderOf(GetParam()).string()).value();
    }

    /// Coarse and with a fixed stiffness: quick, and the same ground for all drawings.
    SectionMap divided(const geo::Outline& outline, const Soundings& soundings,
                       const sections::Numbering& known) const {
        surface::DrawSettings draw;
        draw.cell = units::Length::metres(8.0);
        draw.stiffness = 300.0;
        draw.contourStiffness = 30.0;
        draw.withTrust = false;
        base::Progress silent;
        const auto ground = surface::drawWater(outline, soundings, draw, silent).value();
        return sections::divideWater({.depth = ground.depth,
                                      .mask = ground.mask,
                                      .outline = outline,
                                      .frame = water_->frame,
                                      .bands = contours::Bands(),
                                      .numbering = known},
                                     {}, silent)
            .value();
    }

    /// Draws once more and looks what became of the numbers.
    void expectNumbersKept(const char* what, const geo::Outline& outline, const Soundings& earlier,
                           const Soundings& later) const {
        const SectionMap before = divided(water_->outline, earlier, {});
        const auto known = sections::numberingAfter(
            before, {}, sections::SectionSettings().wantedArea, water_->frame);
        const SectionMap after = divided(outline, later, known);
        double stayed = 0.0;
        double all = 0.0;
        const grid::GridFrame& cells = before.sectionOfCell.frame();
        for (std::size_t i = 0; i < before.sectionOfCell.size(); ++i) {
            const auto was = before.sectionOfCell[i];
            const auto is = sections::sectionAt(after, cells.centre(cells.cellAt(i)));
            if (was != sections::noSection && is != sections::noSection) {
                all += 1.0;
                stayed += before.sections[static_cast<std::size_t>(was)].number ==
                                  after.sections[static_cast<std::size_t>(is)].number
                              ? 1.0
                              : 0.0;
            }
        }
        std::set<int> numbers;
        for (const sections::Section& section : after.sections) {
            EXPECT_TRUE(numbers.insert(section.number).second) << what << ": " << section.number;
        }
        RecordProperty(what, std::to_string(100.0 * stayed / all));
        std::printf("%-8s %-16s %5.1f %% of %zu -> %zu sections\n", GetParam().name, what,
                    100.0 * stayed / all, before.sections.size(), after.sections.size());
        EXPECT_GE(stayed / all, wantedShare) << what;
    }

    std::optional<support::GriddingCase> water_;
};

/// One in a hundred left out, one in a hundred off by some decimetres.
Soundings changed(const Soundings& soundings, unsigned seed) {
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> draw(0.0, 1.0);
    std::normal_distribution<double> error_m(0.0, 0.3);
    Soundings out;
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

/// Without a quarter of the passes: what was there before the last day.
Soundings beforeTheLastDay(const Soundings& soundings) {
    Soundings out;
    std::ranges::copy_if(soundings, std::back_inserter(out),
                         [](const KeptSounding& s) { return s.pass % 4 != 3; });
    return out;
}

TEST_P(NumbersOfSections, StayWhenOneSoundingInFiftyIsAnother) {
    for (const unsigned seed : {1U, 2U}) {
        expectNumbersKept("two_percent", water_->outline, water_->soundings,
                          changed(water_->soundings, seed));
    }
}

TEST_P(NumbersOfSections, StayWhenADayComesIn) {
    expectNumbersKept("a_day", water_->outline, beforeTheLastDay(water_->soundings),
                      water_->soundings);
}

TEST_P(NumbersOfSections, StayWhenTheShoreWasTracedFiveMetresOff) {
    std::vector<geo::Piece> moved = water_->outline.pieces();
    for (geo::Piece& piece : moved) {
        const auto move = [](geo::Ring& ring) {
            for (geo::WaterPoint& p : ring) {
                p = {p.x_m + 4.0, p.y_m - 3.0};
            }
        };
        move(piece.outer);
        std::ranges::for_each(piece.islands, move);
    }
    expectNumbersKept("shore_5_m", geo::Outline::make(moved, water_->frame).value(),
                      water_->soundings, water_->soundings);
}

INSTANTIATE_TEST_SUITE_P(Waters, NumbersOfSections,
                         testing::Values(Case{"Caputh", "data/caputh_de"},
                                         Case{"A", "bench/cases/A-lines"},
                                         Case{"B", "bench/cases/B-irreg"},
                                         Case{"C", "bench/cases/C-lines"},
                                         Case{"D", "bench/cases/D-lines"}),
                         [](const auto& given) { return std::string(given.param.name); });

} // namespace
