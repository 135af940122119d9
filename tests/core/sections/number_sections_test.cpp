// SPDX-License-Identifier: GPL-3.0-or-later
// Numbers, names and borders of sections through one drawing after the other.
#include "core/grid/connected_pieces.h"
#include "core/sections/divide_water.h"
#include "core/sections/number_sections.h"
#include "tests/support/made_up_water.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <random>
#include <set>

namespace {

using namespace sections;
using support::MadeUpWater;

/// A bay whose eastern bank lies at `east_m`, and its northern at `north_m`.
MadeUpWater bay(double east_m = 400.0, double north_m = 200.0) {
    return support::madeUpWater(
        {{support::rectangle(-300.0, -200.0, east_m, north_m), {}}},
        [](geo::WaterPoint p) { return 3.0 + 0.002 * p.x_m; }, 5.0);
}

struct Drawing {
    contours::Bands bands{};
    double wanted_ha = 2.0;
    std::vector<SectionName> names{};
};

SectionMap divided(const MadeUpWater& water, const Numbering& before, const Drawing& drawing = {}) {
    base::Progress silent;
    SectionSettings settings;
    settings.wantedArea = units::Area::hectares(drawing.wanted_ha);
    return divideWater({.depth = water.depth,
                        .mask = water.mask,
                        .outline = water.outline,
                        .frame = water.frame,
                        .bands = drawing.bands,
                        .names = drawing.names,
                        .numbering = before},
                       settings, silent)
        .value();
}

Numbering after(const SectionMap& map, const Numbering& before, const MadeUpWater& water,
                double wanted_ha = 2.0) {
    return numberingAfter(map, before, units::Area::hectares(wanted_ha), water.frame);
}

std::map<int, std::size_t> cellsByNumber(const SectionMap& map) {
    std::map<int, std::size_t> cells;
    for (const Section& section : map.sections) {
        EXPECT_TRUE(cells.emplace(section.number, section.cells.size()).second) << section.number;
    }
    return cells;
}

int numberAt(const SectionMap& map, geo::WaterPoint place) {
    const SectionNumber at = sectionAt(map, place);
    return at == noSection ? 0 : map.sections[static_cast<std::size_t>(at)].number;
}

int highest(const SectionMap& map) {
    return std::ranges::max(map.sections, {}, &Section::number).number;
}

TEST(NumberSections, BeginsWithOneAndGoesOnClockwise) {
    const SectionMap map = divided(bay(), {});
    for (std::size_t i = 0; i < map.sections.size(); ++i) {
        EXPECT_EQ(map.sections[i].number, static_cast<int>(i) + 1);
        EXPECT_EQ(map.sections[i].name, "Section " + std::to_string(i + 1));
    }
}

TEST(NumberSections, TheSameWaterGivesTheSameMapToTheCell) {
    const MadeUpWater water = bay();
    const SectionMap first = divided(water, {});
    Numbering known = after(first, {}, water);
    for (int times = 0; times < 3; ++times) {
        const SectionMap again = divided(water, known);
        EXPECT_EQ(again.sectionOfCell, first.sectionOfCell);
        EXPECT_EQ(cellsByNumber(again), cellsByNumber(first));
        const Numbering more = after(again, known, water);
        EXPECT_EQ(more, known) << "nothing is learnt from the same map";
        known = more;
    }
}

TEST(NumberSections, NewWaterGetsNewNumbersAndTheOldKeepsItsOwn) {
    const MadeUpWater small = bay(150.0);
    const SectionMap before = divided(small, {});
    const Numbering known = after(before, {}, small);
    const MadeUpWater large = bay(700.0);
    const SectionMap map = divided(large, known);
    const int known_ = highest(before);
    std::size_t fresh = 0;
    for (const Section& section : map.sections) {
        if (section.number > known_) {
            EXPECT_GT(section.middle.x_m, 150.0) << section.name;
            ++fresh;
        }
    }
    EXPECT_GE(fresh, 5U) << "22 ha more";
    for (std::size_t i = 0; i < before.sectionOfCell.size(); ++i) {
        const geo::WaterPoint place =
            before.sectionOfCell.frame().centre(before.sectionOfCell.frame().cellAt(i));
        if (before.sectionOfCell[i] != noSection && place.x_m < 140.0) {
            ASSERT_EQ(numberAt(map, place), numberAt(before, place));
        }
    }
}

TEST(NumberSections, AShoreTracedFartherOutGoesToTheNeighbours) {
    // A ribbon of 1.2 ha in all: enough for a section, were it not so narrow.
    const MadeUpWater water = bay(400.0, 800.0);
    const SectionMap before = divided(water, {});
    const MadeUpWater wider = bay(412.0, 800.0);
    const SectionMap map = divided(wider, after(before, {}, water));
    EXPECT_EQ(map.sections.size(), before.sections.size());
    EXPECT_EQ(highest(map), highest(before));
    for (const Section& section : map.sections) {
        EXPECT_GT(section.area.inHectares(), 1.0) << "no ribbon along the bank: " << section.name;
    }
}

TEST(NumberSections, ANumberIsNeverThatOfOtherWater) {
    const MadeUpWater water = bay();
    const SectionMap first = divided(water, {});
    Numbering known = after(first, {}, water);
    std::set<int> given;
    for (const Section& section : first.sections) {
        given.insert(section.number);
    }
    // West and east fishable in turn: what is shown in the west is gone when the east is shown.
    const auto half = [&](bool isWest) {
        MadeUpWater part = support::madeUpWater(
            {{support::rectangle(-300.0, -200.0, 400.0, 200.0), {}}},
            [isWest](geo::WaterPoint p) { return (p.x_m < 50.0) == isWest ? 4.0 : 40.0; }, 5.0);
        return part;
    };
    known = {};
    const MadeUpWater west = half(true);
    const MadeUpWater east = half(false);
    const SectionMap inWest = divided(west, known);
    known = after(inWest, known, west);
    const SectionMap inEast = divided(east, known);
    known = after(inEast, known, east);
    EXPECT_GT(inEast.sections.front().number, highest(inWest));
    // And back: the west is the west that it was.
    const SectionMap again = divided(west, known);
    for (const Section& section : again.sections) {
        EXPECT_LE(section.number, highest(inWest)) << section.name;
    }
    EXPECT_EQ(known.waters.size(), inWest.sections.size() + inEast.sections.size());
}

TEST(NumberSections, AnotherSizeTakesTheNumbersAlongAndBringsThemBack) {
    const MadeUpWater water = bay();
    const SectionMap fine = divided(water, {});
    Numbering known = after(fine, {}, water);
    const SectionMap coarse = divided(water, known, {.wanted_ha = 5.0});
    EXPECT_LT(coarse.sections.size(), fine.sections.size());
    for (const Section& section : coarse.sections) {
        EXPECT_LE(section.number, highest(fine)) << "each holds water that had a number";
    }
    known = after(coarse, known, water, 5.0);
    EXPECT_EQ(known.waters.size(), fine.sections.size()) << "none is lost";
    const SectionMap back = divided(water, known);
    std::size_t kept = 0;
    for (std::size_t i = 0; i < back.sectionOfCell.size(); ++i) {
        const geo::WaterPoint place =
            back.sectionOfCell.frame().centre(back.sectionOfCell.frame().cellAt(i));
        kept += numberAt(back, place) == numberAt(fine, place) ? 1U : 0U;
    }
    EXPECT_EQ(kept, back.sectionOfCell.size());
}

TEST(NumberSections, ANameGoesWithItsNumberAndNotWithItsPlace) {
    const MadeUpWater water = bay();
    const SectionMap map = divided(water, {});
    const Numbering known = after(map, {}, water);
    const Section& named = map.sections[2];
    const Section& other = map.sections[4];
    // The border has moved since: the place lies in another section now.
    const SectionName name{water.frame.toEarth(other.middle), "Long Bar", named.number};
    const SectionMap redrawn = divided(water, known, {.names = {name}});
    EXPECT_EQ(redrawn.sections[2].name, "Long Bar");
    EXPECT_EQ(redrawn.sections[4].name, "Section " + std::to_string(other.number));
    // Where nothing has the number any more, the place speaks.
    const SectionName lost{water.frame.toEarth(other.middle), "Heron Bay", 77};
    const SectionMap byPlace = divided(water, known, {.names = {name, lost}});
    EXPECT_EQ(byPlace.sections[4].name, "Heron Bay");
}

TEST(NumberSections, ANameByNumberStandsAgainstOneByPlaceInEitherOrder) {
    const MadeUpWater water = bay();
    const SectionMap map = divided(water, {});
    const Numbering known = after(map, {}, water);
    const geo::LonLat place = water.frame.toEarth(map.sections[1].middle);
    std::vector<SectionName> names{{place, "Its own", map.sections[1].number}, {place, "Old", 0}};
    for (int times = 0; times < 2; ++times) {
        EXPECT_EQ(divided(water, known, {.names = names}).sections[1].name, "Its own");
        std::ranges::reverse(names);
    }
}

/// Numbers of sections of which a piece, not the largest, lies beside another section: only pockets
/// that nature has cut off may lie apart.
std::set<int> torn(const SectionMap& map) {
    grid::PieceGrid inSection(map.sectionOfCell.frame(), -1);
    for (std::size_t i = 0; i < inSection.size(); ++i) {
        inSection[i] = map.sectionOfCell[i] == noSection ? -1 : 0;
    }
    const grid::ConnectedPieces pockets = grid::connectedPieces(inSection);
    const grid::ConnectedPieces pieces = grid::connectedPieces(map.sectionOfCell);
    std::map<std::int32_t, int> inPocket;
    std::map<SectionNumber, std::size_t> largest;
    for (const auto& cells : pieces.cells) {
        ++inPocket[pockets.pieceOfCell[cells.front()]];
        std::size_t& most = largest[map.sectionOfCell[cells.front()]];
        most = std::max(most, cells.size());
    }
    std::set<int> torn;
    for (const auto& cells : pieces.cells) {
        const SectionNumber section = map.sectionOfCell[cells.front()];
        if (cells.size() < largest[section] && inPocket[pockets.pieceOfCell[cells.front()]] > 1) {
            torn.insert(map.sections[static_cast<std::size_t>(section)].number);
        }
    }
    return torn;
}

TEST(NumberSections, AKnollThatIsCutOffNoLongerGoesToTheWaterThatHasReachedIt) {
    // a knoll in a deep gully, nearer to the western bank of it
    const auto gullyUpTo = [](double east_m) {
        return support::madeUpWater(
            {{support::rectangle(-300.0, -200.0, 400.0, 200.0), {}}},
            [east_m](geo::WaterPoint p) {
                const bool isKnoll = std::hypot(p.x_m - 85.0, p.y_m) < 12.0;
                return p.x_m > 60.0 && p.x_m < east_m && !isKnoll ? 30.0 : 5.0;
            },
            5.0);
    };
    Drawing drawing;
    drawing.wanted_ha = 20.0;
    const MadeUpWater before = gullyUpTo(140.0);
    const SectionMap first = divided(before, {}, drawing);
    ASSERT_EQ(numberAt(first, {85.0, 0.0}), numberAt(first, {0.0, 0.0}));
    ASSERT_NE(numberAt(first, {85.0, 0.0}), numberAt(first, {300.0, 0.0}));
    const MadeUpWater silted = gullyUpTo(80.0);
    const SectionMap next = divided(silted, after(first, {}, before, 20.0), drawing);
    EXPECT_EQ(numberAt(next, {85.0, 0.0}), numberAt(next, {300.0, 0.0}));
    EXPECT_EQ(torn(next), std::set<int>());
}

/// Random shores, holes and limits, one after the other: whatever happens, each cell is in one
/// section, no two have one number, no number is lost, and the map settles at once.
TEST(NumberSections, HoldsThroughAnyRow) {
    for (unsigned seed = 1; seed <= 12; ++seed) {
        std::mt19937 random(seed);
        const auto between = [&](double low, double high) {
            return std::uniform_real_distribution<double>(low, high)(random);
        };
        Numbering known;
        std::set<int> everGiven;
        for (int drawing = 0; drawing < 5; ++drawing) {
            const double tilt = between(-0.02, 0.02);
            const double hole_m = between(-300.0, 300.0);
            const MadeUpWater water = support::madeUpWater(
                {{support::rectangle(-300.0, -200.0, between(200.0, 600.0), between(100.0, 300.0)),
                  {}}},
                [&](geo::WaterPoint p) {
                    return std::hypot(p.x_m - hole_m, p.y_m) < 90.0 ? 30.0 : 6.0 + tilt * p.y_m;
                },
                5.0);
            const SectionMap map = divided(water, known);
            EXPECT_TRUE(std::ranges::is_sorted(map.sections, {}, &Section::number))
                << "seed " << seed << ", drawing " << drawing;
            EXPECT_EQ(torn(map), std::set<int>()) << "seed " << seed << ", drawing " << drawing;
            for (const auto& [number, cells] : cellsByNumber(map)) {
                EXPECT_GE(number, 1);
                everGiven.insert(number);
            }
            known = after(map, known, water);
            EXPECT_EQ(known.waters.size(), everGiven.size()) << "seed " << seed;
            EXPECT_EQ(divided(water, known).sectionOfCell, map.sectionOfCell)
                << "seed " << seed << ", drawing " << drawing;
        }
    }
}

} // namespace
