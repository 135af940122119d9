// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/weed/map_weed.h"

#include "tests/support/made_up_water.h"

#include <algorithm>
#include <random>

#include <gtest/gtest.h>

namespace {

using structure::ZoneKind;
using support::MadeUpWater;
using units::Depth;
using weed::Growth;
using weed::WeedMap;
using weed::WeedNote;
using weed::WeedSettings;

class Stopped : public base::Progress {
public:
    [[nodiscard]] bool stopAsked() const override { return true; }
};

base::Result<WeedMap> mapped(const MadeUpWater& water, std::vector<WeedNote> notes,
                             std::optional<Depth> secchi, const WeedSettings& settings = {},
                             std::vector<soundings::LeadLineSounding> leads = {}) {
    base::Progress progress;
    return weed::mapWeed(water.depth, water.mask, notes, leads, secchi, water.frame, settings,
                         progress);
}

WeedNote noteAt(const MadeUpWater& water, geo::WaterPoint p, Growth growth,
                std::optional<units::Length> height = std::nullopt) {
    return {weed::WeedNoteId(1), water.frame.toEarth(p), growth, height};
}

double probabilityAt(const MadeUpWater& water, const WeedMap& map, geo::WaterPoint p) {
    return static_cast<double>(map.probability[water.mask.frame().cellOf(p)]);
}

/// Chance that a cell with weed has a higher probability than one without.
double areaUnderCurve(std::vector<std::pair<float, bool>> cells) {
    std::sort(cells.begin(), cells.end());
    double below = 0.0;
    double pairs = 0.0;
    double with = 0.0;
    for (std::size_t i = 0; i < cells.size();) {
        double same = 0.0;
        double sameWith = 0.0;
        const float value = cells[i].first;
        for (; i < cells.size() && cells[i].first == value; ++i) {
            (cells[i].second ? sameWith : same) += 1.0;
        }
        pairs += sameWith * (below + 0.5 * same);
        below += same;
        with += sameWith;
    }
    return pairs / (below * with);
}

TEST(MapWeed, FollowsDepthAndClarityWithoutNotes) {
    const MadeUpWater water = support::cone(200.0, 10.0, 5.0);
    const WeedMap map = mapped(water, {}, Depth::metres(2.0)).value();
    ASSERT_TRUE(map.growthLimit.has_value());
    EXPECT_GT(probabilityAt(water, map, {170.0, 0.0}), 0.6); // 1.5 m
    EXPECT_LT(probabilityAt(water, map, {0.0, 100.0}), 0.1); // 5 m
    const double limit_m = map.growthLimit->inMetres();
    for (const structure::Zone& zone : map.zones.zones) {
        EXPECT_LT(zone.deepest.inMetres(), limit_m + 0.3);
    }
}

TEST(MapWeed, DrawsNoBedWithoutClarityAndNotes) {
    const WeedMap map = mapped(support::cone(200.0, 10.0, 5.0), {}, std::nullopt).value();
    EXPECT_TRUE(map.zones.zones.empty());
    EXPECT_FALSE(map.growthLimit.has_value());
}

TEST(MapWeed, LetsANoteOutweighTheDepthRoundAboutIt) {
    const MadeUpWater water = support::plane(300.0, 2.0, 2.0, 5.0);
    const WeedMap map = mapped(water,
                               {noteAt(water, {-150.0, 0.0}, Growth::none),
                                noteAt(water, {150.0, 0.0}, Growth::thick)},
                               Depth::metres(2.0))
                            .value();
    EXPECT_EQ(map.notesUsed, 2U);
    EXPECT_LT(probabilityAt(water, map, {-150.0, 0.0}), 0.4);
    EXPECT_GT(probabilityAt(water, map, {150.0, 0.0}), 0.8);
}

TEST(MapWeed, LetsNotesSpeakForTheirDepthOnlyRoundAbout) {
    const MadeUpWater water = support::step(150.0, 1.5, 8.0, 10.0, 5.0);
    const WeedMap map =
        mapped(water, {noteAt(water, {-20.0, 0.0}, Growth::thick)}, Depth::metres(2.0)).value();
    EXPECT_GT(probabilityAt(water, map, {-20.0, 0.0}), 0.7);
    EXPECT_LT(probabilityAt(water, map, {20.0, 0.0}), 0.1);
}

TEST(MapWeed, LetsNoNoteReachAcrossASpit) {
    // A spit 10 m wide runs from the south shore almost through the water.
    const MadeUpWater water = support::madeUpWater(
        {{{{-200.0, -200.0},
           {-5.0, -200.0},
           {-5.0, 150.0},
           {5.0, 150.0},
           {5.0, -200.0},
           {200.0, -200.0},
           {200.0, 200.0},
           {-200.0, 200.0}},
          {}}},
        [](geo::WaterPoint) { return 2.0; }, 2.5);
    const WeedMap without = mapped(water, {}, Depth::metres(2.0)).value();
    // The far side of the spit is 260 m away over water, and 20 m across land.
    const WeedMap map =
        mapped(water, {noteAt(water, {-10.0, 20.0}, Growth::none)}, Depth::metres(2.0)).value();
    EXPECT_LT(probabilityAt(water, map, {-12.0, 40.0}), 0.4);
    const double shift = probabilityAt(water, map, {12.0, 20.0}) -
                         probabilityAt(water, map, {150.0, -150.0}); // the depth's share of it
    EXPECT_NEAR(shift, 0.0, 1e-4);
    EXPECT_GT(probabilityAt(water, map, {12.0, 20.0}),
              probabilityAt(water, without, {12.0, 20.0}) - 0.2);
}

TEST(MapWeed, CountsNotesOutsideTheWaterAndLeavesThemAlone) {
    const MadeUpWater water = support::cone(100.0, 5.0, 5.0);
    const auto map = mapped(water, {noteAt(water, {500.0, 0.0}, Growth::thick)}, std::nullopt);
    ASSERT_TRUE(map.has_value());
    EXPECT_EQ(map->notesOutside, 1U);
    EXPECT_EQ(map->notesUsed, 0U);
}

TEST(MapWeed, TakesWeedOnTheLeadForANote) {
    const MadeUpWater water = support::plane(200.0, 3.0, 3.0, 5.0);
    const auto lead = [&](double x_m, std::optional<soundings::Bottom> bottom) {
        return soundings::LeadLineSounding{
            soundings::LeadLineId(1), water.frame.toEarth({x_m, 0.0}), Depth::metres(3.0), bottom};
    };
    const WeedMap map = mapped(water, {}, std::nullopt, {},
                               {lead(-150.0, soundings::Bottom::weed),
                                lead(150.0, soundings::Bottom::gravel), lead(0.0, std::nullopt)})
                            .value();
    EXPECT_GT(probabilityAt(water, map, {-150.0, 0.0}), 0.5);
    EXPECT_LT(probabilityAt(water, map, {150.0, 0.0}), 0.3);
}

TEST(MapWeed, KeepsWeedBelowTheSurfaceAndTakesItsHeightFromNotes) {
    const MadeUpWater water = support::plane(200.0, 0.5, 4.0, 5.0);
    const WeedMap map =
        mapped(water, {noteAt(water, {150.0, 0.0}, Growth::thick, units::Length::metres(1.8))},
               Depth::metres(3.0))
            .value();
    for (std::size_t i = 0; i < water.depth.size(); ++i) {
        if (water.mask.isActive(i)) {
            EXPECT_LE(map.height_m[i], water.depth.raw_m()[i]);
        }
    }
    EXPECT_NEAR(map.height_m[water.mask.frame().cellOf({150.0, 0.0})], 1.57, 0.05);
}

TEST(MapWeed, DrawsTheEdgeOfABedTowardsOpenWaterButNotAlongTheShore) {
    const MadeUpWater water = support::step(150.0, 1.5, 8.0, 10.0, 5.0); // the step is 300 m long
    const WeedMap map = mapped(water, {}, Depth::metres(2.0)).value();
    double edge_m = 0.0;
    for (const structure::Zone& zone : map.zones.zones) {
        if (zone.kind == ZoneKind::weedEdge) {
            edge_m += zone.edgeLength.inMetres();
        }
    }
    EXPECT_NEAR(edge_m, 300.0, 20.0);
}

TEST(MapWeed, LeavesNoCrumbsOfABedThatIsHardlyWiderThanItsEdge) {
    // A cone: weed stands on a ring along its shore, as wide as the edge and a little more.
    const MadeUpWater water = support::cone(200.0, 62.0, 4.0);
    const WeedMap map = mapped(water, {}, Depth::metres(2.0)).value();
    double edge_m2 = 0.0;
    for (const structure::Zone& zone : map.zones.zones) {
        EXPECT_GE(static_cast<double>(zone.cells.size()) * water.mask.frame().cellArea_m2(),
                  WeedSettings().leastArea.inSquareMetres())
            << zone.name;
        edge_m2 += zone.kind == ZoneKind::weedEdge ? zone.area.inSquareMetres() : 0.0;
    }
    EXPECT_GT(edge_m2, 5000.0);
}

TEST(MapWeed, FadesWithTheSeason) {
    const MadeUpWater water = support::plane(150.0, 2.0, 2.0, 5.0);
    WeedSettings winter;
    winter.seasonFactor = 0.3;
    const double summer =
        probabilityAt(water, mapped(water, {}, Depth::metres(2.0)).value(), {0.0, 0.0});
    const double later =
        probabilityAt(water, mapped(water, {}, Depth::metres(2.0), winter).value(), {0.0, 0.0});
    EXPECT_NEAR(later, 0.3 * summer, 1e-5);
}

// Simulated beds: weed where a smooth random field plus the fall with depth says so.
class SimulatedBeds : public testing::TestWithParam<unsigned> {};

TEST_P(SimulatedBeds, AreFoundFromFortyNotesAndFromClarityAlone) {
    const unsigned seed = GetParam();
    SCOPED_TRACE("seed " + std::to_string(seed));
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> place(-380.0, 380.0);
    std::vector<geo::WaterPoint> patches(22);
    std::generate(patches.begin(), patches.end(), [&] {
        const double x_m = place(random);
        return geo::WaterPoint{x_m, place(random)};
    });
    const MadeUpWater water = support::cone(400.0, 8.0, 5.0);
    const auto grows = [&](geo::WaterPoint p) {
        return water.bottom(p) < 3.0 &&
               std::any_of(patches.begin(), patches.end(),
                           [&](geo::WaterPoint a) { return geo::distance_m(a, p) < 110.0; });
    };
    std::vector<WeedNote> notes;
    while (notes.size() < 40) {
        const double x_m = place(random);
        const geo::WaterPoint p{x_m, place(random)};
        if (water.outline.contains(p) && water.bottom(p) < 4.5) {
            notes.push_back(noteAt(water, p, grows(p) ? Growth::thick : Growth::none));
        }
    }
    const auto score = [&](const WeedMap& map) {
        std::vector<std::pair<float, bool>> cells;
        for (std::size_t i = 0; i < water.depth.size(); ++i) {
            if (water.mask.isActive(i)) {
                cells.emplace_back(map.probability[i],
                                   grows(water.mask.frame().centre(water.mask.frame().cellAt(i))));
            }
        }
        return areaUnderCurve(std::move(cells));
    };
    EXPECT_GE(score(mapped(water, notes, Depth::metres(2.0)).value()), 0.85);
    EXPECT_GE(score(mapped(water, {}, Depth::metres(2.0)).value()), 0.75);
}

INSTANTIATE_TEST_SUITE_P(MapWeed, SimulatedBeds,
                         testing::Values(20251U, 1U, 2U, 3U, 4U, 5U, 6U, 7U));

TEST(MapWeed, RefusesSettingsOutOfTheirRangeAndStopsWhenAsked) {
    const MadeUpWater water = support::cone(60.0, 5.0, 5.0);
    WeedSettings settings;
    settings.priorNotes = 0.0;
    const auto refused = mapped(water, {}, std::nullopt, settings);
    ASSERT_FALSE(refused.has_value());
    EXPECT_EQ(refused.error().kind, base::ErrorKind::wrongUse);
    EXPECT_FALSE(refused.error().whatToDo.empty());
    EXPECT_FALSE(mapped(water, {}, Depth::metres(0.0)).has_value());
    Stopped stopped;
    const std::vector<WeedNote> notes{noteAt(water, {}, Growth::thin)};
    const auto cancelled =
        weed::mapWeed(water.depth, water.mask, notes, {}, std::nullopt, water.frame, {}, stopped);
    ASSERT_FALSE(cancelled.has_value());
    EXPECT_EQ(cancelled.error().kind, base::ErrorKind::cancelled);
}

/// Water of one depth in two halves of 400 m: what a line in the one tells of the other is what a
/// note in it tells.
TEST(MapWeed, ALineTellsNoMoreOfTheWaterElsewhereThanANoteDoes) {
    const MadeUpWater water = support::plane(400.0, 3.0, 3.0, 5.0);
    const auto chanceFarOff = [&](const WeedNote& note) {
        const auto map = mapped(water, {note}, std::nullopt);
        return static_cast<double>(map->probability[water.depth.frame().cellOf({350.0, 350.0})]);
    };
    std::vector<geo::LonLat> corners;
    for (const geo::WaterPoint p : {geo::WaterPoint{-380.0, -380.0}, {0.0, -380.0}}) {
        corners.push_back(water.frame.toEarth(p));
    }
    WeedNote line = weed::noteOver(weed::Extent::line, corners);
    line.growth = Growth::thick;
    EXPECT_NEAR(chanceFarOff(line), chanceFarOff(noteAt(water, {-380.0, -380.0}, Growth::thick)),
                1e-6);
}

} // namespace
