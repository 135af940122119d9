// SPDX-License-Identifier: GPL-3.0-or-later
// Zones on cells that can be counted by hand: sizes, depths, trust, names, what joins what, lines
// along borders, and each rule at its threshold.
#include "core/structure/border_lines.h"
#include "core/structure/drop_off_lines.h"
#include "core/structure/feature_kinds.h"
#include "core/structure/find_structure.h"
#include "core/structure/gentle_kinds.h"
#include "core/structure/position_index.h"
#include "core/structure/zone_assembly.h"
#include "tests/support/made_up_water.h"

#include <algorithm>
#include <cmath>
#include <random>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using grid::Cell;
using grid::GridFrame;
using structure::codeOf;
using structure::KindGrid;
using structure::Zone;
using structure::ZoneKind;
using structure::ZoneMap;
using testing::ElementsAre;
using testing::HasSubstr;
using units::Depth;
using units::Length;

/// Rows as text: a letter for a kind, '.' water of none, ' ' land. Cells of 10 m, all 5 m deep.
struct Drawn {
    explicit Drawn(const std::vector<std::string>& rows)
        : frame(0.0, 10.0 * static_cast<double>(rows.size()), 10.0,
                static_cast<int>(rows.front().size()), static_cast<int>(rows.size())),
          kinds(frame, -1), depth(frame) {
        grid::Grid<std::uint8_t> active(frame, 0);
        for (std::size_t i = 0; i < frame.size(); ++i) {
            const Cell c = frame.cellAt(i);
            const char sign =
                rows[static_cast<std::size_t>(c.row)][static_cast<std::size_t>(c.col)];
            active[i] = sign == ' ' ? 0 : 1;
            kinds[i] = kindOf(sign);
            if (sign != ' ') {
                depth.set(i, Depth::metres(5.0));
            }
        }
        mask = grid::Mask::from(active);
    }
    static std::int32_t kindOf(char sign) {
        switch (sign) {
        case 'd':
            return codeOf(ZoneKind::dropOff);
        case 'h':
            return codeOf(ZoneKind::hump);
        case 'f':
            return codeOf(ZoneKind::flat);
        case 's':
            return codeOf(ZoneKind::shelf);
        case 'p':
            return codeOf(ZoneKind::plateau);
        default:
            return -1;
        }
    }
    [[nodiscard]] std::vector<std::string> asText() const {
        std::vector<std::string> rows;
        for (int row = 0; row < frame.rows(); ++row) {
            rows.emplace_back();
            for (int col = 0; col < frame.cols(); ++col) {
                const std::size_t i = frame.index({col, row});
                char sign = mask.isActive(i) ? '.' : ' ';
                for (const char known : {'d', 'h', 'f', 's', 'p'}) {
                    sign = kinds[i] == kindOf(known) ? known : sign;
                }
                rows.back().push_back(sign);
            }
        }
        return rows;
    }
    GridFrame frame;
    KindGrid kinds;
    grid::DepthGrid depth;
    grid::Mask mask;
};

TEST(ZoneNames, AreThoseOfTheTrade) {
    const std::vector<std::string_view> names{"drop-off", "shelf",    "plateau",  "hump",
                                              "hole",     "trough",   "spur",     "saddle",
                                              "flat",     "weed bed", "weed edge"};
    ASSERT_EQ(names.size(), structure::allZoneKinds.size());
    for (std::size_t k = 0; k < names.size(); ++k) {
        EXPECT_EQ(structure::nameOf(structure::allZoneKinds.at(k)), names[k]);
        EXPECT_EQ(static_cast<std::size_t>(codeOf(structure::allZoneKinds.at(k))), k);
    }
}

TEST(ZonesCounted, HoldTheAreaDepthsAndTrustOfTheirCells) {
    Drawn water({"hh..", "hh.f"});
    water.depth.set(0, Depth::metres(2.0));
    water.depth.set(1, Depth::metres(3.5));
    water.depth.clear(5);
    grid::Grid<float> trust(water.frame, 0.9F);
    trust[0] = 0.2F;
    trust[1] = 0.4F;
    trust[4] = NAN;
    trust[5] = 0.6F;
    const ZoneMap map = structure::zonesFrom(water.kinds, {water.depth, water.mask, &trust, {}});
    ASSERT_EQ(map.zones.size(), 2U);
    const Zone& hump = map.zones[0];
    EXPECT_EQ(hump.name, "Hump 1");
    EXPECT_EQ(hump.kind, ZoneKind::hump);
    EXPECT_THAT(hump.cells, ElementsAre(0U, 1U, 4U, 5U));
    EXPECT_DOUBLE_EQ(hump.area.inSquareMetres(), 400.0);
    EXPECT_EQ(hump.shallowest, Depth::metres(2.0));
    EXPECT_EQ(hump.deepest, Depth::metres(5.0));
    EXPECT_NEAR(hump.meanTrust_m, 0.4, 1e-6);
    EXPECT_EQ(map.zones[1].name, "Flat 1");
    EXPECT_DOUBLE_EQ(map.zones[1].area.inSquareMetres(), 100.0);
    EXPECT_NEAR(map.zones[1].meanTrust_m, 0.9, 1e-6);
    EXPECT_THAT(map.zoneOfCell.values(), ElementsAre(0, 0, -1, -1, 0, 0, -1, 1));
    const ZoneMap unknown =
        structure::zonesFrom(water.kinds, {water.depth, water.mask, nullptr, {}});
    EXPECT_EQ(unknown.zones[0].meanTrust_m, 0.0);
}

