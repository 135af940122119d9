// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/trust.h"

#include "core/surface/draw_water.h"
#include "tests/core/surface/tracks.h"

#include <cmath>

#include <gtest/gtest.h>

namespace {

using surface::TrustGrid;
using surface::TrustName;

TEST(Trust, CountsSharesOverTheWaterAlone) {
    const grid::GridFrame frame(0.0, 20.0, 10.0, 2, 2);
    grid::Grid<float> halfWidths_m(frame, NAN);
    grid::Grid<TrustName> names(frame, TrustName::guess);
    halfWidths_m[grid::Cell{0, 0}] = 0.2F;
    names[grid::Cell{0, 0}] = TrustName::sounded;
    halfWidths_m[grid::Cell{1, 0}] = 0.4F;
    names[grid::Cell{1, 0}] = TrustName::inferred;
    const TrustGrid trust(halfWidths_m, names);
    EXPECT_DOUBLE_EQ(trust.shareOf(TrustName::sounded), 0.5);
    EXPECT_DOUBLE_EQ(trust.shareOf(TrustName::guess), 0.0);
    EXPECT_EQ(trust.at(geo::WaterPoint{12.0, 15.0}), TrustName::inferred);
    EXPECT_FALSE(trust.at(geo::WaterPoint{12.0, 5.0}).has_value());
    EXPECT_FALSE(trust.halfWidthAt(geo::WaterPoint{-5.0, 5.0}).has_value());
}

TEST(Trust, IsBestOnTheTracksAndWorstFarFromThem) {
    const support::MadeUpWater water = support::gaussianHump(400.0, 10.0, 4.0, 60.0, {0, 0}, 5.0);
    std::vector<soundings::KeptSounding> soundings;
    for (const soundings::KeptSounding& s : tracks::lines(water, 60.0, 3.0, 0.05)) {
        if (s.x_m < 100.0) { // the east is left out
            soundings.push_back(s);
        }
    }
    surface::DrawSettings settings;
    settings.cell = units::Length::metres(5.0);
    base::Progress progress;
    const auto drawn = surface::drawWater(water.outline, soundings, settings, progress);
    ASSERT_TRUE(drawn.has_value()) << drawn.error().sentence();
    const geo::WaterPoint onTrack{-102.0, soundings[soundings.size() / 2].y_m};
    EXPECT_EQ(drawn->trust.at(onTrack), TrustName::sounded);
    const auto near = drawn->trust.halfWidthAt(onTrack);
    const auto far = drawn->trust.halfWidthAt(geo::WaterPoint{280.0, 0.0});
    ASSERT_TRUE(near.has_value() && far.has_value());
    EXPECT_LT(near.value_or(units::Length::metres(1e9)), far.value_or(units::Length{}));
}

} // namespace
