// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/questions/propose_section_names.h"
#include "tests/support/made_up_water.h"

#include <gtest/gtest.h>

#include <set>

namespace {

using namespace water;

/// Three sections in a row, 200 m each, from west to east.
struct ThreeInARow {
    support::MadeUpWater made = support::madeUpWater(
        {{support::rectangle(-300.0, -100.0, 300.0, 100.0), {}}},
        [](geo::WaterPoint) { return 4.0; }, 5.0);
    Water water;
    Derived derived;

    ThreeInARow() {
        water.frame = made.frame;
        sections::SectionMap map;
        map.sectionOfCell = grid::Grid<sections::SectionNumber>(made.mask.frame(), -1);
        for (int k = 0; k < 3; ++k) {
            sections::Section section;
            section.middle = {-200.0 + 200.0 * k, 0.0};
            section.area = units::Area::hectares(4.0);
            map.sections.push_back(section);
        }
        for (std::size_t i = 0; i < map.sectionOfCell.size(); ++i) {
            const geo::WaterPoint p = made.mask.frame().centre(made.mask.frame().cellAt(i));
            if (std::abs(p.x_m) < 300.0 && std::abs(p.y_m) < 100.0) {
                map.sectionOfCell[i] = static_cast<int>((p.x_m + 300.0) / 200.0);
            }
        }
        derived.sections = std::make_shared<const sections::SectionMap>(map);
    }
    void place(const char* name, double x_m, double y_m) {
        water.places.push_back({name, made.frame.toEarth(geo::WaterPoint{x_m, y_m})});
    }
    [[nodiscard]] auto proposals() const { return proposeSectionNames(water, derived); }
};

TEST(SectionNames, TheSectionThatHoldsThePlaceIsCalledByItAndTheNextByTheWay) {
    ThreeInARow row;
    row.place("Gannick Bar", -190.0, 20.0);
    const auto proposals = row.proposals();
    ASSERT_EQ(proposals.size(), 3U);
    EXPECT_EQ(proposals[0], (SectionNameProposal{"Gannick Bar", std::nullopt}));
    ASSERT_TRUE(proposals[1]);
    EXPECT_EQ(proposals[1]->place, "Gannick Bar");
    EXPECT_EQ(eighthOf(*proposals[1]->towards), 2) << "east";
    EXPECT_FALSE(proposals[2]) << "390 m off, the bar is no name for it";
}

TEST(SectionNames, NoTwoAreCalledAlike) {
    ThreeInARow row;
    row.place("Owl Point", 0.0, 140.0); // on the bank, north of the one in the middle
    row.place("Owl Point", -210.0, 140.0);
    std::set<std::pair<std::string, int>> names;
    for (const auto& proposal : row.proposals()) {
        ASSERT_TRUE(proposal);
        EXPECT_TRUE(names.emplace(proposal->place, eighthOf(*proposal->towards)).second);
    }
}

TEST(SectionNames, WithoutPlacesOrSectionsNothingIsProposed) {
    ThreeInARow row;
    for (const auto& proposal : row.proposals()) {
        EXPECT_FALSE(proposal);
    }
    row.place("jetty", 0.0, 0.0);
    EXPECT_TRUE(proposeSectionNames(row.water, {}).empty());
}

TEST(SectionNames, EachOfEightWaysReachesHalfWayToTheNext) {
    const auto eighth = [](double deg) { return eighthOf(units::Bearing::degrees(deg)); };
    EXPECT_EQ(eighth(22.0), 0);
    EXPECT_EQ(eighth(23.0), 1);
    EXPECT_EQ(eighth(338.0), 0);
    EXPECT_EQ(eighth(337.0), 7);
}

} // namespace
