// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/never_fished.h"
#include "tests/app/support/star_water.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace {

/// The star with one stay in the middle of each section named.
chart::ChartContent fishedIn(const std::vector<std::size_t>& sections) {
    chart::ChartContent content = support::starContent();
    auto map = std::make_shared<sections::SectionMap>(*content.derived.sections);
    auto water = std::make_shared<water::Water>(*content.water);
    water->log = {};
    const grid::GridFrame& frame = map->sectionOfCell.frame();
    for (std::size_t i = 0; i < map->sections.size(); ++i) {
        map->sectionOfCell[frame.cellOf(map->sections[i].middle)] =
            static_cast<sections::SectionNumber>(i);
    }
    for (const std::size_t section : sections) {
        logbook::Stay stay;
        stay.place = water->frame->toEarth(map->sections.at(section).middle);
        water->log.push_back(stay);
    }
    content.derived.sections = map;
    content.water = water;
    return content;
}

TEST(NeverFished, IsEverySectionWithoutAStay) {
    const auto never = chart::neverFished(fishedIn({1}));
    ASSERT_GE(never.size(), 2U);
    EXPECT_FALSE(never[1]);
    EXPECT_EQ(std::ranges::count(never, false), 1);
    EXPECT_TRUE(chart::showsNeverFished(fishedIn({1})));
}

TEST(NeverFished, IsNotSaidBeforeAnythingWasLogged) {
    EXPECT_TRUE(chart::neverFished(fishedIn({})).empty());
    EXPECT_FALSE(chart::showsNeverFished(fishedIn({})));
}

TEST(NeverFished, OwesNoSignWhereSectionsAreHiddenOrAllWereFished) {
    chart::ChartContent content = fishedIn({1});
    content.shown.erase(chart::LayerKind::sections);
    EXPECT_FALSE(chart::showsNeverFished(content));
    std::vector<std::size_t> all(content.derived.sections->sections.size());
    for (std::size_t i = 0; i < all.size(); ++i) {
        all[i] = i;
    }
    EXPECT_FALSE(chart::showsNeverFished(fishedIn(all)));
}

} // namespace
