// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/anchoring/cautions.h"

#include <algorithm>
#include <functional>

#include <gtest/gtest.h>

namespace {

using anchoring::AnchorSet;
using anchoring::BoatSettings;
using anchoring::Weather;
using units::Length;
using units::Speed;

/// A lie of which nothing is to be said.
struct Lying {
    Lying() {
        set.bow.scope = 6.0;
        boat.scope = 6.0;
    }
    [[nodiscard]] std::vector<std::string> cautions() const {
        return anchoring::cautionsFor(set, weather, boat);
    }
    AnchorSet set;
    Weather weather;
    BoatSettings boat;
};

TEST(AnchorCautions, SayNothingThatHoldsOfEveryBoat) {
    EXPECT_EQ(Lying().cautions(), std::vector<std::string>{});
}

struct Row {
    const char* sentence;
    std::function<void(Lying&)> at;        ///< Just where it begins.
    std::function<void(Lying&)> justShort; ///< Just where it does not yet.
};

std::function<void(Lying&)> scopes(double bow, double wanted, double knots) {
    return [=](Lying& l) {
        l.set.bow.scope = bow;
        l.boat.scope = wanted;
        l.weather.windSpeed = Speed::knots(knots);
    };
}

std::function<void(Lying&)> turned(double degrees) {
    return [degrees](Lying& l) { l.set.offTheWind_deg = degrees; };
}

const std::vector<Row>& rows() {
    static const std::vector<Row> all{
        {"Scope 5.9 is short for this wind: courses teach 6 to 10, and more is safer.",
         scopes(5.94, 5.9, 16.5), scopes(5.96, 5.9, 16.5)},
        {"Scope 3.0 is short for this wind: courses teach 6 to 10, and more is safer.",
         scopes(3.0, 3.0, 16.5), scopes(3.0, 3.0, 16.49)},
        {"High waves for an open boat at anchor: look for a lee.",
         [](Lying& l) { l.weather.waveHeight = Length::metres(0.301); },
         [](Lying& l) { l.weather.waveHeight = Length::metres(0.3); }},
        {"Room or rope for scope 2.9 only: take a bearing ashore and watch whether she drags.",
         scopes(2.94, 3.0, 5.0), scopes(2.96, 3.0, 5.0)},
        {"Turned 3° off the wind so that neither anchor lands ashore.", turned(2.6), turned(2.5)},
        {"Turned 25° off the wind so that neither anchor lands ashore.", turned(-25.0),
         turned(-2.4)},
    };
    return all;
}

TEST(AnchorCautions, BeginEachAtItsThresholdAndNotJustBelow) {
    for (const Row& row : rows()) {
        const auto saysIt = [&row](const std::function<void(Lying&)>& change) {
            Lying lying;
            change(lying);
            const auto said = lying.cautions();
            return std::ranges::count(said, row.sentence) == 1;
        };
        EXPECT_TRUE(saysIt(row.at)) << row.sentence;
        EXPECT_FALSE(saysIt(row.justShort)) << row.sentence;
    }
}

TEST(AnchorCautions, ComeTheGravestFirst) {
    Lying lying;
    scopes(2.5, 3.0, 25.0)(lying);
    turned(10.0)(lying);
    lying.weather.waveHeight = Length::metres(0.5);
    EXPECT_EQ(
        lying.cautions(),
        (std::vector<std::string>{
            "High waves for an open boat at anchor: look for a lee.",
            "Scope 2.5 is short for this wind: courses teach 6 to 10, and more is safer.",
            "Room or rope for scope 2.5 only: take a bearing ashore and watch whether she drags.",
            "Turned 10° off the wind so that neither anchor lands ashore."}));
}

} // namespace
