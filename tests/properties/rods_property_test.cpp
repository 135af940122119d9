// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rods/spread_rods.h"

#include "tests/support/made_up_day.h"

#include <random>

#include <gtest/gtest.h>

namespace {

constexpr unsigned seed = 77;

TEST(RodsProperty, EveryRuleHoldsWhereverTheBoatLiesAndHoweverItIsSet) {
    const support::MadeUpDay day;
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> share(0.0, 1.0);
    base::Progress progress;
    int spread = 0;
    for (int round = 0; round < 150; ++round) {
        const geo::WaterPoint lie{-340.0 + 690.0 * share(random), -260.0 + 500.0 * share(random)};
        if (!day.ground.depthAt(lie)) {
            continue;
        }
        rods::RodSettings settings;
        settings.rods = 1 + static_cast<int>(7.99 * share(random));
        settings.cast = units::Length::metres(12.0 + 60.0 * share(random));
        settings.leastAngle_deg = 5.0 + 40.0 * share(random);
        settings.leastApart = units::Length::metres(15.0 * share(random));
        anchoring::AnchorSet anchors;
        anchors.lie = {lie, units::Bearing::degrees(360.0 * share(random))};
        anchors.bow.place = geo::moved(lie, anchors.lie.heading, units::Length::metres(20.0));
        anchors.bow.rope = units::Length::metres(20.0);
        const auto rods = rods::spreadRods(day.ground, anchors, settings, progress).value().rods;
        EXPECT_LE(rods.size(), static_cast<std::size_t>(settings.rods)) << "seed " << seed;
        spread += static_cast<int>(rods.size());
        for (std::size_t a = 0; a < rods.size(); ++a) {
            EXPECT_TRUE(day.ground.isFishable(rods[a].place));
            EXPECT_TRUE(day.ground.isOverOpenWater(lie, rods[a].place));
            EXPECT_LE(rods[a].distance.inMetres(), settings.cast.inMetres() + 1e-6);
            EXPECT_GE(rods[a].bearing.angleTo_deg(anchors.lie.heading),
                      settings.ropeClear_deg - 1e-6);
            for (std::size_t b = 0; b < a; ++b) {
                EXPECT_GE(rods[a].bearing.angleTo_deg(rods[b].bearing),
                          settings.leastAngle_deg - 1e-6)
                    << "seed " << seed << " round " << round;
                EXPECT_GE(geo::distance_m(rods[a].place, rods[b].place),
                          settings.leastApart.inMetres() - 1e-6);
            }
        }
    }
    EXPECT_GT(spread, 100) << "too few rods to prove anything";
}

TEST(RodsProperty, OneMoreRodNeverLowersTheWorthOfTheSpread) {
    const support::MadeUpDay day;
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> place(-150.0, 120.0);
    base::Progress progress;
    for (int round = 0; round < 10; ++round) {
        anchoring::AnchorSet anchors;
        anchors.lie = {{place(random), place(random)}, units::Bearing::degrees(200.0)};
        double before = 0.0;
        for (int count = 1; count <= 5; ++count) {
            rods::RodSettings settings;
            settings.rods = count;
            const auto out = rods::spreadRods(day.ground, anchors, settings, progress).value();
            std::vector<geo::WaterPoint> baits;
            for (const rods::RodPlace& rod : out.rods) {
                baits.push_back(rod.place);
            }
            const double now = rods::worthOf(baits, day.ground, anchors.lie, settings);
            EXPECT_GE(now, 0.99 * before)
                << "seed " << seed << " round " << round << " rods " << count;
            before = now;
        }
    }
}

} // namespace
