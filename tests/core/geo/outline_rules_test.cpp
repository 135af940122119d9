// SPDX-License-Identifier: GPL-3.0-or-later
// Waters of several pieces with islands, against looking at every piece of shore.
#include "core/geo/hull.h"
#include "core/geo/outline.h"
#include "core/geo/within_ring.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>
#include <string>

namespace {

using namespace geo;
using units::Bearing;

WaterFrame frame() {
    return WaterFrame::centredOn({3.1, 55.2}).value();
}

Ring box(double x, double y, double width, double height) {
    return {{x, y}, {x + width, y}, {x + width, y + height}, {x, y + height}};
}

Ring rugged(WaterPoint middle, double radius_m, int corners, std::mt19937& random) {
    std::uniform_real_distribution<double> share(0.7, 1.0);
    Ring ring;
    for (int i = 0; i < corners; ++i) {
        const double a = 2.0 * std::numbers::pi * i / corners;
        const double r_m = radius_m * share(random);
        ring.push_back({middle.x_m + r_m * std::cos(a), middle.y_m + r_m * std::sin(a)});
    }
    return ring;
}

/// Two lakes, one with two islands, one with one.
std::vector<Piece> lakes() {
    std::mt19937 random(29);
    return {{rugged({0, 0}, 100.0, 60, random),
             {rugged({-30, 20}, 20.0, 17, random), rugged({25, -25}, 25.0, 23, random)}},
            {rugged({230, 40}, 90.0, 41, random), {rugged({230, 40}, 40.0, 19, random)}}};
}

double turnsRound(const Ring& ring, WaterPoint p) {
    double turned = 0.0;
    for (std::size_t k = 0; k < ring.size(); ++k) {
        const WaterPoint a = ring[k];
        const WaterPoint b = ring[(k + 1) % ring.size()];
        turned += std::remainder(std::atan2(b.y_m - p.y_m, b.x_m - p.x_m) -
                                     std::atan2(a.y_m - p.y_m, a.x_m - p.x_m),
                                 2.0 * std::numbers::pi);
    }
    return std::fabs(turned) > 3.0 ? 1.0 : 0.0;
}

bool isInWater(const std::vector<Piece>& pieces, WaterPoint p) {
    double in = 0.0;
    for (const Piece& piece : pieces) {
        in += turnsRound(piece.outer, p);
        for (const Ring& island : piece.islands) {
            in -= turnsRound(island, p);
        }
    }
    return in > 0.5;
}

TEST(OutlineRules, WaterShoreAndLinesAgreeWithLookingAtEveryPieceOfShore) {
    const std::vector<Piece> pieces = lakes();
    const Outline outline = Outline::make(pieces, frame()).value();
    std::mt19937 random(5);
    std::uniform_real_distribution<double> x(-120.0, 340.0), y(-120.0, 150.0), way(0.0, 360.0);
    for (int i = 0; i < 1500; ++i) {
        const WaterPoint p{x(random), y(random)};
        EXPECT_EQ(outline.contains(p), isInWater(pieces, p)) << p.x_m << ' ' << p.y_m;
        double nearest_m = 1e9;
        for (const ShoreSegment& s : outline.segments()) {
            nearest_m = std::min(nearest_m, distanceToSegment_m(p, s.a, s.b));
        }
        EXPECT_NEAR(outline.distanceToShore_m(p), nearest_m, 1e-9);
        const std::vector<double> xs = outline.crossingsAt(p.y_m);
        EXPECT_TRUE(std::is_sorted(xs.begin(), xs.end()));
        EXPECT_EQ(xs.size() % 2, 0U);
        const auto west = std::ranges::count_if(xs, [&](double at) { return at < p.x_m; });
        EXPECT_EQ(west % 2 == 1, outline.contains(p));
        // Straight ahead: the first of many small steps that changes between water and land.
        const Bearing towards = Bearing::degrees(way(random));
        const auto ahead_m = outline.firstShoreAhead_m(p, towards);
        std::optional<double> seen_m;
        for (const ShoreSegment& s : outline.segments()) {
            const double dx = s.b.x_m - s.a.x_m, dy = s.b.y_m - s.a.y_m;
            const double cross = towards.east() * dy - towards.north() * dx;
            const double t = ((s.a.x_m - p.x_m) * dy - (s.a.y_m - p.y_m) * dx) / cross;
            const double u =
                ((s.a.x_m - p.x_m) * towards.north() - (s.a.y_m - p.y_m) * towards.east()) / cross;
            if (t >= 0.0 && u >= 0.0 && u <= 1.0 && (!seen_m || t < *seen_m)) {
                seen_m = t;
            }
        }
        ASSERT_EQ(ahead_m.has_value(), seen_m.has_value());
        if (seen_m) {
            EXPECT_NEAR(*ahead_m, *seen_m, 1e-6);
            const auto reach = [&](double d_m) {
                return moved(p, towards, units::Length::metres(d_m));
            };
            EXPECT_FALSE(outline.isCrossedBy(p, reach(*seen_m - 1e-3)));
            EXPECT_TRUE(outline.isCrossedBy(p, reach(*seen_m + 1e-3)));
        }
    }
}

TEST(OutlineRules, AreaAndShoreAreThoseOfAllPiecesLessAndWithTheirIslands) {
    const Outline outline =
        Outline::make(
            std::vector{Piece{box(0, 0, 100, 60), {box(10, 10, 20, 10)}},
                        Piece{box(200, 0, 30, 40), {box(205, 5, 4, 5), box(215, 5, 2, 3)}}},
            frame())
            .value();
    EXPECT_DOUBLE_EQ(outline.area().inSquareMetres(), 6000.0 - 200.0 + 1200.0 - 20.0 - 6.0);
    EXPECT_DOUBLE_EQ(outline.shoreLength().inMetres(), 320.0 + 60.0 + 140.0 + 18.0 + 10.0);
    EXPECT_DOUBLE_EQ(areaOf(outline.pieces()[1]).inSquareMetres(), 1174.0);
    EXPECT_EQ(outline.segments().size(), 20U);
    EXPECT_EQ(outline.box().west_m, 0.0);
    EXPECT_EQ(outline.box().east_m, 230.0);
    EXPECT_EQ(outline.box().south_m, 0.0);
    EXPECT_EQ(outline.box().north_m, 60.0);
    EXPECT_EQ(outline.crossingsAt(20.0 - 1e-9),
              (std::vector<double>{0.0, 10.0, 30.0, 100.0, 200.0, 230.0}));
    EXPECT_TRUE(outline.crossingsAt(60.1).empty());
    EXPECT_TRUE(outline.crossingsAt(-0.1).empty());
    // The way from lake to lake meets the shore; that within one does not.
    EXPECT_TRUE(outline.isCrossedBy({50.0, 30.0}, {210.0, 30.0}));
    EXPECT_FALSE(outline.isCrossedBy({50.0, 30.0}, {90.0, 30.0}));
    EXPECT_FALSE(outline.firstShoreAhead_m({240.0, 20.0}, Bearing::degrees(90.0)));
    EXPECT_NEAR(*outline.firstShoreAhead_m({-10.0, 0.0}, Bearing::degrees(90.0)), 10.0, 1e-9)
        << "a shore along the ray is met at its nearer end";
}

TEST(OutlineRules, OuterRingsRunCounterClockwiseAndIslandsClockwiseHoweverGiven) {
    for (const bool isTurned : {false, true}) {
        Ring outer = box(0, 0, 100, 60);
        Ring island = box(10, 10, 20, 10);
        if (isTurned) {
            std::reverse(outer.begin(), outer.end());
            std::reverse(island.begin(), island.end());
        }
        const Outline outline = Outline::make(std::vector{Piece{outer, {island}}}, frame()).value();
        EXPECT_GT(signedArea_m2(outline.pieces()[0].outer), 0.0);
        EXPECT_LT(signedArea_m2(outline.pieces()[0].islands.at(0)), 0.0);
        EXPECT_DOUBLE_EQ(outline.area().inSquareMetres(), 5800.0);
    }
}

TEST(OutlineRules, RepeatedPointsNumbersThatAreNoneAndCrumbsAreDropped) {
    const Ring messy{{0, 0},           {0, 0},  {100, 0},      {NAN, 3}, {100, 60},
                     {100, 60 + 1e-7}, {0, 60}, {3, INFINITY}, {0, 0}};
    const Outline outline =
        Outline::make(std::vector{Piece{messy, {box(10, 10, 0.9, 0.9), {{50, 50}, {60, 50}}}},
                                  Piece{box(300, 0, 0.9, 1.0), {}}},
                      frame())
            .value();
    ASSERT_EQ(outline.pieces().size(), 1U);
    EXPECT_EQ(outline.pieces()[0].outer, (Ring{{0, 0}, {100, 0}, {100, 60}, {0, 60}}));
    EXPECT_TRUE(outline.pieces()[0].islands.empty());
    const Outline small =
        Outline::make(std::vector{Piece{box(0, 0, 10, 10), {box(1, 1, 1.0, 1.1)}}}, frame())
            .value();
    EXPECT_EQ(small.pieces()[0].islands.size(), 1U) << "from a square metre it is an island";
}

TEST(OutlineRules, RefuseWhatCrossesItselfWithTheVeryPlace) {
    const auto place = [](std::vector<Piece> pieces) {
        const auto outline = Outline::make(std::move(pieces), frame());
        EXPECT_FALSE(outline);
        return outline ? std::string() : outline.error().where;
    };
    EXPECT_EQ(place({{{{-50, -50}, {50, 50}, {50, -50}, {-50, 50}}, {}}}),
              "longitude 3.100000, latitude 55.200000");
    EXPECT_FALSE(place({{box(0, 0, 100, 60), {box(90, 10, 20, 10)}}}).empty())
        << "an island ashore";
    EXPECT_FALSE(place({{box(0, 0, 100, 60), {}}, {box(50, 50, 100, 60), {}}}).empty());
    EXPECT_FALSE(place({{box(0, 0, 100, 60), {box(10, 10, 20, 20), box(20, 20, 20, 20)}}}).empty());
    const auto none = Outline::make(std::vector{Piece{box(0, 0, 0.5, 0.5), {}}}, frame());
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().what, "the shore encloses no water");
}

