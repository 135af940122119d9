// SPDX-License-Identifier: GPL-3.0-or-later
// The card of a section, every figure counted by hand on cells of 10 m.
#include "core/sections/divide_water.h"
#include "core/sections/section_card.h"
#include "tests/support/made_up_water.h"

#include <cmath>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using namespace sections;
using testing::ElementsAre;
using testing::HasSubstr;
using units::Depth;

/// A basin of 200 by 100 m: piece 1 in its west, piece 0 in its east, whose last two columns are
/// in none.
class SectionCard : public testing::Test {
protected:
    SectionCard()
        : water_(support::madeUpWater(
              {{support::rectangle(0.0, 0.0, 200.0, 100.0), {}}},
              [](geo::WaterPoint p) { return p.x_m < 100.0 ? 3.0 : 5.0; }, 10.0)),
          pieces_(water_.depth.frame(), -1), weed_{}, trust_(water_.depth.frame(), 0) {
        const grid::GridFrame& f = water_.depth.frame();
        weed_.probability = grid::Grid<float>(f, 0.2F);
        for (std::size_t i = 0; i < f.size(); ++i) {
            const geo::WaterPoint p = f.centre(f.cellAt(i));
            const bool isIn = p.x_m > 0.0 && p.x_m < 200.0 && p.y_m > 0.0 && p.y_m < 100.0;
            pieces_[i] = !isIn || p.x_m > 180.0 ? -1 : p.x_m < 100.0 ? 1 : 0;
            weed_.probability[i] = p.x_m < 30.0 ? 0.51F : 0.5F; // three of ten columns
            trust_[i] = p.y_m > 50.0 ? 0 : p.y_m > 20.0 ? 1 : 2;
        }
        deepestAt({55.0, 55.0}, 7.5);
        structure::Zone dropOff;
        dropOff.topEdges = {{{50.0, 55.0}, {150.0, 55.0}}};
        dropOff.shoreTops = {{{105.0, 5.0}, {105.0, 25.0}}};
        dropOff.feet = {{{5.0, 5.0}, {95.0, 5.0}}};
        zones_.zones = {dropOff};
    }
    void deepestAt(geo::WaterPoint p, double depth_m) {
        water_.depth.set(water_.depth.frame().index(water_.depth.frame().cellOf(p)),
                         Depth::metres(depth_m));
    }
    DivideInput input() const {
        return {.depth = water_.depth,
                .mask = water_.mask,
                .outline = water_.outline,
                .frame = water_.frame,
                .bands = bands_,
                .trustNames = &trust_,
                .structure = &zones_,
                .weed = &weed_,
                .launch = launch_,
                .names = names_};
    }
    SectionMap map() const { return sectionsFrom(pieces_, 2, input()); }
    support::MadeUpWater water_;
    grid::PieceGrid pieces_;
    weed::WeedMap weed_;
    grid::Grid<std::uint8_t> trust_;
    structure::ZoneMap zones_;
    contours::Bands bands_ =
        contours::Bands::make({Depth::metres(4), Depth::metres(7)}, Depth::metres(9)).value();
    std::optional<geo::WaterPoint> launch_;
    std::vector<SectionName> names_;
};

TEST_F(SectionCard, HoldsTheFiguresOfItsCells) {
    const SectionMap map = this->map();
    ASSERT_EQ(map.sections.size(), 2U);
    const SectionNumber west = sectionAt(map, {50.0, 50.0});
    const SectionNumber east = sectionAt(map, {150.0, 50.0});
    EXPECT_EQ(sectionAt(map, {190.0, 50.0}), noSection);
    EXPECT_EQ(sectionAt(map, {-50.0, 50.0}), noSection);
    const Section& w = map.sections.at(static_cast<std::size_t>(west));
    const Section& e = map.sections.at(static_cast<std::size_t>(east));
    EXPECT_EQ(w.cells.size(), 100U);
    EXPECT_EQ(e.cells.size(), 80U);
    EXPECT_NEAR(w.area.inSquareMetres(), 10000.0, 1e-6);
    EXPECT_NEAR(e.area.inSquareMetres(), 8000.0, 1e-6);
    EXPECT_NEAR(w.meanDepth.inMetres(), 3.045, 1e-6);
    EXPECT_NEAR(w.maxDepth.inMetres(), 7.5, 1e-6);
    EXPECT_NEAR(e.meanDepth.inMetres(), 5.0, 1e-6);
    EXPECT_NEAR(e.maxDepth.inMetres(), 5.0, 1e-6);
    EXPECT_NEAR(w.weedShare, 0.3, 1e-9);
    EXPECT_NEAR(e.weedShare, 0.0, 1e-9) << "as likely as not is no weed";
    for (const Section& section : {w, e}) {
        EXPECT_NEAR(section.trustShare[0], 0.5, 1e-9);
        EXPECT_NEAR(section.trustShare[1], 0.3, 1e-9);
        EXPECT_NEAR(section.trustShare[2], 0.2, 1e-9);
    }
    ASSERT_EQ(w.bandShare.size(), 3U);
    EXPECT_NEAR(w.bandShare[0], 0.99, 1e-9);
    EXPECT_NEAR(w.bandShare[1], 0.0, 1e-9);
    EXPECT_NEAR(w.bandShare[2], 0.01, 1e-9);
    EXPECT_NEAR(e.bandShare[1], 1.0, 1e-9);
}

