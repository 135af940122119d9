// SPDX-License-Identifier: GPL-3.0-or-later
// Meridians and parallels: where they run, how far apart, and what stands beside them.
#include "app/chart/graticule.h"

#include "app/chart/chart_painter.h"
#include "tests/app/support/recorded.h"
#include "tests/app/support/star_water.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <set>

namespace {

using chart::GraticuleLine;
using chart::graticuleOf;
using chart::LayerKind;
using chart::ViewFrame;
using Kind = chart::GraticuleLine::Kind;

geo::WaterFrame frameAt(double lon_deg, double lat_deg) {
    return *geo::WaterFrame::centredOn({lon_deg, lat_deg});
}

/// A page of 1200 by 700 pixels round the frame's origin, so many metres wide.
ViewFrame viewOf(double width_m) {
    const double high_m = width_m * 700.0 / 1200.0;
    return ViewFrame::showing({-0.5 * width_m, -0.5 * high_m, 0.5 * width_m, 0.5 * high_m},
                              {1200.0, 700.0}, 0.0);
}

std::vector<double> degreesOf(const std::vector<GraticuleLine>& lines, Kind kind) {
    std::vector<double> degrees;
    for (const GraticuleLine& line : lines) {
        if (line.kind == kind) {
            degrees.push_back(line.degrees);
        }
    }
    return degrees;
}

TEST(Graticule, EachLineKeepsItsDegreesFromEdgeToEdgeOfThePage) {
    std::mt19937 random(1);
    std::uniform_real_distribution<double> lon(-170.0, 170.0);
    std::uniform_real_distribution<double> lat(-70.0, 70.0);
    std::uniform_real_distribution<double> logWidth(2.0, 4.5);
    for (int turn = 0; turn < 60; ++turn) {
        const geo::WaterFrame frame = frameAt(lon(random), lat(random));
        const ViewFrame view = viewOf(std::pow(10.0, logWidth(random)));
        const auto lines = graticuleOf(frame, view, 130.0);
        ASSERT_FALSE(lines.empty());
        const geo::Box box = view.box();
        for (const GraticuleLine& line : lines) {
            const bool isMeridian = line.kind == Kind::meridian;
            for (const geo::WaterPoint p : line.path) {
                const geo::LonLat place = frame.toEarth(p);
                ASSERT_NEAR(isMeridian ? place.lon_deg : place.lat_deg, line.degrees, 1e-9);
            }
            const geo::WaterPoint from = line.path.front();
            const geo::WaterPoint to = line.path.back();
            if (isMeridian) {
                ASSERT_LE(from.y_m, box.south_m + 1e-3 * box.height_m());
                ASSERT_GE(to.y_m, box.north_m - 1e-3 * box.height_m());
            } else {
                ASSERT_LE(from.x_m, box.west_m + 1e-3 * box.width_m());
                ASSERT_GE(to.x_m, box.east_m - 1e-3 * box.width_m());
            }
        }
    }
}

TEST(Graticule, NeighboursLieAtARoundStepWithRoomForALabelAndNoMoreThanThatTwiceAndAHalf) {
    const geo::WaterFrame frame = frameAt(12.98, 52.33);
    for (double width_m = 150.0; width_m < 60'000.0; width_m *= 1.37) {
        const ViewFrame view = viewOf(width_m);
        const auto lines = graticuleOf(frame, view, 100.0);
        for (const Kind kind : {Kind::meridian, Kind::parallel}) {
            const auto degrees = degreesOf(lines, kind);
            ASSERT_GE(degrees.size(), 2U) << width_m;
            const double step = degrees[1] - degrees[0];
            const double lead = step / std::pow(10.0, std::floor(std::log10(step * 1.0001)));
            EXPECT_TRUE(std::fabs(lead - 1.0) < 0.01 || std::fabs(lead - 2.0) < 0.01 ||
                        std::fabs(lead - 5.0) < 0.01)
                << step;
            const auto first = std::ranges::find(lines, kind, &GraticuleLine::kind);
            const QPointF gap =
                view.toScreen((first + 1)->path.front()) - view.toScreen(first->path.front());
            const double pixels = kind == Kind::meridian ? gap.x() : -gap.y();
            EXPECT_GE(pixels, 99.0) << width_m;
            EXPECT_LE(pixels, 255.0) << width_m;
        }
    }
}

// Source: lengths of a degree on WGS 84 at 45 degrees of latitude, 111.132 km of the meridian and
// 78.847 km of the parallel; the formula is in Snyder, Map Projections: A Working Manual (USGS
// Professional Paper 1395), p. 24-25 (values from memory, to the metre).
TEST(Graticule, LinesLieAsFarApartAsADegreeIsLong) {
    const geo::WaterFrame frame = frameAt(7.0, 45.0);
    const ViewFrame view = viewOf(8'000.0);
    const auto lines = graticuleOf(frame, view, 200.0);
    for (const auto& [kind, metres] :
         {std::pair(Kind::meridian, 78'847.0), std::pair(Kind::parallel, 111'132.0)}) {
        const auto first = std::ranges::find(lines, kind, &GraticuleLine::kind);
        const GraticuleLine& a = *first;
        const GraticuleLine& b = *(first + 1);
        const std::size_t middle = a.path.size() / 2;
        const double apart_m = kind == Kind::meridian ? b.path[middle].x_m - a.path[middle].x_m
                                                      : b.path[middle].y_m - a.path[middle].y_m;
        EXPECT_NEAR(apart_m / (b.degrees - a.degrees), metres, 2e-4 * metres);
    }
}

TEST(Graticule, SaysDegreesWithTheDecimalsOfItsStepAndTheirSide) {
    EXPECT_EQ(chart::wordsOf({Kind::parallel, 55.2, 2, {}}), "55.20° N");
    EXPECT_EQ(chart::wordsOf({Kind::parallel, -3.105, 3, {}}), "3.105° S");
    EXPECT_EQ(chart::wordsOf({Kind::meridian, 13.0, 0, {}}), "13° E");
    EXPECT_EQ(chart::wordsOf({Kind::meridian, -0.5, 1, {}}), "0.5° W");
    // All labels of a page differ, and are no longer than they have to be.
    for (double width_m = 150.0; width_m < 60'000.0; width_m *= 1.21) {
        std::set<QString> words;
        bool isAnyLastDigitNeeded = false;
        for (const GraticuleLine& line :
             graticuleOf(frameAt(-0.01, 51.0), viewOf(width_m), 100.0)) {
            EXPECT_TRUE(words.insert(chart::wordsOf(line)).second) << width_m;
            const QString degrees = chart::wordsOf(line).section(QChar(u'°'), 0, 0);
            isAnyLastDigitNeeded |= !degrees.endsWith('0');
        }
        EXPECT_TRUE(isAnyLastDigitNeeded) << width_m;
    }
}

TEST(Graticule, NothingWhereTheViewShowsMoreThanTheFrameIsTrueFor) {
    // A wall of screens: a view shows at most 200 m in a pixel.
    const ViewFrame wide = ViewFrame::showing({-2e5, -1e5, 2e5, 1e5}, {3000.0, 1500.0}, 0.0);
    ASSERT_GT(wide.box().width_m(), 399'000.0);
    EXPECT_TRUE(graticuleOf(frameAt(10.0, 50.0), wide, 130.0).empty());
}

TEST(Graticule, IsDrawnWithItsLabelsOnlyWhereItIsAskedFor) {
    const QSize page(1100, 760);
    chart::ChartContent content = support::starContent();
    ASSERT_TRUE(content.water->frame);
    EXPECT_FALSE(chart::usualLayers().contains(LayerKind::graticule));
    content.shown = {LayerKind::graticule};
    const ViewFrame view = chart::wholeWater(content, page);
    support::Recorded drawn(page);
    support::paintOn(drawn, content, view);
    const auto lines = graticuleOf(*content.water->frame, view, 130.0);
    ASSERT_GE(lines.size(), 6U);
    for (const GraticuleLine& line : lines) {
        EXPECT_TRUE(drawn.says(chart::wordsOf(line))) << chart::wordsOf(line).toStdString();
    }
    content.shown = {LayerKind::depth};
    support::Recorded without(page);
    support::paintOn(without, content, view);
    EXPECT_FALSE(without.says(chart::wordsOf(lines.front())));
}

} // namespace
