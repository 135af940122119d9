// SPDX-License-Identifier: GPL-3.0-or-later
// Speed of sound in fresh water. W. Marczak 1997, J. Acoust. Soc. Am. 102, 2776: values computed
// from the coefficients as two open programs quote them (the paper itself was not seen) and held
// against 1482.38 m/s at 20 C, which an example of the R package "sonar" prints: it tells them from
// a copy in circulation with a slipped digit (0.08 m/s more at 20 C).
#include "core/reduction/correct_sound_speed.h"

#include <gtest/gtest.h>

namespace reduction {

namespace {

struct Row {
    double water_c;
    double speed_m_s;
};

class Marczak : public testing::TestWithParam<Row> {};

TEST_P(Marczak, IsMetToFiveMillimetresASecond) {
    const auto [water_c, speed_m_s] = GetParam();
    EXPECT_NEAR(soundSpeedIn(units::Temperature::celsius(water_c)).inMetresPerSecond(), speed_m_s,
                0.005);
}

INSTANTIATE_TEST_SUITE_P(Table, Marczak,
                         testing::Values(Row{0, 1402.385}, Row{4, 1421.633}, Row{10, 1447.289},
                                         Row{20, 1482.380}, Row{25, 1496.728},
                                         Row{26.246, 1500.0}));

class ShownTenMetres : public testing::TestWithParam<Row> {};

// A sounder set to 1500 m/s (NOAA Field Procedures Manual, 1.5.4) that shows 10.00 m.
TEST_P(ShownTenMetres, AreSoDeep) {
    const auto [water_c, depth_m] = GetParam();
    const double factor =
        soundSpeedFactor(soundings::Sounder{}, units::Temperature::celsius(water_c));
    EXPECT_NEAR(10.0 * factor, depth_m, 5e-5);
}

INSTANTIATE_TEST_SUITE_P(At1500, ShownTenMetres,
                         testing::Values(Row{4, 9.4776}, Row{10, 9.6486}, Row{20, 9.8825}));

} // namespace

} // namespace reduction