TEST_F(SectionCard, SharesLinesOutByLengthAndCountsTopsAtTheShoreButNoFeet) {
    const SectionMap map = this->map();
    const auto at = [&](double x_m) {
        return map.sections.at(static_cast<std::size_t>(sectionAt(map, {x_m, 50.0})));
    };
    EXPECT_NEAR(at(50.0).dropOff.inMetres(), 50.0, 3.0);
    EXPECT_NEAR(at(150.0).dropOff.inMetres(), 50.0 + 20.0, 3.0);
    const double banks_m = at(50.0).shore.inMetres() + at(150.0).shore.inMetres();
    EXPECT_LE(banks_m, 100.0 + 2.0 * 180.0 + 5.0) << "bank beyond all sections is in none";
    zones_.zones[0].topEdges.clear();
    EXPECT_NEAR(this->map()
                    .sections.at(static_cast<std::size_t>(sectionAt(map, {150, 50})))
                    .dropOff.inMetres(),
                20.0, 1.0);
}

TEST_F(SectionCard, CountsTheBankThatRunsThroughItsCells) {
    // A shore through the middles of cells: every bit of it lies in a cell of the water.
    const auto pond = support::madeUpWater(
        {{support::rectangle(5.0, 5.0, 105.0, 65.0), {}}}, [](geo::WaterPoint) { return 3.0; },
        10.0);
    grid::PieceGrid pieces(pond.depth.frame(), -1);
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const double x_m = pieces.frame().centre(pieces.frame().cellAt(i)).x_m;
        pieces[i] = !pond.mask.isActive(i) ? -1 : x_m < 60.0 ? 0 : 1;
    }
    const SectionMap map = sectionsFrom(pieces, 2,
                                        {.depth = pond.depth,
                                         .mask = pond.mask,
                                         .outline = pond.outline,
                                         .frame = pond.frame,
                                         .bands = bands_});
    const auto at = [&](double x_m) {
        return map.sections.at(static_cast<std::size_t>(sectionAt(map, {x_m, 30.0})));
    };
    EXPECT_NEAR(at(20.0).shore.inMetres(), 60.0 + 2.0 * 55.0, 1.0);
    EXPECT_NEAR(at(90.0).shore.inMetres(), 60.0 + 2.0 * 45.0, 1.0);
    EXPECT_EQ(at(20.0).dropOff.inMetres(), 0.0) << "structure was not found";
    EXPECT_EQ(at(20.0).weedShare, 0.0);
    EXPECT_EQ(at(20.0).trustShare[0], 0.0);
}

TEST_F(SectionCard, IsNumberedClockwiseFromNorthOrTheLaunchAndNamedByItsPlace) {
    // Seen from between the two: the eastern one comes first from north, the western from south.
    EXPECT_EQ(sectionAt(map(), {150.0, 50.0}), 0);
    EXPECT_EQ(map().sections[0].name, "Section 1");
    EXPECT_EQ(map().sections[1].name, "Section 2");
    launch_ = {95.0, -5.0};
    EXPECT_EQ(sectionAt(map(), {50.0, 50.0}), 0);
    names_ = {{water_.frame.toEarth({150.0, 20.0}), "Heron Bay"},
              {water_.frame.toEarth({190.0, 20.0}), "Nowhere"},
              {water_.frame.toEarth({900.0, 20.0}), "Far off"}};
    EXPECT_EQ(map().sections[0].name, "Section 1");
    EXPECT_EQ(map().sections[1].name, "Heron Bay");
}

TEST_F(SectionCard, TellsTheWayFromTheLaunchOverWater) {
    EXPECT_EQ(map().sections[0].fromLaunch.inMetres(), 0.0) << "no launch, no way";
    launch_ = {5.0, 5.0};
    for (const Section& section : map().sections) {
        EXPECT_NEAR(section.fromLaunch.inMetres(), geo::distance_m(*launch_, section.middle),
                    0.03 * section.fromLaunch.inMetres() + 5.0);
    }
    launch_ = {-40.0, 5.0}; // on land: from the nearest water
    for (const Section& section : map().sections) {
        EXPECT_NEAR(section.fromLaunch.inMetres(), geo::distance_m({0.0, 5.0}, section.middle),
                    0.05 * section.fromLaunch.inMetres() + 8.0);
    }
}

