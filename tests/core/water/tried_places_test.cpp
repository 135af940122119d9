// SPDX-License-Identifier: GPL-3.0-or-later
// Places tried one by one while the best are sought: by their own waves and ropes, whatever was
// roughly looked at before.
#include "core/water/steps/day_waves.h"
#include "core/water/steps/work_out_places.h"
#include "tests/support/given.h"
#include "tests/support/planned_water.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

namespace {

using geo::WaterPoint;
using support::given;
using support::PlannedWater;
using units::Bearing;
using units::Speed;

const logbook::Wind gale{Bearing::degrees(90.0), Speed::metresPerSecond(24.0)};
const logbook::Wind breeze{Bearing::degrees(90.0), Speed::metresPerSecond(4.0)};

/// The deep east of the plane, along a line towards the bank that the gale comes from: waves grow
/// with the way from that bank.
class TriedPlaces : public testing::Test {
protected:
    void blow(const logbook::Wind& first, const std::optional<logbook::Wind>& later = {}) {
        made_.water.plan.day.wind = first;
        made_.water.plan.day.windLater.reset();
        if (later) {
            made_.water.plan.day.windLater = marks::LaterWind{std::chrono::hours(13), *later};
        }
        day_ = water::DayGround::make(made_.water, made_.derived, made_.water.plan.day.levelChange)
                   .value();
    }
    [[nodiscard]] bool holds(WaterPoint place) {
        water::Workings fresh;
        const water::PlanWork work{made_.water, made_.water.plan, *day_, fresh, quiet_};
        water::TriedPlaces tried(work);
        const bool held = tried.holds({place, 0.0, false, {}}).value();
        reason_ = tried.lastReason();
        EXPECT_EQ(tried.refused(), held ? 0U : 1U);
        return held;
    }
    [[nodiscard]] double waves_m(WaterPoint place) const {
        return given(water::exposureAt(made_.ground.outline, day_->today(), place, gale).waves)
            .height.inMetres();
    }

    PlannedWater made_;
    base::Progress quiet_;
    std::shared_ptr<const water::DayGround> day_;
    std::string reason_;
};

TEST_F(TriedPlaces, HoldNoBoatWhereTheirOwnWavesAreTooRough) {
    blow(gale);
    int rough = 0;
    int calm = 0;
    for (double x_m = -200.0; x_m <= 110.0; x_m += 10.0) {
        const WaterPoint place{x_m, 20.0};
        const bool isRough = waves_m(place) > 0.35;
        EXPECT_EQ(holds(place), !isRough) << x_m;
        EXPECT_EQ(reason_, isRough ? fmt::format("waves of {:.2f} m", waves_m(place)) : "");
        ++(isRough ? rough : calm);
    }
    EXPECT_GT(rough, 3);
    EXPECT_GT(calm, 3);
}

TEST_F(TriedPlaces, HoldABoatWhereOneOfTheDaysWindsLetsItLie) {
    const WaterPoint place{-150.0, 20.0};
    blow(gale, breeze);
    ASSERT_GT(waves_m(place), 0.35);
    EXPECT_TRUE(holds(place));
    blow(breeze, gale);
    EXPECT_TRUE(holds(place));
    blow(gale, gale);
    EXPECT_FALSE(holds(place));
}

TEST_F(TriedPlaces, AreNotCalledRoughWhereNobodySaidHowStrongTheWindIs) {
    blow({Bearing::degrees(90.0), std::nullopt});
    EXPECT_TRUE(holds({-150.0, 20.0}));
}

} // namespace
