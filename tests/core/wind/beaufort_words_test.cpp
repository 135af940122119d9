// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wind/beaufort.h"

#include <array>

#include <gtest/gtest.h>

namespace {

struct Row {
    double firstKnot;
    const char* name;
    const char* onTheWater;
};

// Knots and names: the World Meteorological Organization's scale, as on the Met Office's sheet.
constexpr std::array rows{Row{0, "calm", "flat"},
                          Row{1, "light air", "a ripple here and there"},
                          Row{4, "light breeze", "ripples all over"},
                          Row{7, "gentle breeze", "wavelets, the first crests break"},
                          Row{11, "moderate breeze", "small waves, some white horses"},
                          Row{17, "fresh breeze", "white horses everywhere"},
                          Row{22, "strong breeze", "large waves for a lake, spray"},
                          Row{28, "near gale", "foam in streaks"},
                          Row{34, "gale", "high waves, spray blown off"},
                          Row{41, "strong gale", "high waves, spray blown off"},
                          Row{48, "storm", "no water for boats"},
                          Row{56, "violent storm", "no water for boats"},
                          Row{64, "hurricane", "no water for boats"}};

TEST(Beaufort, NamesEachForceAndTheSightOfItFromItsFirstKnotOn) {
    for (std::size_t force = 0; force < rows.size(); ++force) {
        const int number = static_cast<int>(force);
        EXPECT_EQ(wind::beaufortName(number), rows[force].name);
        EXPECT_EQ(wind::beaufortOnTheWater(number), rows[force].onTheWater);
        // Whole knots: half a knot below the first one rounds up to it.
        EXPECT_EQ(wind::beaufortForce(units::Speed::knots(rows[force].firstKnot - 0.499)), number);
        EXPECT_EQ(wind::beaufortForce(units::Speed::knots(rows[force].firstKnot - 0.501)),
                  std::max(0, number - 1));
    }
    EXPECT_EQ(wind::beaufortForce(units::Speed::knots(200.0)), 12);
    EXPECT_EQ(wind::beaufortName(-1), "calm");
    EXPECT_EQ(wind::beaufortOnTheWater(13), "no water for boats");
}

} // namespace
