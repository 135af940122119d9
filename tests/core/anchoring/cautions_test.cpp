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
using units::Temperature;

/// A lie of which nothing is to be said but what is always said.
struct Lying {
    Lying() {
        set.bow.scope = 5.0;
        boat.scope = 5.0;
        weather.waterTemperature = Temperature::celsius(15.0);
    }
    [[nodiscard]] std::vector<std::string> cautions() const {
        return anchoring::cautionsFor(set, weather, boat);
    }
    AnchorSet set;
    Weather weather;
    BoatSettings boat;
};

TEST(AnchorCautions, SayWhatAlwaysHolds) {
    EXPECT_EQ(Lying().cautions(),
              (std::vector<std::string>{
                  "Lifejackets worn, not stowed.",
                  "Bow anchor down first and up last; never lie to the stern anchor alone.",
                  "Make both ropes fast so that they slip at once."}));
}

struct Row {
    const char* sentence;
    std::function<void(Lying&)> at;        ///< Just where it begins.
    std::function<void(Lying&)> justShort; ///< Just where it does not yet.
};

std::function<void(Lying&)> wind(double knots) {
    return [knots](Lying& l) { l.weather.windSpeed = Speed::knots(knots); };
}

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
        {"Force 6 or more: no wind to anchor a small boat in. Stay ashore.", wind(21.5),
         wind(21.49)},
        {"Force 5: anchor only under a lee, and leave if it freshens.", wind(16.5), wind(16.49)},
        {"Force 5: anchor only under a lee, and leave if it freshens.", wind(21.49), wind(21.5)},
        {"Scope 4.9 is short for this wind: 5 or more holds.", scopes(4.94, 4.9, 16.5),
         scopes(4.96, 4.9, 16.5)},
        {"Scope 3.0 is short for this wind: 5 or more holds.", scopes(3.0, 3.0, 16.5),
         scopes(3.0, 3.0, 16.49)},
        {"High waves for an open boat at anchor: look for a lee.",
         [](Lying& l) { l.weather.waveHeight = Length::metres(0.301); },
         [](Lying& l) { l.weather.waveHeight = Length::metres(0.3); }},
        {"Cold water takes the breath away: lifejackets worn, not stowed.",
         [](Lying& l) { l.weather.waterTemperature = Temperature::celsius(14.99); },
         [](Lying& l) { l.weather.waterTemperature = Temperature::celsius(15.0); }},
        {"Lifejackets worn, not stowed.", [](Lying& l) { l.weather.waterTemperature.reset(); },
         [](Lying& l) { l.weather.waterTemperature = Temperature::celsius(4.0); }},
        {"Room or rope for scope 2.9 only: take a bearing ashore and watch whether she drags.",
         scopes(2.94, 3.0, 5.0), scopes(2.96, 3.0, 5.0)},
        {"Lies 3 degrees off the wind, so that both anchors are in the water.", turned(2.6),
         turned(2.5)},
        {"Lies 25 degrees off the wind, so that both anchors are in the water.", turned(-25.0),
         turned(-2.4)},
        {"If the wind goes round to the beam, slip the stern rope and let her swing to the bow.",
         wind(10.5), wind(10.49)},
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
    lying.weather.waterTemperature = Temperature::celsius(6.0);
    EXPECT_EQ(
        lying.cautions(),
        (std::vector<std::string>{
            "Force 6 or more: no wind to anchor a small boat in. Stay ashore.",
            "Scope 2.5 is short for this wind: 5 or more holds.",
            "High waves for an open boat at anchor: look for a lee.",
            "Cold water takes the breath away: lifejackets worn, not stowed.",
            "Room or rope for scope 2.5 only: take a bearing ashore and watch whether she drags.",
            "Lies 10 degrees off the wind, so that both anchors are in the water.",
            "If the wind goes round to the beam, slip the stern rope and let her swing to the bow.",
            "Bow anchor down first and up last; never lie to the stern anchor alone.",
            "Make both ropes fast so that they slip at once."}));
}

} // namespace
