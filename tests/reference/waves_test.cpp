// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wind/beaufort.h"
#include "core/wind/fetch.h"
#include "core/wind/waves.h"

#include <array>
#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

namespace {

using units::Bearing;
using units::Length;
using units::Speed;

struct Row {
    double wind_m_s;
    double fetch_m;
    double height_m;
    double period_s;
    double shallowHeight_m; ///< At a depth of 3 m.
    double shallowPeriod_s;
};

// Shore Protection Manual, US Army CERC 1984, ch. 3: its forms as later texts quote them (the
// manual itself was not seen: second-hand), computed by hand.
constexpr std::array rows = {
    Row{5, 1000, .0830, 1.076, .0818, 1.025}, Row{10, 500, .1377, 1.135, .1357, 1.105},
    Row{10, 1000, .1948, 1.430, .1893, 1.371}, Row{10, 2000, .2755, 1.801, .2606, 1.687},
    Row{15, 2000, .4536, 2.127, .4154, 1.991}};

TEST(Waves, FollowTheShoreProtectionManual) {
    for (const Row& row : rows) {
        const auto wind = Speed::metresPerSecond(row.wind_m_s);
        const auto fetch = Length::metres(row.fetch_m);
        const wind::Waves deep = wind::wavesOnDeepWater(wind, fetch);
        EXPECT_NEAR(deep.significantHeight.inMetres(), row.height_m, 0.0005);
        EXPECT_NEAR(deep.period_s, row.period_s, 0.001);
        const wind::Waves shallow = wind::wavesOverDepth(wind, fetch, units::Depth::metres(3.0));
        EXPECT_NEAR(shallow.significantHeight.inMetres(), row.shallowHeight_m, 0.0005);
        EXPECT_NEAR(shallow.period_s, row.shallowPeriod_s, 0.001);
    }
}

geo::Outline outlineOf(const geo::Ring& ring) {
    const auto frame = geo::WaterFrame::centredOn({3.1, 55.2}).value();
    return geo::Outline::make(std::vector{geo::Piece{ring, {}}}, frame).value();
}

TEST(Fetch, OfAStripSeenFromItsEndIsTheWeightedMeanOfItsRadials) {
    // Saville 1954 as in USGS UMESC PSR 97-08: strip of 5000 by 1000 m from the middle of its end:
    // radials 5000, 4783.4, 2404.9, 1618.0, 1229.3, 1000.0, 850.7, 747.2 give 2128.78 m.
    const geo::Outline strip = outlineOf({{-500, 0}, {500, 0}, {500, 5000}, {-500, 5000}});
    const wind::Fetch fetch = wind::fetchAt(strip, {0.0, 1e-6}, Bearing::degrees(0.0));
    EXPECT_NEAR(fetch.straight.inMetres(), 5000.0, 0.01);
    EXPECT_NEAR(fetch.effective.inMetres(), 2128.78, 0.05);
}

TEST(Fetch, OfACircleSeenFromItsRim) {
    // Circle of 2000 m across: 1818.29 m by the same rule.
    geo::Ring ring;
    constexpr int corners = 3600;
    for (int i = 0; i < corners; ++i) {
        const double a = 2.0 * std::numbers::pi * i / corners;
        ring.push_back({1000.0 * std::cos(a), 1000.0 * std::sin(a)});
    }
    const wind::Fetch fetch =
        wind::fetchAt(outlineOf(ring), {0.0, -1000.0 + 0.001}, Bearing::degrees(0.0));
    EXPECT_NEAR(fetch.effective.inMetres(), 1818.29, 0.1);
}

TEST(Beaufort, BeginsEachForceAtItsKnot) {
    // World Meteorological Organization's scale in knots, as on the Met Office's sheet.
    constexpr std::array firstKnots = {1.0,  4.0,  7.0,  11.0, 17.0, 22.0,
                                       28.0, 34.0, 41.0, 48.0, 56.0, 64.0};
    for (std::size_t i = 0; i < firstKnots.size(); ++i) {
        EXPECT_EQ(wind::beaufortForce(Speed::knots(firstKnots[i])), static_cast<int>(i) + 1);
        EXPECT_EQ(wind::beaufortForce(Speed::knots(firstKnots[i] - 1.0)), static_cast<int>(i));
    }
}

} // namespace
