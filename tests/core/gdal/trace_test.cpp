// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gdal/trace.h"

#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

namespace gdal {

namespace {

/// A bowl of 10 m depth at the middle, rising 1 m in each 10 m; no data beyond 90 m from the
/// middle.
struct Bowl {
    static constexpr int side = 101;
    static constexpr double cell_m = 2.0;
    static constexpr double west_m = -101.0;
    static constexpr double north_m = 101.0;
    std::vector<float> values = std::vector<float>(side * side);

    Bowl() {
        for (int r = 0; r < side; ++r) {
            for (int c = 0; c < side; ++c) {
                const double x_m = west_m + (c + 0.5) * cell_m;
                const double y_m = north_m - (r + 0.5) * cell_m;
                const double far_m = std::hypot(x_m, y_m);
                values[static_cast<std::size_t>(r * side + c)] =
                    far_m <= 90.0 ? static_cast<float>(10.0 - far_m / 10.0)
                                  : std::numeric_limits<float>::quiet_NaN();
            }
        }
    }
    [[nodiscard]] TraceField field() const { return {west_m, north_m, cell_m, side, side, values}; }
};

double areaOf(const TracedPolygon& polygon) {
    double sum_m2 = 0.0;
    for (const geo::Piece& piece : polygon.pieces) {
        sum_m2 += geo::areaOf(piece).inSquareMetres();
    }
    return sum_m2;
}

TEST(TraceLines, DrawsACircleAroundABowlAtEachLevel) {
    const Bowl bowl;
    base::Progress progress;
    const auto lines = traceLines(bowl.field(), std::vector<double>{7.0, 3.0}, progress);
    ASSERT_TRUE(lines) << lines.error().sentence();
    ASSERT_EQ(lines->size(), 2U);
    EXPECT_DOUBLE_EQ((*lines)[0].level, 3.0);
    EXPECT_DOUBLE_EQ((*lines)[1].level, 7.0);
    for (const TracedLine& line : *lines) {
        EXPECT_TRUE(line.closed);
        const double radius_m = 10.0 * (10.0 - line.level);
        for (const geo::WaterPoint& p : line.path) {
            EXPECT_NEAR(std::hypot(p.x_m, p.y_m), radius_m, 0.1);
        }
    }
}

TEST(TraceLines, EndsALineWhereTheDataEnd) {
    // A plane that falls to the east: its contours run north to south and end at the edges.
    std::vector<float> values;
    for (int r = 0; r < 10; ++r) {
        for (int c = 0; c < 10; ++c) {
            values.push_back(static_cast<float>(c));
        }
    }
    base::Progress progress;
    const auto lines =
        traceLines({0.0, 10.0, 1.0, 10, 10, values}, std::vector<double>{4.25}, progress);
    ASSERT_TRUE(lines);
    ASSERT_EQ(lines->size(), 1U);
    EXPECT_FALSE(lines->front().closed);
    for (const geo::WaterPoint& p : lines->front().path) {
        EXPECT_NEAR(p.x_m, 4.75, 1e-5); // cell centre of value 4 is 4.5
    }
}

TEST(TracePolygons, CoversTheBandBetweenTwoLevels) {
    const Bowl bowl;
    base::Progress progress;
    const auto bands =
        tracePolygons(bowl.field(), std::vector<double>{2.0, 5.0, 8.0, 20.0}, progress);
    ASSERT_TRUE(bands) << bands.error().sentence();
    ASSERT_EQ(bands->size(), 3U);
    const auto ring_m2 = [](double outer_m, double inner_m) {
        return std::numbers::pi * (outer_m * outer_m - inner_m * inner_m);
    };
    EXPECT_DOUBLE_EQ((*bands)[0].from, 2.0);
    EXPECT_DOUBLE_EQ((*bands)[0].to, 5.0);
    EXPECT_NEAR(areaOf((*bands)[0]), ring_m2(80.0, 50.0), 15.0);
    EXPECT_NEAR(areaOf((*bands)[1]), ring_m2(50.0, 20.0), 15.0);
    EXPECT_NEAR(areaOf((*bands)[2]), ring_m2(20.0, 0.0), 15.0);
    ASSERT_EQ((*bands)[0].pieces.size(), 1U);
    const geo::Piece& piece = (*bands)[0].pieces.front();
    EXPECT_GT(geo::signedArea_m2(piece.outer), 0.0);
    ASSERT_EQ(piece.islands.size(), 1U);
    EXPECT_LT(geo::signedArea_m2(piece.islands.front()), 0.0);
}

TEST(TracePolygons, GivesABandWithoutPiecesWhereNothingIsThatDeep) {
    const Bowl bowl;
    base::Progress progress;
    const auto bands = tracePolygons(bowl.field(), std::vector<double>{30.0, 40.0}, progress);
    ASSERT_TRUE(bands);
    ASSERT_EQ(bands->size(), 1U);
    EXPECT_TRUE(bands->front().pieces.empty());
}

TEST(TraceLines, RefusesValuesThatDoNotFillTheGrid) {
    const std::vector<float> values(5);
    base::Progress progress;
    const auto lines =
        traceLines({0.0, 0.0, 1.0, 2, 3, values}, std::vector<double>{1.0}, progress);
    ASSERT_FALSE(lines);
    EXPECT_EQ(lines.error().kind, base::ErrorKind::wrongUse);
}

class Stopped : public base::Progress {
public:
    [[nodiscard]] bool stopAsked() const override { return true; }
};

TEST(TraceLines, StopsWhenAsked) {
    const Bowl bowl;
    Stopped stopped;
    const auto lines = traceLines(bowl.field(), std::vector<double>{1.0}, stopped);
    ASSERT_FALSE(lines);
    EXPECT_EQ(lines.error().kind, base::ErrorKind::cancelled);
}

} // namespace

} // namespace gdal
