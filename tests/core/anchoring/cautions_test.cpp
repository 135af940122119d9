// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/anchoring/cautions.h"

#include <algorithm>
#include <functional>

#include <gtest/gtest.h>

namespace {

using anchoring::AnchorSet;
using anchoring::BoatSettings;
using anchoring::Caution;
using anchoring::HighWaves;
using anchoring::ShortForTheWind;
using anchoring::ShortOfRoom;
using anchoring::TurnedOffTheWind;
using anchoring::Weather;
using units::Length;
using units::Speed;

/// A lie of which nothing is to be said.
struct Lying {
    Lying() {
        set.bow.scope = 6.0;
        boat.scope = 6.0;
    }
    [[nodiscard]] std::vector<Caution> cautions() const {
        return anchoring::cautionsFor(set, weather, boat);
    }
    AnchorSet set;
    Weather weather;
    BoatSettings boat;
};

TEST(AnchorCautions, SayNothingThatHoldsOfEveryBoat) {
    EXPECT_EQ(Lying().cautions(), std::vector<Caution>{});
}

struct Row {
    const char* name;
    std::function<bool(const Caution&)> isIt;
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

std::function<bool(const Caution&)> is(const Caution& wanted) {
    return [wanted](const Caution& said) { return said == wanted; };
}

std::function<bool(const Caution&)> isShort(double scope) {
    return is(ShortForTheWind{scope});
}

const std::vector<Row>& rows() {
    static const std::vector<Row> all{
        {"a scope nearly as taught", isShort(5.94), scopes(5.94, 5.9, 16.5),
         scopes(5.96, 5.9, 16.5)},
        {"a wind that is fresh", isShort(3.0), scopes(3.0, 3.0, 16.5), scopes(3.0, 3.0, 16.49)},
        {"high waves", is(HighWaves{}),
         [](Lying& l) { l.weather.waveHeight = Length::metres(0.301); },
         [](Lying& l) { l.weather.waveHeight = Length::metres(0.3); }},
        {"less scope than wanted", is(ShortOfRoom{2.94}), scopes(2.94, 3.0, 5.0),
         scopes(2.96, 3.0, 5.0)},
        {"a turn", is(TurnedOffTheWind{2.6}), turned(2.6), turned(2.5)},
        {"a wind of which nobody knows where from", is(anchoring::BowToOpenWater{}),
         [](Lying& l) { l.weather.isFromKnown = false; },
         [](Lying& l) { l.weather.isFromKnown = true; }},
        {"a turn to port", is(TurnedOffTheWind{25.0}), turned(-25.0), turned(-2.4)},
    };
    return all;
}

TEST(AnchorCautions, BeginEachAtItsThresholdAndNotJustBelow) {
    for (const Row& row : rows()) {
        const auto saysIt = [&row](const std::function<void(Lying&)>& change) {
            Lying lying;
            change(lying);
            const auto said = lying.cautions();
            return std::ranges::count_if(said, row.isIt) == 1;
        };
        EXPECT_TRUE(saysIt(row.at)) << row.name;
        EXPECT_FALSE(saysIt(row.justShort)) << row.name;
    }
}

TEST(AnchorCautions, NobodysWindIsNeitherFreshNorTurnedOff) {
    Lying lying;
    scopes(3.0, 3.0, 0.0)(lying);
    turned(10.0)(lying);
    lying.weather.windSpeed.reset();
    lying.weather.isFromKnown = false;
    EXPECT_EQ(lying.cautions(), std::vector<Caution>{anchoring::BowToOpenWater{}});
}

TEST(AnchorCautions, ComeTheGravestFirst) {
    Lying lying;
    scopes(2.5, 3.0, 25.0)(lying);
    turned(10.0)(lying);
    lying.weather.waveHeight = Length::metres(0.5);
    EXPECT_EQ(lying.cautions(), (std::vector<Caution>{HighWaves{}, ShortForTheWind{2.5},
                                                      ShortOfRoom{2.5}, TurnedOffTheWind{10.0}}));
}

} // namespace