TEST(ZonesCounted, ACellOnTheShoreCountsByItsShare) {
    const auto water = support::madeUpWater(
        {{support::rectangle(0.0, 0.0, 105.0, 52.5), {}}}, [](geo::WaterPoint) { return 3.0; },
        10.0);
    KindGrid kinds(water.depth.frame(), -1);
    for (std::size_t i = 0; i < kinds.size(); ++i) {
        kinds[i] = water.mask.isActive(i) ? codeOf(ZoneKind::flat) : -1;
    }
    const ZoneMap map = structure::zonesFrom(kinds, {water.depth, water.mask, nullptr, {}});
    ASSERT_EQ(map.zones.size(), 1U);
    EXPECT_NEAR(map.zones[0].area.inSquareMetres(), 105.0 * 52.5, 20.0);
}

TEST(ZonesCounted, AreNamedByKindThenClockwiseFromNorthOrTheLaunch) {
    const Drawn water({"...h...", ".......", "h.....h", ".......", "...h..f"});
    const auto middles = [&](std::optional<geo::WaterPoint> launch) {
        std::vector<std::pair<double, double>> out;
        for (const Zone& zone :
             structure::zonesFrom(water.kinds, {water.depth, water.mask, nullptr, launch}).zones) {
            out.emplace_back(zone.middle.x_m, zone.middle.y_m);
        }
        return out;
    };
    using P = std::pair<double, double>;
    EXPECT_THAT(middles({}), ElementsAre(P(35, 45), P(65, 25), P(35, 5), P(5, 25), P(65, 5)));
    EXPECT_THAT(middles(geo::WaterPoint{0.0, -20.0}),
                ElementsAre(P(5, 25), P(35, 45), P(65, 25), P(35, 5), P(65, 5)));
    const ZoneMap map = structure::zonesFrom(water.kinds, {water.depth, water.mask, nullptr, {}});
    EXPECT_EQ(map.zones[3].name, "Hump 4");
    EXPECT_EQ(map.zones[4].name, "Flat 1");
}

TEST(SmallPieces, JoinTheirLongestBorderAndLargeOnesStay) {
    Drawn water({"ffffdddd", "ffffdddd", "fhhfdddd", "ffffdd.d", "ffffdddd"});
    EXPECT_EQ(structure::joinSmallPieces(water.kinds, water.mask, 3), 1U)
        << "two cells of hump; the gap in the drop-off was no piece of a kind";
    EXPECT_THAT(water.asText(),
                ElementsAre("ffffdddd", "ffffdddd", "ffffdddd", "ffffdddd", "ffffdddd"));
    Drawn kept({"ffff", "fhhf", "ffff", "ffff"});
    EXPECT_EQ(structure::joinSmallPieces(kept.kinds, kept.mask, 2), 0U);
    EXPECT_THAT(kept.asText(), ElementsAre("ffff", "fhhf", "ffff", "ffff"));
    Drawn alone({"hh  ffff", "    ffff"});
    EXPECT_EQ(structure::joinSmallPieces(alone.kinds, alone.mask, 3), 0U);
    EXPECT_THAT(alone.asText(), ElementsAre("..  ffff", "    ffff"))
        << "nothing to join: no zone at all";
    // Three sides to the drop-off, one to the flat.
    Drawn most({"fffddd", "fffhdd", "fffddd", "ffffff"});
    structure::joinSmallPieces(most.kinds, most.mask, 4);
    EXPECT_EQ(most.kinds[(Cell{3, 1})], codeOf(ZoneKind::dropOff));
}

