// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/anchoring/rope.h"

#include "tests/support/given.h"

#include <array>

#include <gtest/gtest.h>

namespace {

using anchoring::angleAtAnchor_deg;
using anchoring::ropeForScope;
using anchoring::runOf;
using support::given;
using units::Depth;
using units::Length;

struct Row {
    double scope;
    double angle_deg;
    double runByRise;
};

// Plain geometry of a straight rope: angle asin(1/s), run h sqrt(s^2 - 1).
constexpr std::array rows = {Row{2, 30.000, 1.7321}, Row{3, 19.471, 2.8284},
                             Row{4, 14.478, 3.8730}, Row{5, 11.537, 4.8990},
                             Row{7, 8.213, 6.9282},  Row{10, 5.739, 9.9499}};

TEST(TautRope, HasTheAngleAndRunOfItsScope) {
    const Depth depth = Depth::metres(0.4);
    const Length cleat = Length::metres(0.6);
    for (const Row& row : rows) {
        const Length rope = ropeForScope(row.scope, depth, cleat);
        EXPECT_NEAR(rope.inMetres(), row.scope, 1e-12);
        EXPECT_NEAR(given(angleAtAnchor_deg(rope, depth, cleat)), row.angle_deg, 0.0005);
        EXPECT_NEAR(given(runOf(rope, depth, cleat)).inMetres(), row.runByRise, 0.00005);
    }
}

TEST(TautRope, InSixMetresUnderABowOfHalfAMetre) {
    const Depth depth = Depth::metres(6.0);
    const Length bow = Length::metres(0.5);
    EXPECT_NEAR(ropeForScope(3, depth, bow).inMetres(), 19.50, 1e-9);
    EXPECT_NEAR(given(runOf(Length::metres(19.5), depth, bow)).inMetres(), 18.3848, 0.00005);
    EXPECT_NEAR(given(runOf(Length::metres(32.5), depth, bow)).inMetres(), 31.8434, 0.00005);
    EXPECT_NEAR(given(runOf(Length::metres(45.5), depth, bow)).inMetres(), 45.0333, 0.00005);
}

TEST(WindPull, IsHalfRhoTimesDragTimesSideTimesSpeedSquared) {
    // 2 m2, drag coefficient 1, 10 m/s, air of 1.225 kg/m3: 122.5 N.
    EXPECT_NEAR(
        anchoring::windPull_N(units::Speed::metresPerSecond(10), units::Area::squareMetres(2), 1.0),
        122.5, 1e-9);
}

} // namespace
