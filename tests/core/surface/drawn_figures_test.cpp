// SPDX-License-Identifier: GPL-3.0-or-later
// What a drawing comes to, to the centimetre: every setting reaches the part of the work it is
// named after, and the whole stays what it was unless a rule of it is changed on purpose.
#include "core/surface/draw_water.h"
#include "tests/core/surface/tracks.h"

#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>

namespace {

using soundings::KeptSounding;
using surface::DrawnWater;
using surface::DrawSettings;
using units::Length;

DrawSettings cells(double cell_m) {
    DrawSettings settings;
    settings.cell = Length::metres(cell_m);
    return settings;
}

DrawnWater drawn(const support::MadeUpWater& water, const std::vector<KeptSounding>& soundings,
                 const DrawSettings& settings) {
    base::Progress silent;
    return surface::drawWater(water.outline, soundings, settings, silent).value();
}

double depthAt(const DrawnWater& drawn, geo::WaterPoint p) {
    return drawn.depth.at(p).value().inMetres();
}

/// The greatest difference between two drawings in any cell.
double apart_m(const DrawnWater& a, const DrawnWater& b) {
    double most_m = 0.0;
    for (std::size_t i = 0; i < a.depth.size(); ++i) {
        if (a.depth.has(i)) {
            most_m = std::max(
                most_m, std::abs(static_cast<double>(a.depth.raw_m()[i] - b.depth.raw_m()[i])));
        }
    }
    return most_m;
}

/// Soundings of 4 m right up to the shore, which says 0: it matters how far each is believed.
std::vector<KeptSounding> atOdds(const support::MadeUpWater& water) {
    std::vector<KeptSounding> soundings = tracks::lines(water, 20.0, 4.0);
    int k = 0;
    for (KeptSounding& s : soundings) {
        s.depth_m = 4.0;
        s.pass = ++k; // each its own pass: without neighbours none is a spike
    }
    return soundings;
}

TEST(DrawnFigures, TheErrorOfASoundingIsThatOfEverySoundingAndItsShareThatOfTheDepth) {
    const support::MadeUpWater water = support::cone(70.0, 6.0, 5.0);
    const std::vector<KeptSounding> soundings = atOdds(water);
    DrawSettings plain = cells(5.0);
    plain.withTrust = false;
    plain.stiffness = 300.0;
    plain.contourStiffness = 30.0;
    plain.soundingError = Length::metres(0.4);
    plain.soundingErrorShare = 0.0;
    DrawSettings share = plain;
    share.soundingError = Length::metres(0.01);
    share.soundingErrorShare = std::sqrt(0.4 * 0.4 - 0.01 * 0.01) / 4.0;
    DrawSettings sure = plain;
    sure.soundingError = Length::metres(0.05);
    const DrawnWater byError = drawn(water, soundings, plain);
    EXPECT_LT(apart_m(byError, drawn(water, soundings, share)), 0.002);
    const DrawnWater bySure = drawn(water, soundings, sure);
    EXPECT_GT(apart_m(byError, bySure), 0.05);
    EXPECT_LT(std::abs(depthAt(bySure, {62.0, 0.0}) - 4.0),
              std::abs(depthAt(byError, {62.0, 0.0}) - 4.0));
}

TEST(DrawnFigures, NineSoundingsInOnePlaceAreOneThatErrsByAThird) {
    const support::MadeUpWater water = support::cone(70.0, 6.0, 5.0);
    const std::vector<KeptSounding> once = tracks::lines(water, 20.0, 8.0, 0.05);
    std::vector<KeptSounding> nineTimes;
    for (const KeptSounding& s : once) {
        nineTimes.insert(nineTimes.end(), 9, s);
    }
    DrawSettings settings = cells(5.0);
    settings.withTrust = false;
    settings.stiffness = 300.0;
    settings.contourStiffness = 30.0;
    settings.soundingErrorShare = 0.0;
    settings.soundingError = Length::metres(0.1);
    const DrawnWater byOne = drawn(water, once, settings);
    EXPECT_GT(apart_m(byOne, drawn(water, nineTimes, settings)), 0.02);
    settings.soundingError = Length::metres(0.3);
    const DrawnWater byNine = drawn(water, nineTimes, settings);
    EXPECT_LT(apart_m(byOne, byNine), 0.01);
    EXPECT_EQ(byNine.report.soundingsUsed, nineTimes.size());
}

TEST(DrawnFigures, AShoreThatMayBeOffPullsLess) {
    const support::MadeUpWater water = support::cone(70.0, 6.0, 5.0);
    DrawSettings settings = cells(5.0);
    settings.withTrust = false;
    settings.stiffness = 300.0;
    settings.contourStiffness = 30.0;
    settings.shoreOffset = Length::metres(0.0);
    const DrawnWater sure = drawn(water, atOdds(water), settings);
    settings.shoreOffset = Length::metres(20.0);
    const DrawnWater doubtful = drawn(water, atOdds(water), settings);
    EXPECT_GT(depthAt(doubtful, {67.0, 0.0}), depthAt(sure, {67.0, 0.0}) + 0.1);
}

TEST(DrawnFigures, TheTrustBeginsAtTheErrorOfASoundingForNineteenInTwenty) {
    const support::MadeUpWater water = support::cone(70.0, 6.0, 5.0);
    std::vector<KeptSounding> few = tracks::lines(water, 60.0, 6.0);
    for (const double error_m : {0.08, 0.3}) {
        DrawSettings settings = cells(5.0);
        settings.soundingError = Length::metres(error_m);
        EXPECT_NEAR(drawn(water, few, settings).report.trustCurve.value().floor_m, 1.96 * error_m,
                    1e-9);
    }
}

TEST(DrawnFigures, NoCellLiesAboveTheSurfaceOrDeeperThanTheSoundingsAllow) {
    const support::MadeUpWater water = support::cone(70.0, 6.0, 5.0);
    std::vector<KeptSounding> soundings = tracks::lines(water, 10.0, 3.0);
    for (KeptSounding& s : soundings) {
        s.depth_m = s.x_m < 0.0 ? 0.0 : 9.0; // a cliff: a smooth bottom swings beyond both
    }
    DrawSettings settings = cells(5.0);
    settings.withTrust = false;
    settings.stiffness = 3000.0;
    settings.contourStiffness = 0.0;
    const DrawnWater result = drawn(water, soundings, settings);
    for (std::size_t i = 0; i < result.depth.size(); ++i) {
        if (result.depth.has(i)) {
            EXPECT_GE(result.depth.raw_m()[i], 0.0F);
            EXPECT_LE(result.depth.raw_m()[i], 9.0F * 1.15F + 0.001F);
        }
    }
}

TEST(DrawnFigures, WhereNobodySoundedTheTrendIsNotBelievedBelowWhatWasSoundedNearby) {
    // A metre of water off every bank: the shape of the water would have the middle far deeper.
    const support::MadeUpWater water = support::cone(150.0, 8.0, 5.0);
    std::vector<KeptSounding> soundings;
    for (int k = 0; k < 120; ++k) {
        const double angle = 2.0 * 3.14159265 * k / 120.0;
        soundings.push_back(tracks::at({140.0 * std::cos(angle), 140.0 * std::sin(angle)}, 1.0));
    }
    DrawSettings settings = cells(5.0);
    settings.withTrust = false;
    const DrawnWater result = drawn(water, soundings, settings);
    EXPECT_LE(depthAt(result, {2.5, 2.5}), 1.15 + 0.01);
    EXPECT_GT(depthAt(result, {2.5, 2.5}), 0.9);
}

TEST(DrawnFigures, ManySoundingsInOnePlaceDoNotRuleTheTrend) {
    // In the east sounded at its depth in many places, in one place of the west 500 times at a
    // third of it; beyond both, the north goes by the places.
    const support::MadeUpWater water = support::cone(150.0, 9.0, 5.0);
    std::vector<KeptSounding> soundings;
    for (const KeptSounding& s : tracks::lines(water, 30.0, 30.0)) {
        if (s.x_m > 20.0 && std::abs(s.y_m) < 80.0) {
            soundings.push_back(s);
        }
    }
    ASSERT_GT(soundings.size(), 15U);
    for (int k = 0; k < 500; ++k) {
        const geo::WaterPoint p{-104.0 + 0.4 * (k % 25), -4.0 + 0.4 * (k / 25)};
        soundings.push_back(tracks::at(p, water.bottom(p) / 3.0));
        soundings.back().pass = 1000 + k;
    }
    DrawSettings settings = cells(5.0);
    settings.withTrust = false;
    settings.stiffness = 300.0;
    settings.contourStiffness = 0.0;
    const DrawnWater result = drawn(water, soundings, settings);
    const geo::WaterPoint north{2.5, 97.5};
    EXPECT_NEAR(depthAt(result, north) / water.bottom(north), 1.0, 0.25);
}

TEST(DrawnFigures, StayWhatTheyWereUnlessARuleIsChangedOnPurpose) {
    const support::MadeUpWater water = support::cone(110.0, 7.0, 5.0);
    std::vector<KeptSounding> soundings = tracks::lines(water, 30.0, 3.0);
    for (KeptSounding& s : soundings) {
        s.depth_m += 1.1 * std::exp(-0.001 * (std::pow(s.x_m - 30.0, 2) + s.y_m * s.y_m)) +
                     0.5 * std::sin(s.x_m / 15.0) * std::cos(s.y_m / 19.0) +
                     0.28 * std::sin(3.1 * s.x_m + 1.7 * s.y_m);
    }
    const DrawnWater result = drawn(water, soundings, cells(5.0));
    struct Place {
        geo::WaterPoint at;
        double depth_m;
        double halfWidth_m;
    };
    for (const Place& place :
         {Place{{2.5, 2.5}, 7.3336, 0.9116}, Place{{42.5, -17.5}, 4.7981, 1.5142},
          Place{{-72.5, 37.5}, 1.6563, 1.3022}, Place{{97.5, 12.5}, 0.8036, 1.2330},
          Place{{-12.5, 102.5}, 0.4008, 1.7846}, Place{{62.5, 62.5}, 1.7791, 0.7942}}) {
        EXPECT_NEAR(depthAt(result, place.at), place.depth_m, 0.004);
        EXPECT_NEAR(result.trust.halfWidthAt(place.at).value().inMetres(), place.halfWidth_m, 0.03);
    }
    EXPECT_EQ(result.report.stiffness, 300.0);
    EXPECT_EQ(result.report.contourStiffness, 30.0);
    EXPECT_NEAR(result.report.heldOut.value().mean_m, 0.1584, 0.003);
    EXPECT_NEAR(result.report.heldOut.value().median_m, 0.1543, 0.003);
    const surface::TrustCurve curve = result.report.trustCurve.value();
    EXPECT_NEAR(curve.factor, 0.765, 0.02);
    EXPECT_EQ(curve.ofDistance, 0.2);
    EXPECT_EQ(curve.ofUnevenness, 0.5);
    EXPECT_NEAR(curve.farthest_m, 3.0, 0.1);
}

} // namespace