TEST(Hysteresis, KeepsPiecesThatReachTheUpperThresholdDownToTheLower) {
    grid::Grid<float> values(GridFrame(0.0, 10.0, 10.0, 9, 1), 0.0F);
    values.values() = {8.0F, 10.0F, 8.0F, 7.99F, 8.0F, 9.99F, 8.0F, NAN, 12.0F};
    const auto held = structure::withHysteresis(values, 10.0, 8.0);
    EXPECT_THAT(held.values(), ElementsAre(1, 1, 1, 0, 0, 0, 0, 0, 1));
}

TEST(WindowRadius, IsThatOfTheBoxNearestToTheScale) {
    for (const auto& [scale_m, cell_m, radius] : {std::tuple(0.0, 5.0, 0),
                                                  {8.0, 5.0, 0},
                                                  {15.0, 5.0, 1},
                                                  {19.9, 5.0, 1},
                                                  {20.1, 5.0, 2},
                                                  {25.0, 5.0, 2},
                                                  {8.0, 1.0, 4}}) {
        EXPECT_EQ(structure::windowRadius(Length::metres(scale_m), cell_m), radius) << scale_m;
    }
}

TEST(PositionIndexExactly, IsTheMeanOfTheRingLessTheCellWhateverIsDry) {
    std::mt19937 random(4);
    std::uniform_real_distribution<float> any(1.0F, 9.0F);
    grid::DepthGrid depth(GridFrame(0.0, 210.0, 10.0, 21, 21));
    for (std::size_t i = 0; i < depth.size(); ++i) {
        depth.raw_m()[i] = i % 7 == 3 ? NAN : any(random);
    }
    const auto index = structure::PositionIndex::of(depth, Length::metres(20), Length::metres(50));
    std::vector<double> known;
    for (std::size_t i = 0; i < depth.size(); ++i) {
        const Cell c = depth.frame().cellAt(i);
        double sum = 0.0;
        int count = 0;
        int ring = 0;
        for (int dr = -5; dr <= 5; ++dr) {
            for (int dc = -5; dc <= 5; ++dc) {
                const int square = dr * dr + dc * dc;
                if (square >= 4 && square <= 25) {
                    ++ring;
                    if (const auto there = depth.at(Cell{c.col + dc, c.row + dr})) {
                        sum += there->inMetres();
                        ++count;
                    }
                }
            }
        }
        const auto rise = index.riseAt(c);
        ASSERT_EQ(rise.has_value(), depth.has(i) && 4 * count >= ring) << i;
        if (rise) {
            EXPECT_NEAR(rise->inMetres(), sum / count - depth.at(c)->inMetres(), 1e-4) << i;
            known.push_back(rise->inMetres());
        }
    }
    const auto median = [](std::vector<double> values) {
        std::ranges::sort(values);
        return values[values.size() / 2];
    };
    const double middle = median(known);
    std::ranges::transform(known, known.begin(), [&](double v) { return std::abs(v - middle); });
    EXPECT_NEAR(index.spread_m(), 1.4826 * median(known), 1e-4);
    EXPECT_NEAR(index.standardised(221),
                static_cast<double>(index.rise_m()[221]) / index.spread_m(), 1e-9);
}

/// A square ring of 40 m a side, counter-clockwise from its south-west corner.
std::vector<geo::Path> alongBorder(const std::function<bool(double)>& belongs) {
    // Metres along the ring from its first corner.
    const auto alongOf = [](geo::WaterPoint p) {
        return p.y_m <= 0.0    ? p.x_m
               : p.x_m >= 40.0 ? 40.0 + p.y_m
               : p.y_m >= 40.0 ? 120.0 - p.x_m
                               : 160.0 - p.y_m;
    };
    return structure::linesAlongBorder(
        {{{{0, 0}, {40, 0}, {40, 40}, {0, 40}}, {}}}, 5.0,
        [&](geo::WaterPoint a, geo::WaterPoint b) {
            return belongs(alongOf({0.5 * (a.x_m + b.x_m), 0.5 * (a.y_m + b.y_m)}));
        });
}

TEST(BorderLines, BridgeFourStretchesAndNoMore) {
    const auto gap = [](double from_m, double to_m) {
        return [=](double at_m) { return at_m < 80.0 && !(at_m > from_m && at_m < to_m); };
    };
    const auto four = alongBorder(gap(20.0, 40.0));
    ASSERT_EQ(four.size(), 1U);
    EXPECT_NEAR(geo::lengthOf(four[0]).inMetres(), 80.0, 1e-9);
    const auto five = alongBorder(gap(20.0, 45.0));
    ASSERT_EQ(five.size(), 2U);
    EXPECT_NEAR(geo::lengthOf(five[0]).inMetres() + geo::lengthOf(five[1]).inMetres(), 55.0, 1e-9);
}

