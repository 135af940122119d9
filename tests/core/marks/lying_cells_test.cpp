// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/lying_cells.h"

#include "core/marks/places_to_look_at.h"
#include "core/marks/propose_marks.h"
#include "tests/support/made_up_day.h"

#include <algorithm>
#include <array>

#include <gtest/gtest.h>

namespace {

using geo::WaterPoint;
using marks::Exclusion;
using units::Depth;
using units::Length;

marks::LyingCells lyingOf(const support::MadeUpDay& day,
                          const marks::ProposeSettings& settings = {}) {
    base::Progress quiet;
    return marks::LyingCells::of(day.input(), day.plan, settings, quiet).value();
}

TEST(LyingCells, SayOfEachCellWhatIsSaidOfItsMiddleWhenAllIsMeasured) {
    const std::string snags = "Snags";
    constexpr std::array boats_m{2.0, 5.0, 11.0};
    constexpr std::array cells_m{2.0, 4.0, 13.0};
    for (const double boat_m : boats_m) {
        for (const double cell_m : cells_m) {
            support::MadeUpDay day(90.0, cell_m);
            day.plan.tackle.boatLength = Length::metres(boat_m);
            day.bannedAt = [&snags](WaterPoint p) { return p.x_m > 100.0 ? &snags : nullptr; };
            day.waveHeightAt = [](WaterPoint p) { return Length::metres(p.y_m > 90 ? 0.4 : 0.1); };
            const marks::LyingCells lying = lyingOf(day);
            const grid::GridFrame& frame = day.ground.frame();
            std::size_t open = 0;
            for (std::size_t i = 0; i < frame.size(); ++i) {
                const grid::Cell c = frame.cellAt(i);
                const WaterPoint p = frame.centre(c);
                const bool isWater = day.ground.depthAt(p).has_value();
                const auto measured =
                    isWater ? marks::exclusionAt(day.input(), p, day.plan, {}) : std::nullopt;
                ASSERT_EQ(lying.excludedIn(c), measured) << p.x_m << ' ' << p.y_m;
                ASSERT_EQ(lying.mayLieIn(c), isWater && !measured) << p.x_m << ' ' << p.y_m;
                open += lying.mayLieIn(c) ? 1U : 0U;
            }
            EXPECT_GT(open, 100U);
            EXPECT_FALSE(lying.mayLieIn({-1, 0}));
        }
    }
}

TEST(LyingCells, AreFarFromTheBankWhereverInThemTheBoatLies) {
    const support::MadeUpDay day;
    const Length room = Length::metres(5.0);
    const marks::Clearance clearance = marks::Clearance::of(day.input(), room);
    const grid::GridFrame& frame = day.ground.frame();
    std::size_t far = 0;
    constexpr std::array sides{-0.499, 0.499};
    for (std::size_t i = 0; i < frame.size(); ++i) {
        const grid::Cell c = frame.cellAt(i);
        for (const double east : sides) {
            for (const double north : sides) {
                const WaterPoint m = frame.centre(c);
                const WaterPoint p{m.x_m + east * frame.cell_m(), m.y_m + north * frame.cell_m()};
                if (clearance.isFarFromBanks(c)) {
                    ++far;
                    ASSERT_TRUE(day.water.outline.contains(p));
                    ASSERT_GE(day.water.outline.distanceToShore_m(p), room.inMetres());
                }
                if (clearance.isFarFromClosed(c)) {
                    // Closed: x from the shore to -180, y from 62 up, and what a cell takes
                    // besides.
                    ASSERT_FALSE(p.x_m < -180.0 + 5.0 && p.y_m > 62.0 - 5.0 &&
                                 day.ground.depthAt(p));
                }
            }
        }
    }
    EXPECT_GT(far, 4U * 10000U) << "measuring is the exception";
}

TEST(LyingCells, AreNearTheBankOfAnIslandNarrowerThanACell) {
    // A wall of 1 m between the middles of cells of 4 m: every cell has water.
    const auto water = support::madeUpWater(
        {{support::rectangle(-60, -60, 60, 60), {support::rectangle(-0.5, -20, 0.5, 20)}}},
        [](WaterPoint) { return 5.0; }, 4.0);
    const structure::ZoneMap none = support::noZones(water);
    const grid::Grid<std::uint8_t> closed(water.depth.frame(), 0);
    const rods::Ground ground(water.depth, Depth::metres(30.0), &closed, none, none);
    const contours::Bands bands;
    const sections::SectionMap sections;
    const grid::Grid<float> trust_m(water.depth.frame(), 0.2F);
    const marks::MarkInput input{.frame = water.frame,
                                 .outline = water.outline,
                                 .ground = ground,
                                 .bands = bands,
                                 .sections = sections,
                                 .trust_m = trust_m,
                                 .isGuess = nullptr,
                                 .learned = nullptr,
                                 .waveHeightAt = {}};
    const Length room = Length::metres(6.0);
    const marks::Clearance clearance = marks::Clearance::of(input, room);
    const grid::GridFrame& frame = ground.frame();
    std::size_t far = 0;
    for (std::size_t i = 0; i < frame.size(); ++i) {
        const grid::Cell c = frame.cellAt(i);
        const WaterPoint p = frame.centre(c);
        if (water.outline.contains(p)) {
            ASSERT_TRUE(ground.depthAt(p)) << "else the cells without water tell of the wall";
            far += clearance.isFarFromBanks(c) ? 1U : 0U;
            EXPECT_FALSE(clearance.isFarFromBanks(c) &&
                         water.outline.distanceToShore_m(p) < room.inMetres())
                << p.x_m << ' ' << p.y_m;
        }
    }
    EXPECT_GT(far, 50U);
}

TEST(LyingCells, AreRefusedAndStoppedAsAllElse) {
    support::MadeUpDay day;
    struct Stopped : base::Progress {
        [[nodiscard]] bool stopAsked() const override { return true; }
    } stopped;
    EXPECT_EQ(marks::LyingCells::of(day.input(), day.plan, {}, stopped).error().kind,
              base::ErrorKind::cancelled);
    day.plan.count = 0;
    base::Progress quiet;
    EXPECT_EQ(marks::LyingCells::of(day.input(), day.plan, {}, quiet).error().kind,
              base::ErrorKind::wrongUse);
}

/// Every cell where a boat may lie has a place near it that is like it.
void expectAllCellsStoodFor(const support::MadeUpDay& day, double most_m) {
    const marks::LyingCells lying = lyingOf(day);
    base::Progress quiet;
    const auto lookedAt = marks::lookRound(day.input(), day.plan, {}, lying, quiet).value();
    const grid::GridFrame& frame = day.ground.frame();
    const auto sectionAt = [&day](WaterPoint p) {
        return day.sections.sectionOfCell[day.sections.sectionOfCell.frame().cellOf(p)];
    };
    for (std::size_t i = 0; i < frame.size(); ++i) {
        const grid::Cell c = frame.cellAt(i);
        const WaterPoint p = frame.centre(c);
        if (!lying.mayLieIn(c)) {
            continue;
        }
        const double depth_m = day.ground.depthAt(p).value().inMetres();
        const bool isStoodFor = std::ranges::any_of(lookedAt, [&](const marks::LookedAt& at) {
            const double ratio = at.around.depth.inMetres() / depth_m;
            return geo::distance_m(at.place, p) <= most_m && ratio < 1.36 && ratio > 0.73 &&
                   day.ground.kindAt(at.place) == day.ground.kindAt(p) &&
                   sectionAt(at.place) == sectionAt(p);
        });
        ASSERT_TRUE(isStoodFor) << p.x_m << ' ' << p.y_m << ' ' << depth_m;
    }
    for (const marks::LookedAt& at : lookedAt) {
        ASSERT_TRUE(marks::mayLieAt(day.input(), at.place, day.plan, {}));
    }
}

TEST(PlacesToLookAt, StandForEveryCellWhereABoatMayLie) {
    // Squares of 15 m: two of their cells are nowhere farther apart than a diagonal.
    expectAllCellsStoodFor(support::MadeUpDay(), 15.0 * std::sqrt(2.0));
}

TEST(PlacesToLookAt, FindAStripNarrowerThanTheirLattice) {
    // All is banned but a strip of one cell, which the lattice's rows, 15 m apart, pass by.
    support::MadeUpDay day;
    const std::string ban = "All but the strip";
    day.bannedAt = [&ban](WaterPoint p) { return p.y_m > -52.0 || p.y_m < -56.0 ? &ban : nullptr; };
    expectAllCellsStoodFor(day, 15.0 * std::sqrt(2.0));
    const auto found = day.proposed();
    EXPECT_GE(found.size(), 15U) << "some 300 m in steps of half a cast";
    for (const marks::Candidate& candidate : found) {
        EXPECT_NEAR(candidate.place.y_m, -54.0, 2.0);
    }
}

/// Sum of what the best thirty promise of all places that are looked at.
double promisedBy(const support::MadeUpDay& day, const std::vector<marks::LookedAt>& lookedAt) {
    base::Progress quiet;
    marks::ProposeSettings settings;
    settings.most = 30;
    const auto prospects = marks::prospectsOf(day.input(), day.plan, lookedAt, quiet).value();
    double sum = 0.0;
    const auto found =
        marks::proposeMarks(day.input(), day.plan, lookedAt, prospects, {}, settings, quiet)
            .value();
    for (const marks::Candidate& one : found) {
        sum += one.promise;
    }
    return sum;
}

TEST(PlacesToLookAt, PromiseNearlyAsMuchAsAllCellsTogether) {
    for (const marks::FactorKind only : marks::allFactorKinds) {
        support::MadeUpDay day;
        for (const marks::FactorKind kind : marks::allFactorKinds) {
            day.plan.weights.set(kind, kind == only ? 1.0 : 0.2);
        }
        const marks::LyingCells lying = lyingOf(day);
        base::Progress quiet;
        const auto lookedAt = marks::lookRound(day.input(), day.plan, {}, lying, quiet).value();
        std::vector<marks::LookedAt> all;
        const grid::GridFrame& frame = day.ground.frame();
        for (std::size_t i = 0; i < frame.size(); ++i) {
            const WaterPoint p = frame.centre(frame.cellAt(i));
            if (lying.mayLieIn(frame.cellAt(i))) {
                all.push_back({p, marks::surroundingsOf(day.input(), p, day.plan.tackle.cast)});
            }
        }
        EXPECT_LT(lookedAt.size(), all.size() / 2);
        EXPECT_GE(promisedBy(day, lookedAt), 0.97 * promisedBy(day, all)) << marks::nameOf(only);
    }
}

} // namespace