TEST(OutlineRules, GoToTheEarthAndBackWithTheirIslands) {
    const Piece piece{box(0, 0, 100, 60), {box(10, 10, 20, 10)}};
    const LonLatPiece onEarth = toEarth(piece, frame());
    const Outline back = Outline::make(std::vector{onEarth}, frame()).value();
    EXPECT_NEAR(back.area().inSquareMetres(), 5800.0, 1e-3);
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_NEAR(distance_m(frame().toWater(onEarth.outer[i]), piece.outer[i]), 0.0, 1e-6);
        EXPECT_NEAR(distance_m(frame().toWater(onEarth.islands[0][i]), piece.islands[0][i]), 0.0,
                    1e-6);
    }
}

TEST(WithinRing, AgreesWithTheTurnsOfTheRing) {
    std::mt19937 random(17);
    const Ring ring = rugged({40, -30}, 80.0, 57, random);
    std::uniform_real_distribution<double> off(-90.0, 90.0);
    for (int i = 0; i < 1000; ++i) {
        const WaterPoint p{40.0 + off(random), -30.0 + off(random)};
        EXPECT_EQ(isWithin(ring, p), turnsRound(ring, p) > 0.5);
    }
    EXPECT_FALSE(isWithin({}, {0, 0}));
}

// The hull of a rectangle grown by r is the rectangle, four strips and (nearly) a circle.
TEST(Hull, OfARectangleHasTheAreaOfItsParts) {
    std::vector<WaterPoint> points = box(-20, 10, 100, 60);
    points.push_back({30, 40});
    points.push_back({-20, 10});
    points.push_back({30, 10});
    const double circle_m2 = 8.0 * std::sin(std::numbers::pi / 8.0) * 15.0 * 15.0; // 16 corners
    EXPECT_NEAR(signedArea_m2(hullOf(points, 15.0)), 6000.0 + 2.0 * 160.0 * 15.0 + circle_m2, 1e-6);
    EXPECT_NEAR(signedArea_m2(hullOf(points, 0.0)), 6000.0, 1e-9);
    EXPECT_EQ(hullOf(points, 0.0).size(), 4U);
    EXPECT_NEAR(signedArea_m2(hullOf(std::vector<WaterPoint>{{5, 5}}, 15.0)), circle_m2, 1e-6);
    EXPECT_NEAR(signedArea_m2(hullOf(std::vector<WaterPoint>{{0, 0}, {10, 0}}, 15.0)),
                circle_m2 + 300.0, 1e-6);
}

} // namespace
