// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/learning/catch_model.h"

#include "core/learning/fit_catch.h"
#include "core/learning/ground_features.h"

#include <cmath>

#include <gtest/gtest.h>

namespace {

using learning::CatchModel;
using learning::Features;
using learning::Group;

CatchModel afterSomeTrips() {
    std::vector<learning::Observation> stays;
    for (int k = 0; k < 24; ++k) {
        Features features{{Group::section, k % 3, 1.0}, {Group::hour, k % 4, 1.0}};
        learning::addPlace(features, {60.0 * (k % 7), 45.0 * (k % 5)});
        learning::addDepth(features, Group::depth, units::Depth::metres(1.0 + k % 6));
        stays.push_back({features, 3.0, k % 3 == 0 ? 2 : 0, k / 4});
    }
    base::Progress progress;
    return learning::fitCatch(stays, {}, progress).value().model();
}

double squares(const Features& features, Group group) {
    double sum = 0.0;
    for (const learning::Feature& one : features) {
        sum += one.group == group ? one.value * one.value : 0.0;
    }
    return sum;
}

TEST(CatchModel, WithoutALogPromisesEveryPlaceTheSame) {
    const CatchModel model;
    Features features{{Group::section, 1, 1.0}, {Group::hour, 4, 0.5}};
    learning::addPlace(features, {10, 20});
    EXPECT_NEAR(model.expect(features).rate(), learning::firstGuess, 1e-12);
    EXPECT_NEAR(model.mean().rate(), learning::firstGuess, 1e-12);
    EXPECT_EQ(model.effect(features).rate(), 1.0);
}

TEST(CatchModel, MultipliesByOneForWhatNobodyTouched) {
    const CatchModel model = afterSomeTrips();
    EXPECT_NEAR(model.effect({{Group::section, 99, 1.0}, {Group::wind, 0, 0.7}}).rate(), 1.0,
                1e-12);
    EXPECT_NE(model.effect({{Group::section, 0, 1.0}}).rate(), 1.0);
}

TEST(CatchModel, IsTheWatersMeanTimesWhatItsPartsMultiplyBy) {
    const CatchModel model = afterSomeTrips();
    Features place{{Group::section, 1, 1.0}};
    learning::addPlace(place, {90, 45});
    Features depth;
    learning::addDepth(depth, Group::depth, units::Depth::metres(2.7));
    const std::vector<Features> parts{
        place, depth, {{Group::wind, 0, 0.4}}, {{Group::hour, 2, 1.0}}};
    Features all;
    for (const Features& part : parts) {
        all.insert(all.end(), part.begin(), part.end());
    }
    const std::vector<double> times = model.timesOf(parts);
    ASSERT_EQ(times.size(), 4U);
    EXPECT_NEAR(model.mean().rate() * times[0] * times[1] * times[2] * times[3],
                model.expect(all).rate(), 1e-12);
    EXPECT_NEAR(times[2], 1.0, 1e-12) << "nobody has noted a wind";
    EXPECT_GT(std::fabs(times[0] - 1.0), 1e-3);
    EXPECT_EQ(CatchModel().timesOf(parts), std::vector<double>(4, 1.0));
}

TEST(CatchModel, AddsTheVarianceOfWhatNobodyTouched) {
    const CatchModel model = afterSomeTrips();
    const double s = model.sizes().of(Group::wind);
    EXPECT_NEAR(model.expect({{Group::wind, 0, 0.5}}).variance,
                model.mean().variance + 0.25 * s * s, 1e-12);
}

TEST(CatchModel, HasTheVarianceOfAPlaceAsItsCovarianceWithItself) {
    const CatchModel model = afterSomeTrips();
    Features features{{Group::section, 2, 1.0}, {Group::section, 50, 0.3}};
    learning::addPlace(features, {130, 99});
    EXPECT_NEAR(model.covarianceOf(features, features), model.expect(features).variance, 1e-12);
    EXPECT_NEAR(CatchModel().covarianceOf(features, features),
                CatchModel().expect(features).variance, 1e-12);
}

TEST(CatchModel, TiesNeighboursTogetherMoreThanPlacesFarApart) {
    const CatchModel model = afterSomeTrips();
    const auto at = [](double x_m) {
        Features features;
        learning::addPlace(features, {x_m, 600.0});
        return features;
    };
    EXPECT_GT(model.covarianceOf(at(0), at(40)), model.covarianceOf(at(0), at(100)));
    EXPECT_GT(model.covarianceOf(at(0), at(100)), model.covarianceOf(at(0), at(1000)));
}

TEST(CatchModel, HasAnIntervalRoundItsMedianThatWidensWithTheVariance) {
    const learning::Expectation narrow{std::log(0.2), 0.01};
    const learning::Expectation wide{std::log(0.2), 0.25};
    EXPECT_NEAR(narrow.interval80().first, 0.2 * std::exp(-1.2815515655 * 1.15 * 0.1), 1e-9);
    EXPECT_NEAR(narrow.interval80().second, 0.2 * std::exp(1.2815515655 * 1.15 * 0.1), 1e-9);
    EXPECT_GT(wide.interval80().second, narrow.interval80().second);
    EXPECT_NEAR(wide.rate(), 0.2 * std::exp(0.125), 1e-12);
    EXPECT_NEAR(wide.relativeWidth(), std::sqrt(std::exp(0.25) - 1.0), 1e-12);
}

TEST(GroundFeatures, OfADepthLieBetweenTwoKnotsAndKeepTheirLength) {
    for (const double depth_m : {0.2, 0.7, 1.2, 3.2, 5.0, 13.9, 14.0, 40.0}) {
        Features features;
        learning::addDepth(features, Group::depth, units::Depth::metres(depth_m));
        EXPECT_NEAR(squares(features, Group::depth), 1.0, 1e-12) << depth_m;
        EXPECT_LE(features.size(), 2U);
    }
    Features atKnot;
    learning::addDepth(atKnot, Group::depth, units::Depth::metres(3.2));
    ASSERT_EQ(atKnot.size(), 1U);
    EXPECT_EQ(atKnot.front().key, 4);
    Features between;
    learning::addDepth(between, Group::depth, units::Depth::metres(std::sqrt(4.6 * 6.6)), 2.0);
    ASSERT_EQ(between.size(), 2U);
    EXPECT_NEAR(between[0].value, std::sqrt(2.0), 1e-9);
    EXPECT_NEAR(between[1].value, std::sqrt(2.0), 1e-9);
}

TEST(GroundFeatures, KnowNoTemperatureThatNobodyGaveAndHoldSlipsOfThePen) {
    EXPECT_EQ(learning::temperatureScale(std::nullopt), 0.0);
    EXPECT_NEAR(learning::temperatureScale(units::Temperature::celsius(6.0)), -1.0, 1e-12);
    EXPECT_EQ(learning::temperatureScale(units::Temperature::celsius(300.0)), 3.0);
    Features features;
    learning::addDepth(features, Group::depthByTemperature, units::Depth::metres(3.0),
                       learning::temperatureScale(std::nullopt));
    EXPECT_TRUE(features.empty());
}

TEST(GroundFeatures, OfAPlaceKeepTheirLengthAndChangeSmoothly) {
    Features before;
    learning::addPlace(before, {-61.0, 59.0});
    EXPECT_NEAR(squares(before, Group::place), 1.0, 1e-12);
    EXPECT_EQ(before.size(), 4U);
    Features onKnot;
    learning::addPlace(onKnot, {-120.0, 240.0});
    ASSERT_EQ(onKnot.size(), 1U);
    Features beside;
    learning::addPlace(beside, {-119.9, 240.1});
    double inner = 0.0;
    for (const learning::Feature& one : beside) {
        inner += one.key == onKnot.front().key ? one.value : 0.0;
    }
    EXPECT_GT(inner, 0.999);
}

} // namespace
