// SPDX-License-Identifier: GPL-3.0-or-later
// Beds and their edges, cell by cell, on a bank that weed covers down to where it stops growing.
#include "core/weed/map_weed.h"
#include "tests/support/made_up_water.h"

#include <cmath>

#include <gtest/gtest.h>

namespace {

using structure::ZoneKind;
using support::MadeUpWater;
using units::Depth;
using units::Length;
using weed::Growth;
using weed::WeedMap;
using weed::WeedNote;
using weed::WeedSettings;

WeedMap mapped(const MadeUpWater& water, const std::vector<WeedNote>& notes,
               std::optional<Depth> secchi, const WeedSettings& settings = {}) {
    base::Progress silent;
    return weed::mapWeed(water.depth, water.mask, notes, {}, secchi, water.frame, settings, silent)
        .value();
}

WeedNote thick(const MadeUpWater& water, geo::WaterPoint at,
               std::optional<Length> height = std::nullopt) {
    WeedNote note;
    note.place = water.frame.toEarth(at);
    note.growth = Growth::thick;
    note.height = height;
    return note;
}

TEST(BedsExactly, ABankIsCoveredFromTheShoreAndItsEdgeIsAsWideAsAskedTowardsOpenWaterOnly) {
    // 0 to 10 m deep over 400 m, from west to east.
    const MadeUpWater water = support::plane(200.0, 0.0, 10.0, 5.0);
    const auto& f = water.depth.frame();
    for (const auto& [width_m, columns] : {std::pair(6.0, 1), {12.0, 2}, {1.0, 1}}) {
        WeedSettings settings;
        settings.edgeWidth = Length::metres(width_m);
        const WeedMap map = mapped(water, {}, Depth::metres(2.0), settings);
        const int row = f.cellOf({0.0, 0.0}).row;
        const int first = f.cellOf({-199.0, 0.0}).col;
        int open = first;
        while (map.probability[grid::Cell{open, row}] > 0.5F) {
            ++open;
        }
        ASSERT_GT(open - first, 10);
        for (int col = first; col <= open + 3; ++col) {
            const auto zone = map.zones.zoneOfCell[grid::Cell{col, row}];
            ASSERT_EQ(zone != structure::noZone, col < open) << col;
            if (col < open) {
                EXPECT_EQ(map.zones.zones[static_cast<std::size_t>(zone)].kind,
                          col >= open - columns ? ZoneKind::weedEdge : ZoneKind::weedBed)
                    << width_m << " m, " << open - col << " columns from open water";
            }
        }
        const double border_m = f.centre({open, row}).x_m - 2.5;
        for (const structure::Zone& zone : map.zones.zones) {
            if (zone.kind == ZoneKind::weedEdge) {
                EXPECT_NEAR(zone.edgeLength.inMetres(), 400.0, 12.0);
                for (const geo::Path& line : zone.topEdges) {
                    for (const geo::WaterPoint p : line) {
                        EXPECT_NEAR(p.x_m, border_m, 2.5);
                    }
                }
            }
        }
    }
}

TEST(BedsExactly, ABedAboveTheLeastSizeStaysAndOneBelowItGoes) {
    const MadeUpWater water = support::plane(200.0, 3.0, 3.0, 5.0);
    WeedSettings settings;
    settings.leastArea = units::Area();
    double bed_m2 = 0.0;
    for (const auto& zone :
         mapped(water, {thick(water, {2.5, 2.5})}, std::nullopt, settings).zones.zones) {
        bed_m2 += zone.area.inSquareMetres();
    }
    ASSERT_GT(bed_m2, 1000.0);
    const auto isThere = [&](double least_m2) {
        settings.leastArea = units::Area::squareMetres(least_m2);
        return !mapped(water, {thick(water, {2.5, 2.5})}, std::nullopt, settings)
                    .zones.zones.empty();
    };
    EXPECT_TRUE(isThere(bed_m2));
    EXPECT_FALSE(isThere(bed_m2 + 25.0));
}

TEST(BedsExactly, WeedIsNeverTallerThanTheWaterIsDeep) {
    const MadeUpWater water = support::plane(200.0, 3.0, 3.0, 5.0);
    const WeedMap map =
        mapped(water, {thick(water, {2.5, 2.5}, Length::metres(20.0))}, std::nullopt);
    EXPECT_EQ(map.height_m[water.depth.frame().cellOf({2.5, 2.5})], 3.0F);
}

TEST(BedsExactly, ANoteReachesRoundLandAndNotOverIt) {
    const MadeUpWater water = support::twoBasins(100.0, 10.0, 3.0, 5.0);
    const WeedMap map = mapped(water, {thick(water, {-12.5, 42.5})}, std::nullopt);
    const auto at = [&](double x_m, double y_m) {
        return map.probability[water.depth.frame().cellOf({x_m, y_m})];
    };
    EXPECT_GT(at(-37.5, 42.5), 0.65F) << "25 m off in its own basin";
    EXPECT_LT(at(12.5, 42.5), 0.55F) << "25 m off beyond the land";
    EXPECT_GT(at(-12.5, -12.5), at(12.5, 42.5));
}

} // namespace
