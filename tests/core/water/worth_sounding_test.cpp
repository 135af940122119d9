// SPDX-License-Identifier: GPL-3.0-or-later
// Where it is worth sounding next: most where he fishes.
#include "core/water/steps/propose_trip.h"
#include "core/water/steps/worth_sounding.h"
#include "tests/support/planned_water.h"

#include <gtest/gtest.h>

#include <cmath>

namespace {

using geo::WaterPoint;
using support::PlannedWater;

double worthAt(const PlannedWater& made, WaterPoint place) {
    const grid::Grid<float> worth = water::worthSounding(made.water, made.derived);
    return static_cast<double>(worth[worth.frame().cellOf(place)]);
}

/// The plane without any place to fish on it.
PlannedWater plain() {
    PlannedWater made;
    made.derived.structure.reset();
    made.water.pinnedMarks.clear();
    return made;
}

TEST(WorthSounding, FallsWithTheChanceThatTheDepthIsWithinTheLimit) {
    const PlannedWater made = plain();
    // 4 + 0.012 x, the limit at 6 m; 0.3 + 0.0005 (x + 300) to either side holds 95 of 100.
    for (const double x_m : {-200.0, 100.0, 150.0, 166.0, 182.0, 250.0}) {
        const WaterPoint place =
            made.ground.depth.frame().centre(made.ground.depth.frame().cellOf({x_m, 2.0}));
        const double sigma_m = PlannedWater::trust_m(place) / 1.959964;
        const double within =
            0.5 * std::erfc((PlannedWater::chartDepth_m(place) - 6.0) / sigma_m / std::sqrt(2.0));
        EXPECT_NEAR(worthAt(made, place), 0.1 + 0.9 * within, 2e-3) << x_m;
    }
    EXPECT_NEAR(worthAt(made, {-200, 0}), 1.0, 1e-3);
    EXPECT_NEAR(worthAt(made, {290, 190}), 0.1, 1e-3) << "nobody knows before he has been there";
    EXPECT_EQ(worthAt(made, {-299, 199}), worthAt(made, {-280, 150})) << "all of it is within";
}

TEST(WorthSounding, CountsTwiceWithinACastOfAPlaceToFishAndOfAMarkOfHisOwn) {
    PlannedWater made = plain();
    structure::ZoneMap zones = support::noZones(made.ground);
    support::addZone(zones, made.ground, structure::ZoneKind::hump,
                     [](WaterPoint p) { return std::hypot(p.x_m, p.y_m) < 10.0; });
    support::addZone(zones, made.ground, structure::ZoneKind::flat,
                     [](WaterPoint p) { return std::hypot(p.x_m, p.y_m + 100.0) < 10.0; });
    made.derived.structure = std::make_shared<const structure::ZoneMap>(zones);
    made.water.plan.tackle.cast = units::Length::metres(15.0);
    EXPECT_NEAR(worthAt(made, {0, 0}), 2.0, 1e-3);
    EXPECT_NEAR(worthAt(made, {17, 1}), 2.0, 1e-3);
    EXPECT_NEAR(worthAt(made, {32, 0}), 1.0, 1e-3) << "beyond a cast";
    EXPECT_NEAR(worthAt(made, {0, -100}), 1.0, 1e-2) << "flat ground is no place";
    made.water.pinnedMarks = {{"Ours", made.onEarth({0, 100})}};
    EXPECT_NEAR(worthAt(made, {10, 100}), 2.0, 1e-3);
}

TEST(WorthSounding, SendsTheBoatToTheShallowsOfWhatIsAsUnknownAllOver) {
    PlannedWater made = plain();
    made.water.houseRules.closed.clear();
    grid::Grid<float> halfWidth_m(made.ground.depth.frame(), 1.2F);
    grid::Grid<surface::TrustName> names(made.ground.depth.frame(), surface::TrustName::guess);
    for (std::size_t i = 0; i < halfWidth_m.size(); ++i) {
        const grid::GridFrame& frame = halfWidth_m.frame();
        if (frame.centre(frame.cellAt(i)).y_m > 190.0) { // the northern bank has been sounded
            halfWidth_m[i] = 0.2F;
            names[i] = surface::TrustName::sounded;
        }
    }
    auto drawn = *made.derived.drawn;
    drawn.trust = surface::TrustGrid(std::move(halfWidth_m), std::move(names));
    made.derived.drawn = std::make_shared<const surface::DrawnWater>(drawn);
    base::Progress quiet;
    const auto eastOf = [&](units::Depth limit) {
        made.water.settings.bands =
            contours::Bands::make({units::Depth::metres(0.5)}, limit).value();
        const auto trip =
            water::proposeTrip(made.water, made.derived, std::chrono::minutes(30), quiet);
        if (!trip) {
            ADD_FAILURE() << trip.error().sentence();
            return 0.0;
        }
        double east_m = 0.0;
        double all_m = 0.0;
        for (const surface::SurveyLine& line : trip->lines) {
            all_m += line.length.inMetres();
            east_m += 0.5 * (line.start.x_m + line.end.x_m) > 0.0 ? line.length.inMetres() : 0.0;
        }
        return east_m / all_m;
    };
    const double all = eastOf(units::Depth::metres(40.0));
    const double shallow = eastOf(units::Depth::metres(2.5)); // the west alone
    EXPECT_LT(shallow, 0.5 * all) << all;
    EXPECT_GT(all, 0.25) << "where all can be fished all is gone over";
}

} // namespace
