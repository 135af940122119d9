// SPDX-License-Identifier: GPL-3.0-or-later
// Lines and areas of planes, whose every contour is a straight line known by formula.
#include "core/gdal/trace.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include <gtest/gtest.h>

namespace gdal {

namespace {

constexpr int cols = 30;
constexpr int rows = 20;

/// 0.5 m deeper for each metre to the east, 0.25 m shallower for each to the north; cells of 2 m,
/// the north-west corner at 100 m east, 300 m north.
struct Plane {
    std::vector<float> values;
    Plane() {
        for (int r = 0; r < rows; ++r) {
            for (int c = 0; c < cols; ++c) {
                values.push_back(static_cast<float>(
                    depth_m({100.0 + (c + 0.5) * 2.0, 300.0 - (r + 0.5) * 2.0})));
            }
        }
    }
    static double depth_m(geo::WaterPoint p) {
        return 0.5 * (p.x_m - 100.0) + 0.25 * (300.0 - p.y_m);
    }
    [[nodiscard]] TraceField field() const { return {100.0, 300.0, 2.0, cols, rows, values}; }
};

TEST(TraceRules, ALineOfAPlaneLiesWhereThePlaneHasItsLevel) {
    const Plane plane;
    base::Progress silent;
    const auto lines = traceLines(plane.field(), std::vector{20.0, 7.25, 7.25, 13.1}, silent);
    ASSERT_TRUE(lines) << lines.error().sentence();
    ASSERT_EQ(lines->size(), 3U) << "each level once";
    const double levels[] = {7.25, 13.1, 20.0};
    for (std::size_t i = 0; i < 3; ++i) {
        const TracedLine& line = (*lines)[i];
        EXPECT_EQ(line.level, levels[i]) << "the level asked for, to the last digit";
        EXPECT_FALSE(line.closed);
        ASSERT_GT(line.path.size(), 5U);
        for (const geo::WaterPoint p : line.path) {
            const bool isBetweenCentres =
                p.x_m > 101.01 && p.x_m < 158.99 && p.y_m > 261.01 && p.y_m < 298.99;
            EXPECT_NEAR(Plane::depth_m(p), line.level, isBetweenCentres ? 1e-4 : 0.51)
                << p.x_m << ' ' << p.y_m;
        }
        const auto same = [](geo::WaterPoint a, geo::WaterPoint b) { return a == b; };
        EXPECT_EQ(std::adjacent_find(line.path.begin(), line.path.end(), same), line.path.end());
    }
}

TEST(TraceRules, BandsOfAPlaneLieBetweenTheirLevelsAndFillIt) {
    const Plane plane;
    base::Progress silent;
    const auto bands = tracePolygons(plane.field(), std::vector{40.0, 1.25, 7.25, 13.1}, silent);
    ASSERT_TRUE(bands) << bands.error().sentence();
    ASSERT_EQ(bands->size(), 3U);
    double sum_m2 = 0.0;
    for (const TracedPolygon& band : *bands) {
        for (const geo::Piece& piece : band.pieces) {
            sum_m2 += geo::areaOf(piece).inSquareMetres();
            EXPECT_GT(geo::signedArea_m2(piece.outer), 0.0);
            EXPECT_FALSE(piece.outer.front() == piece.outer.back());
            for (const geo::WaterPoint p : piece.outer) {
                EXPECT_GE(Plane::depth_m(p), band.from - 1.3) << "beyond the last centre by a cell";
                EXPECT_LE(Plane::depth_m(p), band.to + 1.3);
            }
        }
    }
    EXPECT_EQ((*bands)[0].from, 1.25);
    EXPECT_EQ((*bands)[0].to, 7.25);
    EXPECT_EQ((*bands)[2].from, 13.1);
    EXPECT_EQ((*bands)[2].to, 40.0);
    EXPECT_NEAR(sum_m2, 60.0 * 40.0 - 5.0, 3.0) << "but for the corner above 1.25 m";
}

TEST(TraceRules, IslandsOfABandRunClockwiseAndLiesInIt) {
    std::vector<float> values(30 * 20, 5.0F); // a flat with two rises
    values[5 * 30 + 6] = 1.0F;
    values[12 * 30 + 20] = 1.0F;
    base::Progress silent;
    const auto bands =
        tracePolygons({0.0, 40.0, 2.0, 30, 20, values}, std::vector{0.0, 3.0, 9.0}, silent);
    ASSERT_TRUE(bands);
    EXPECT_EQ((*bands)[0].pieces.size(), 2U);
    ASSERT_EQ((*bands)[1].pieces.size(), 1U);
    const geo::Piece& flat = (*bands)[1].pieces[0];
    ASSERT_EQ(flat.islands.size(), 2U);
    for (const geo::Ring& island : flat.islands) {
        EXPECT_LT(geo::signedArea_m2(island), 0.0);
        EXPECT_FALSE(island.front() == island.back());
    }
    // Half way from 5 to 1: a square on its corner, half a cell of 2 m to each side.
    EXPECT_NEAR(geo::areaOf((*bands)[0].pieces[0]).inSquareMetres(), 2.0, 1e-3);
}

TEST(TraceRules, NothingIsTracedWithoutLevelsAndNothingWithoutNumbers) {
    const Plane plane;
    base::Progress silent;
    EXPECT_TRUE(traceLines(plane.field(), {}, silent)->empty());
    EXPECT_TRUE(tracePolygons(plane.field(), std::vector{3.0}, silent)->empty());
    EXPECT_TRUE(tracePolygons(plane.field(), std::vector{3.0, 3.0, std::nan("")}, silent)->empty());
    const double inf = std::numeric_limits<double>::infinity();
    EXPECT_EQ(traceLines(plane.field(), std::vector{inf, 5.0, std::nan("")}, silent)->size(), 1U);
    for (const TraceField& field : {TraceField{0, 0, 2.0, cols, rows + 1, plane.values},
                                    {0, 0, 2.0, 0, 0, {}},
                                    {0, 0, 0.0, cols, rows, plane.values},
                                    {0, 0, -2.0, cols, rows, plane.values}}) {
        EXPECT_EQ(traceLines(field, std::vector{5.0}, silent).error().kind,
                  base::ErrorKind::wrongUse);
        EXPECT_EQ(tracePolygons(field, std::vector{5.0, 6.0}, silent).error().kind,
                  base::ErrorKind::wrongUse);
    }
}

TEST(TraceRules, ALineRoundADeepIsClosedAndEndsWhereItBegan) {
    std::vector<float> values(30 * 20, 1.0F);
    values[5 * 30 + 6] = 5.0F;
    base::Progress silent;
    const auto lines = traceLines({0.0, 40.0, 2.0, 30, 20, values}, std::vector{3.0}, silent);
    ASSERT_TRUE(lines);
    ASSERT_EQ(lines->size(), 1U);
    EXPECT_TRUE((*lines)[0].closed);
    EXPECT_EQ((*lines)[0].path.front(), (*lines)[0].path.back());
    for (const geo::WaterPoint p : (*lines)[0].path) {
        EXPECT_NEAR(std::fabs(p.x_m - 13.0) + std::fabs(p.y_m - 29.0), 1.0, 1e-4);
    }
}

} // namespace

} // namespace gdal
