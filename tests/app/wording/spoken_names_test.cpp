// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/spoken_names.h"

#include <gtest/gtest.h>

namespace {

using preferences::UnitSystem;
using wording::Words;

marks::Mark markNear(double distance_m) {
    marks::Mark mark;
    mark.sectionName = "Section 7";
    mark.near = marks::NearPlace{"Gannick Bar", units::Length::metres(distance_m),
                                 units::Bearing::degrees(45.0)};
    return mark;
}

TEST(CalledBy, IsTheUsersNameThenThePlaceThenTheSection) {
    marks::Mark mark = markNear(120.0);
    EXPECT_EQ(wording::calledBy(mark, Words()), "Gannick Bar, 120 m NE");
    EXPECT_EQ(wording::calledBy(mark, Words(UnitSystem::imperial)), "Gannick Bar, 400 ft NE");
    mark.near->bearing = units::Bearing::degrees(24.0);
    EXPECT_EQ(wording::calledBy(mark, Words()), "Gannick Bar, 120 m NE");
    mark.near->bearing = units::Bearing::degrees(350.0);
    EXPECT_EQ(wording::calledBy(mark, Words()), "Gannick Bar, 120 m N");
    mark.name = "Old faithful";
    EXPECT_EQ(wording::calledBy(mark, Words()), "Old faithful");
    mark.name.clear();
    mark.near.reset();
    EXPECT_EQ(wording::calledBy(mark, Words()), "Section 7");
    mark.sectionName.clear();
    EXPECT_EQ(wording::calledBy(mark, Words()), "");
}

TEST(CalledBy, IsThePlaceAloneWhereTheMarkLiesOnIt) {
    EXPECT_EQ(wording::calledBy(markNear(40.0), Words()), "Gannick Bar");
    EXPECT_EQ(wording::calledBy(markNear(41.0), Words()), "Gannick Bar, 40 m NE");
}

} // namespace