TEST(BorderLines, GoAllRoundWhereAllBelongsAndNowhereWhereNothingDoes) {
    const auto all = alongBorder([](double) { return true; });
    ASSERT_EQ(all.size(), 1U);
    EXPECT_EQ(all[0].front(), all[0].back());
    EXPECT_NEAR(geo::lengthOf(all[0]).inMetres(), 160.0, 1e-9);
    EXPECT_TRUE(alongBorder([](double) { return false; }).empty());
    const auto over = alongBorder([](double at_m) { return at_m < 40.0 || at_m > 120.0; });
    ASSERT_EQ(over.size(), 1U) << "a run over the first corner is one line";
    EXPECT_NEAR(geo::lengthOf(over[0]).inMetres(), 80.0, 1e-9);
}

TEST(BorderLines, GoRoundIslandsToo) {
    const auto lines = structure::linesAlongBorder(
        {{{{0, 0}, {100, 0}, {100, 100}, {0, 100}}, {{{40, 40}, {40, 60}, {60, 60}, {60, 40}}}}},
        5.0, [](geo::WaterPoint a, geo::WaterPoint b) {
            return a.x_m > 30.0 && b.x_m > 30.0 && a.x_m < 70.0 && b.x_m < 70.0 && a.y_m > 30.0 &&
                   b.y_m > 30.0 && a.y_m < 70.0 && b.y_m < 70.0;
        });
    ASSERT_EQ(lines.size(), 1U);
    EXPECT_NEAR(geo::lengthOf(lines[0]).inMetres(), 80.0, 1e-9);
}

/// Gentle ground in the middle; round it, by side: west, south, east, north as far as known.
ZoneKind middleOf(const std::vector<std::string>& rows, double roundAbout_m, double limit_m = 9.0,
                  double middle_m = 5.0) {
    Drawn water(rows);
    for (std::size_t i = 0; i < water.frame.size(); ++i) {
        if (water.mask.isActive(i)) {
            const bool isGentle = water.kinds[i] == codeOf(ZoneKind::flat);
            water.depth.set(i, Depth::metres(isGentle ? middle_m : middle_m + roundAbout_m));
        }
    }
    structure::nameGentleGround(water.kinds, water.depth, Depth::metres(limit_m),
                                Length::metres(10.0));
    return static_cast<ZoneKind>(
        water.kinds[water.frame.cellOf({5.0 * water.frame.cols(), 5.0 * water.frame.rows()})]);
}

TEST(GentleGround, IsAShelfBesideADropOffAPlateauWithDeeperAllRoundElseFlat) {
    const std::vector<std::string> plateau{"ddddddd", "ddddddd", "ddfffdd", "ddfffdd",
                                           "ddfffdd", "ddddddd", "ddddddd"};
    EXPECT_EQ(middleOf(plateau, 2.0), ZoneKind::plateau);
    EXPECT_EQ(middleOf(plateau, 0.14), ZoneKind::flat) << "hardly deeper";
    EXPECT_EQ(middleOf(plateau, 0.16), ZoneKind::plateau);
    EXPECT_EQ(middleOf(plateau, -2.0), ZoneKind::flat) << "the drop-off comes down to it";
    EXPECT_EQ(middleOf(plateau, 2.0, 4.9), ZoneKind::flat) << "below the limit";
    EXPECT_EQ(middleOf(plateau, 2.0, 5.0), ZoneKind::plateau) << "at the limit";
    // Land on half of its border, or a little more: 6 of 12 sides are no more than half.
    EXPECT_EQ(
        middleOf({"       ", "       ", "  fffdd", "  fffdd", "  fffdd", "ddddddd", "ddddddd"},
                 2.0),
        ZoneKind::shelf);
    EXPECT_EQ(
        middleOf({"       ", "       ", "ddfffdd", "ddfffdd", "ddfffdd", "ddddddd", "ddddddd"},
                 2.0),
        ZoneKind::plateau);
    EXPECT_EQ(
        middleOf({".......", ".......", "..fff..", "..fff..", "..fff..", ".......", "......."},
                 2.0),
        ZoneKind::flat)
        << "no drop-off";
    // One side in twelve leads down a drop-off: less than a tenth; two are more.
    EXPECT_EQ(
        middleOf({".......", "..d....", "..fff..", "..fff..", "..fff..", ".......", "......."},
                 2.0),
        ZoneKind::flat);
    EXPECT_EQ(
        middleOf({".......", "..dd...", "..fff..", "..fff..", "..fff..", ".......", "......."},
                 2.0),
        ZoneKind::plateau);
}

} // namespace
