// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sections/divide_water.h"
#include "tests/support/made_up_water.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>
#include <set>

namespace {

using namespace sections;
using support::MadeUpWater;

const contours::Bands usual;

base::Result<SectionMap> divided(const MadeUpWater& water, double wanted_ha,
                                 const grid::Grid<std::uint8_t>* closed = nullptr,
                                 std::optional<geo::WaterPoint> launch = std::nullopt,
                                 std::span<const SectionName> names = {},
                                 const contours::Bands& bands = usual) {
    base::Progress silent;
    SectionSettings settings;
    settings.wantedArea = units::Area::hectares(wanted_ha);
    return divideWater({.depth = water.depth,
                        .mask = water.mask,
                        .outline = water.outline,
                        .frame = water.frame,
                        .bands = bands,
                        .closed = closed,
                        .launch = launch,
                        .names = names},
                       settings, silent);
}

/// A shallow bay of 600 x 400 m.
MadeUpWater bay() {
    return support::madeUpWater(
        {{support::rectangle(-300.0, -200.0, 300.0, 200.0), {}}},
        [](geo::WaterPoint p) { return 3.0 + 0.002 * p.x_m; }, 5.0);
}

/// How many cells are reached from the first along sides within the section.
std::size_t reached(const SectionMap& map, SectionNumber number) {
    const auto& cells = map.sections[static_cast<std::size_t>(number)].cells;
    const grid::GridFrame& f = map.sectionOfCell.frame();
    std::set<std::size_t> seen{cells.front()};
    std::vector<std::size_t> open{cells.front()};
    while (!open.empty()) {
        const grid::Cell c = f.cellAt(open.back());
        open.pop_back();
        for (const grid::Cell next : {grid::Cell{c.col - 1, c.row}, grid::Cell{c.col + 1, c.row},
                                      grid::Cell{c.col, c.row - 1}, grid::Cell{c.col, c.row + 1}}) {
            if (f.holds(next) && map.sectionOfCell[next] == number &&
                seen.insert(f.index(next)).second) {
                open.push_back(f.index(next));
            }
        }
    }
    return seen.size();
}

void expectWholeOnceAndConnected(const MadeUpWater& water, const SectionMap& map,
                                 const contours::Bands& bands = usual) {
    std::size_t inSections = 0;
    for (std::size_t k = 0; k < map.sections.size(); ++k) {
        inSections += map.sections[k].cells.size();
        EXPECT_EQ(reached(map, static_cast<SectionNumber>(k)), map.sections[k].cells.size())
            << map.sections[k].name;
        for (const std::size_t cell : map.sections[k].cells) {
            EXPECT_EQ(map.sectionOfCell[cell], static_cast<SectionNumber>(k));
        }
    }
    std::size_t fishable = 0;
    for (std::size_t i = 0; i < water.depth.size(); ++i) {
        const auto depth = water.depth.at(water.depth.frame().cellAt(i));
        const bool isFishable = depth && bands.isFishable(*depth);
        fishable += isFishable ? 1 : 0;
        EXPECT_TRUE(isFishable || map.sectionOfCell[i] == noSection);
    }
    EXPECT_EQ(inSections, fishable);
}

TEST(DivideWater, CoversTheFishableWaterWhollyAndOnceInConnectedPieces) {
    const MadeUpWater water = bay();
    const SectionMap map = divided(water, 2.0).value();
    EXPECT_EQ(map.sections.size(), 12U);
    expectWholeOnceAndConnected(water, map);
}

TEST(DivideWater, PiecesAreNearTheWantedSize) {
    for (const double wanted_ha : {1.0, 2.0, 4.0, 7.0}) {
        const SectionMap map = divided(bay(), wanted_ha).value();
        for (const Section& section : map.sections) {
            EXPECT_GE(section.area.inHectares(), 0.5 * wanted_ha);
            EXPECT_LE(section.area.inHectares(), 1.6 * wanted_ha);
        }
    }
}

TEST(DivideWater, PiecesOfAnOpenBayAreCompact) {
    std::vector<double> compactness;
    const SectionMap map = divided(bay(), 2.0).value();
    for (const Section& section : map.sections) {
        double around_m = 0.0;
        for (const geo::Piece& piece : section.pieces) {
            around_m += geo::lengthAround(piece.outer).inMetres();
        }
        compactness.push_back(4.0 * std::numbers::pi * section.area.inSquareMetres() /
                              (around_m * around_m));
    }
    std::sort(compactness.begin(), compactness.end());
    // A square has pi / 4 = 0.785, a strip three times as long as broad 0.589.
    EXPECT_GE(compactness[compactness.size() / 2], 0.6);
}

TEST(DivideWater, CutsAtTheNeckBetweenTwoBasins) {
    const MadeUpWater water = support::twoBasins(200.0, 20.0, 4.0, 4.0);
    const SectionMap map = divided(water, 4.0).value();
    ASSERT_EQ(map.sections.size(), 2U);
    expectWholeOnceAndConnected(water, map);
    // Each basin wholly in one section: the border lies within the neck.
    for (const double side : {-1.0, 1.0}) {
        const auto at = [&](double x, double y) {
            return map.sectionOfCell[map.sectionOfCell.frame().cellOf({side * x, y})];
        };
        EXPECT_EQ(at(20.0, 60.0), at(150.0, -60.0));
    }
    const auto& f = map.sectionOfCell.frame();
    EXPECT_NE(map.sectionOfCell[f.cellOf({-100.0, 0.0})],
              map.sectionOfCell[f.cellOf({100.0, 0.0})]);
}

TEST(DivideWater, NeverReachesAcrossLandOrDeepWater) {
    // A hump in deep water and the bank round about it: the hump is a section of its own, however
    // small.
    const MadeUpWater water = support::madeUpWater(
        {{support::circle({0, 0}, 400.0), {}}},
        [](geo::WaterPoint p) {
            const double r = std::hypot(p.x_m, p.y_m);
            return r < 80.0 ? 4.0 : r > 300.0 ? 4.0 : 15.0;
        },
        5.0);
    const SectionMap map = divided(water, 4.0).value();
    expectWholeOnceAndConnected(water, map);
    const SectionNumber hump = map.sectionOfCell[map.sectionOfCell.frame().cellOf({0, 0})];
    ASSERT_NE(hump, noSection);
    EXPECT_NEAR(map.sections[static_cast<std::size_t>(hump)].area.inHectares(),
                std::numbers::pi * 0.64, 0.1);
}

TEST(DivideWater, GoesRoundIslands) {
    const MadeUpWater water = support::madeUpWater(
        {{support::rectangle(-300.0, -200.0, 300.0, 200.0),
          {support::rectangle(-100.0, -60.0, 120.0, 60.0)}}},
        [](geo::WaterPoint) { return 4.0; }, 5.0);
    const SectionMap map = divided(water, 3.0).value();
    expectWholeOnceAndConnected(water, map);
}

TEST(DivideWater, LeavesClosedWaterOut) {
    const MadeUpWater water = bay();
    grid::Grid<std::uint8_t> closed(water.depth.frame(), 0);
    for (std::size_t i = 0; i < closed.size(); ++i) {
        closed[i] = water.depth.frame().centre(water.depth.frame().cellAt(i)).x_m > 150.0 ? 1 : 0;
    }
    const SectionMap map = divided(water, 2.0, &closed).value();
    for (std::size_t i = 0; i < closed.size(); ++i) {
        EXPECT_TRUE(closed[i] == 0 || map.sectionOfCell[i] == noSection);
    }
    EXPECT_NEAR(static_cast<double>(map.sections.size()), 9.0, 1.0);
}

TEST(DivideWater, SameWaterGivesTheSameSections) {
    const SectionMap one = divided(bay(), 2.0).value();
    const SectionMap other = divided(bay(), 2.0).value();
    EXPECT_EQ(one.sectionOfCell, other.sectionOfCell);
}

TEST(DivideWater, NumbersRunClockwiseFromTheLaunch) {
    const MadeUpWater water = support::madeUpWater(
        {{support::circle({0, 0}, 300.0), {support::circle({0, 0}, 180.0)}}},
        [](geo::WaterPoint) { return 4.0; }, 5.0);
    const geo::WaterPoint launch{0.0, -290.0};
    const SectionMap map = divided(water, 2.0, nullptr, launch).value();
    double last_deg = -1.0;
    for (const Section& section : map.sections) {
        const double from_deg = geo::bearing({0, 0}, section.middle).turnedBy(-180.0).inDegrees();
        EXPECT_GT(from_deg, last_deg) << section.name;
        last_deg = from_deg;
    }
    EXPECT_EQ(map.sections.front().name, "Section 1");
    EXPECT_LT(map.sections.front().fromLaunch, map.sections[map.sections.size() / 2].fromLaunch)
        << "ways lead round the island";
}

TEST(DivideWater, NameStaysWithItsPlaceWhenTheWaterIsDividedAnew) {
    const MadeUpWater water = bay();
    const geo::WaterPoint place{200.0, 100.0};
    const std::vector<SectionName> names{{water.frame.toEarth(place), "Long Bar"}};
    for (const double wanted_ha : {2.0, 3.0}) {
        const SectionMap map = divided(water, wanted_ha, nullptr, std::nullopt, names).value();
        const SectionNumber number = map.sectionOfCell[map.sectionOfCell.frame().cellOf(place)];
        EXPECT_EQ(map.sections[static_cast<std::size_t>(number)].name, "Long Bar");
        EXPECT_EQ(std::count_if(map.sections.begin(), map.sections.end(),
                                [](const Section& s) { return s.name == "Long Bar"; }),
                  1);
    }
}

TEST(DivideWater, CardsAddUpToTheWater) {
    const MadeUpWater water = bay();
    const SectionMap map = divided(water, 2.0).value();
    double area_m2 = 0.0;
    double shore_m = 0.0;
    for (const Section& section : map.sections) {
        area_m2 += section.area.inSquareMetres();
        shore_m += section.shore.inMetres();
        double share = 0.0;
        for (const double band : section.bandShare) {
            share += band;
        }
        EXPECT_NEAR(share, 1.0, 1e-9);
        EXPECT_LE(section.meanDepth, section.maxDepth);
        EXPECT_EQ(map.sectionOfCell[map.sectionOfCell.frame().cellOf(section.middle)],
                  static_cast<SectionNumber>(&section - map.sections.data()));
    }
    EXPECT_NEAR(area_m2, 240000.0, 240.0);
    EXPECT_NEAR(shore_m, 2000.0, 20.0);
}

TEST(DivideWater, AWantedSizeAboveTheWaterGivesOneSection) {
    EXPECT_EQ(divided(bay(), 500.0).value().sections.size(), 1U);
}

TEST(DivideWater, TellsWhyNothingIsFishable) {
    const MadeUpWater water = bay();
    const auto bands =
        contours::Bands::make({units::Depth::metres(1)}, units::Depth::metres(0.5)).value();
    const auto deep = divided(water, 2.0, nullptr, std::nullopt, {}, bands);
    ASSERT_FALSE(deep);
    EXPECT_NE(deep.error().what.find("deeper than the limit"), std::string::npos);
    const grid::Grid<std::uint8_t> closed(water.depth.frame(), 1);
    const auto shut = divided(water, 2.0, &closed);
    ASSERT_FALSE(shut);
    EXPECT_NE(shut.error().what.find("closed"), std::string::npos);
}

TEST(DivideWater, RefusesSizesThatMakeNoSense) {
    for (const double wanted_ha :
         std::initializer_list<double>{-1.0, 0.0, std::nan(""), 5000.0, 0.005}) {
        const auto map = divided(bay(), wanted_ha);
        ASSERT_FALSE(map) << wanted_ha;
        EXPECT_EQ(map.error().kind, base::ErrorKind::wrongUse);
        EXPECT_FALSE(map.error().whatToDo.empty());
    }
}

TEST(DivideWater, HoldsItsPromisesOnRuggedWaters) {
    const unsigned seed = 412;
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> wave(0.0, 0.25);
    std::uniform_real_distribution<double> phase(0.0, 2.0 * std::numbers::pi);
    for (int trial = 0; trial < 8; ++trial) {
        const std::array size{wave(random), wave(random), wave(random)};
        const std::array turn{phase(random), phase(random), phase(random)};
        geo::Ring shore;
        for (int i = 0; i < 240; ++i) {
            const double a = 2.0 * std::numbers::pi * i / 240.0;
            const double r = 300.0 * (1.0 + size[0] * std::sin(2.0 * a + turn[0]) +
                                      size[1] * std::sin(3.0 * a + turn[1]) +
                                      size[2] * std::sin(5.0 * a + turn[2]));
            shore.push_back({r * std::cos(a), r * std::sin(a)});
        }
        const double lean = turn[0];
        const MadeUpWater water = support::madeUpWater(
            {{shore, {}}},
            [lean](geo::WaterPoint p) {
                return 7.0 + 4.0 * std::sin(p.x_m / 70.0 + lean) * std::cos(p.y_m / 90.0);
            },
            5.0);
        const auto map = divided(water, 1.5);
        ASSERT_TRUE(map) << "seed " << seed << ": " << map.error().sentence();
        for (std::size_t k = 0; k < map->sections.size(); ++k) {
            EXPECT_EQ(reached(*map, static_cast<SectionNumber>(k)), map->sections[k].cells.size())
                << "seed " << seed << " trial " << trial;
            EXPECT_LE(map->sections[k].area.inHectares(), 1.6 * 1.5)
                << "seed " << seed << " trial " << trial;
        }
    }
}

} // namespace
