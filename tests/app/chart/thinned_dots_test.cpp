// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/thinned_dots.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace {

using chart::ThinnedDots;

double apart(QPointF a, QPointF b) {
    return std::hypot(a.x() - b.x(), a.y() - b.y());
}

TEST(ThinnedDots, LeaveATrackThatIsWideEnoughAsItIs) {
    ThinnedDots dots({300.0, 200.0}, 3.0);
    for (int i = 0; i < 60; ++i) {
        EXPECT_TRUE(dots.take({5.0 + 3.0 * i, 50.0})) << i;
    }
    EXPECT_EQ(dots.dots().size(), 60);
    EXPECT_EQ(dots.dots().first(), QPointF(5.0, 50.0));
}

TEST(ThinnedDots, TakeNothingBesideThePage) {
    ThinnedDots dots({300.0, 200.0}, 3.0);
    for (const QPointF out :
         {QPointF(-0.5, 10.0), QPointF(10.0, -0.5), QPointF(310.0, 10.0), QPointF(10.0, 205.0)}) {
        EXPECT_FALSE(dots.take(out));
    }
    EXPECT_TRUE(dots.dots().isEmpty());
}

TEST(ThinnedDots, NoTwoAreTooNearAndNonePlaceIsWithoutOne) {
    std::mt19937 chance(20261128);
    for (int turn = 0; turn < 20; ++turn) {
        const double least = 1.0 + 0.5 * (turn % 6);
        ThinnedDots dots({120.0, 90.0}, least);
        QPolygonF offered;
        for (int i = 0; i < 3000; ++i) {
            const QPointF at(0.01 * static_cast<double>(chance() % 12000),
                             0.01 * static_cast<double>(chance() % 9000));
            offered.append(at);
            dots.take(at);
        }
        const QPolygonF& kept = dots.dots();
        for (qsizetype i = 0; i < kept.size(); ++i) {
            for (qsizetype k = i + 1; k < kept.size(); ++k) {
                ASSERT_GE(apart(kept[i], kept[k]), least) << "turn " << turn;
            }
        }
        for (const QPointF at : offered) {
            const bool isShown =
                std::ranges::any_of(kept, [&](QPointF each) { return apart(each, at) < least; });
            ASSERT_TRUE(isShown) << "turn " << turn << ": nothing is lost that the eye could part";
        }
    }
}

} // namespace