TEST_F(SectionCard, HasItsSpineAlongItsWater) {
    for (std::size_t i = 0; i < pieces_.size(); ++i) {
        pieces_[i] = pieces_[i] >= 0 && water_.depth.frame().cellAt(i).row % 10 < 4 ? 0 : -1;
    }
    const auto parts = grid::connectedPieces(pieces_);
    const SectionMap map = sectionsFrom(parts.pieceOfCell, parts.cells.size(), input());
    for (const Section& section : map.sections) {
        ASSERT_EQ(section.spine.size(), 3U) << section.name;
        EXPECT_GT(section.spine[2].x_m - section.spine[0].x_m, 100.0) << "west to east";
        EXPECT_NEAR(section.spine[2].y_m, section.spine[0].y_m, 1.0);
        EXPECT_EQ(section.spine[1], section.middle);
        for (const geo::WaterPoint p : section.spine) {
            EXPECT_NE(sectionAt(map, p), noSection);
        }
    }
}

TEST_F(SectionCard, DividesNothingThatIsClosedTooDeepOrBareOfDepth) {
    base::Progress silent;
    SectionSettings settings;
    settings.wantedArea = units::Area::hectares(0.5);
    grid::Grid<std::uint8_t> closed(water_.depth.frame(), 0);
    closed[water_.depth.frame().index(water_.depth.frame().cellOf({25.0, 25.0}))] = 1;
    deepestAt({125.0, 55.0}, 8.999);
    deepestAt({135.0, 55.0}, 9.001);
    deepestAt({145.0, 55.0}, 0.0);
    DivideInput in = input();
    in.closed = &closed;
    const SectionMap map = divideWater(in, settings, silent).value();
    EXPECT_EQ(sectionAt(map, {25.0, 25.0}), noSection) << "closed";
    EXPECT_NE(sectionAt(map, {125.0, 55.0}), noSection) << "within the limit";
    EXPECT_EQ(sectionAt(map, {135.0, 55.0}), noSection) << "below the limit";
    EXPECT_NE(sectionAt(map, {145.0, 55.0}), noSection) << "the rim belongs to what is beside it";
    for (std::size_t i = 0; i < water_.depth.size(); ++i) {
        if (!water_.depth.has(i) || closed[i] != 0) {
            EXPECT_EQ(map.sectionOfCell[i], noSection);
        }
    }
}

TEST_F(SectionCard, ARimAloneIsNoWaterToFish) {
    for (std::size_t i = 0; i < water_.depth.size(); ++i) {
        if (water_.depth.has(i)) {
            water_.depth.set(i, Depth());
        }
    }
    base::Progress silent;
    SectionSettings settings;
    settings.wantedArea = units::Area::hectares(0.5);
    const auto bare = divideWater(input(), settings, silent);
    ASSERT_FALSE(bare);
    EXPECT_EQ(bare.error().kind, base::ErrorKind::unusableInput);
}

TEST_F(SectionCard, EverySettingIsTakenWithinItsRange) {
    base::Progress silent;
    struct Case {
        void (*set)(SectionSettings&, double);
        double low;
        double high;
        double step;
    };
    for (const Case& c :
         {Case{[](auto& s, double v) { s.wantedArea = units::Area::squareMetres(v); }, 400.0, 1e7,
               0.5},
          Case{[](auto& s, double v) { s.leastPocket = v; }, 0.0, 0.5, 0.001},
          Case{[](auto& s, double v) { s.leastCompactness = v; }, 0.3, 1.0, 0.001},
          Case{[](auto& s, double v) { s.depthWeight = v; }, 0.0, 20.0, 0.001}}) {
        for (const double v : {c.low, c.high}) {
            SectionSettings settings;
            c.set(settings, v);
            EXPECT_TRUE(divideWater(input(), settings, silent)) << v;
        }
        for (const double v : {c.low - c.step, c.high + c.step}) {
            SectionSettings settings;
            c.set(settings, v);
            const auto refused = divideWater(input(), settings, silent);
            ASSERT_FALSE(refused) << v;
            EXPECT_EQ(refused.error().kind, base::ErrorKind::wrongUse);
        }
    }
    EXPECT_EQ(SectionSettings().wantedArea, units::Area::hectares(4.0));
    EXPECT_NEAR(SectionSettings().leastArea().inSquareMetres(), 200.0, 1e-9);
    const grid::Grid<std::uint8_t> other(grid::GridFrame(0.0, 10.0, 10.0, 2, 2), 0);
    DivideInput in = input();
    in.closed = &other;
    const auto apart = divideWater(in, {}, silent);
    ASSERT_FALSE(apart);
    EXPECT_THAT(apart.error().what, HasSubstr("different cells"));
}

} // namespace
