// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/open_water/recently_derived.h"

#include "core/water/steps/derive.h"

#include <gtest/gtest.h>

namespace {

using water::Derived;
using water::Step;
using water::Water;

/// Waters that differ from each other from drawing on.
Water withCell(double cell_m) {
    Water water;
    water.frame = geo::WaterFrame::centredOn({3.1, 55.2}).value();
    water.settings.cell = units::Length::metres(cell_m);
    return water;
}

/// As if derived from `water` up to `upTo`; `mark` tells it from others.
Derived derivedFrom(const Water& water, Step upTo, double mark = 0.0) {
    Derived derived;
    for (const Step step : water::allSteps) {
        if (step <= upTo) {
            derived.stamps[step] = water::stampOf(water, step);
        }
    }
    derived.seconds[Step::reduce] = mark;
    return derived;
}

double markOf(const Derived& derived) {
    const auto found = derived.seconds.find(Step::reduce);
    return found == derived.seconds.end() ? -1.0 : found->second;
}

TEST(RecentlyDerived, IsNothingAtFirstAndAfterBeingForgotten) {
    open_water::RecentlyDerived recent;
    EXPECT_EQ(markOf(recent.nearestTo(water::Stamps::of(withCell(4.0)))), -1.0);
    recent.remember(derivedFrom(withCell(4.0), Step::sections, 1.0));
    EXPECT_EQ(markOf(recent.nearestTo(water::Stamps::of(withCell(4.0)))), 1.0);
    recent.forget();
    EXPECT_EQ(markOf(recent.nearestTo(water::Stamps::of(withCell(4.0)))), -1.0);
}

TEST(RecentlyDerived, GivesTheOneOfWhichMostStepsInARowHold) {
    open_water::RecentlyDerived recent;
    recent.remember(derivedFrom(withCell(4.0), Step::sections, 1.0));
    recent.remember(derivedFrom(withCell(5.0), Step::bands, 2.0));
    recent.remember(derivedFrom(withCell(6.0), Step::sections, 3.0));
    EXPECT_EQ(markOf(recent.nearestTo(water::Stamps::of(withCell(4.0)))), 1.0);
    EXPECT_EQ(markOf(recent.nearestTo(water::Stamps::of(withCell(5.0)))), 2.0);
    EXPECT_EQ(markOf(recent.nearestTo(water::Stamps::of(withCell(6.0)))), 3.0);
    // Only the soundings are as they were, in all three: the newest is as good.
    EXPECT_EQ(markOf(recent.nearestTo(water::Stamps::of(withCell(9.0)))), 3.0);
    // A step in the row that does not hold makes those behind it worthless.
    Derived broken = derivedFrom(withCell(5.0), Step::sections, 4.0);
    broken.stamps[Step::draw] = water::Stamp(1);
    recent.remember(broken);
    EXPECT_EQ(markOf(recent.nearestTo(water::Stamps::of(withCell(5.0)))), 2.0);
}

TEST(RecentlyDerived, RemembersFourAndEachOnce) {
    open_water::RecentlyDerived recent;
    for (int i = 1; i <= 4; ++i) {
        recent.remember(derivedFrom(withCell(i), Step::sections, i));
    }
    // The same again, made newer, pushes no other out.
    recent.remember(derivedFrom(withCell(4.0), Step::sections, 4.5));
    EXPECT_EQ(markOf(recent.nearestTo(water::Stamps::of(withCell(1.0)))), 1.0);
    EXPECT_EQ(markOf(recent.nearestTo(water::Stamps::of(withCell(4.0)))), 4.5);
    recent.remember(derivedFrom(withCell(5.0), Step::sections, 5.0));
    EXPECT_EQ(markOf(recent.nearestTo(water::Stamps::of(withCell(2.0)))), 2.0);
    EXPECT_EQ(markOf(recent.nearestTo(water::Stamps::of(withCell(1.0)))), 5.0)
        << "the oldest is gone";
}

} // namespace
