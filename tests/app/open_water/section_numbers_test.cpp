// SPDX-License-Identifier: GPL-3.0-or-later
// The numbers of the sections at the desk: through edits, undo, a file closed and opened, and where
// another has the water.
#include "app/edits/change_sections.h"
#include "app/edits/change_settings.h"
#include "app/edits/name_section.h"
#include "app/open_water/open_water.h"
#include "core/sections/number_sections.h"
#include "tests/support/desk_bowl.h"

#include <gtest/gtest.h>

#include <QTemporaryDir>

#include <map>
#include <set>

namespace {

using open_water::OpenWater;

/// Number of the section at each cell.
std::map<std::size_t, int> numbersOf(const OpenWater& open) {
    std::map<std::size_t, int> numbers;
    for (const sections::Section& section : open.derived().sections->sections) {
        for (const std::size_t cell : section.cells) {
            numbers[cell] = section.number;
        }
    }
    return numbers;
}

std::set<int> given(const OpenWater& open) {
    std::set<int> numbers;
    for (const sections::Section& section : open.derived().sections->sections) {
        numbers.insert(section.number);
    }
    return numbers;
}

class SectionNumbers : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(open_.create(path_, "bowl"));
        ASSERT_TRUE(support::layBowl(open_));
    }
    void wantSections(double hectares) {
        ASSERT_TRUE(edits::changeSettings(open_, "Set size", [&](water::Settings& s) {
            s.sectionArea = units::Area::hectares(hectares);
        }));
        ASSERT_TRUE(support::derive(open_));
    }

    QTemporaryDir folder_;
    const QString path_ = folder_.filePath("bowl.gpkg");
    OpenWater open_;
};

TEST_F(SectionNumbers, AreNotedWithTheMapAndAreNoEditOfAnybodys) {
    ASSERT_GE(given(open_).size(), 4U);
    EXPECT_EQ(open_.water()->numbering.waters.size(), given(open_).size());
    const int edits = open_.undoStack().count();
    wantSections(2.0);
    EXPECT_EQ(open_.undoStack().count(), edits + 1) << "the size alone";
    EXPECT_TRUE(open_.isCurrent(water::Step::sections));
}

TEST_F(SectionNumbers, UndoBringsThemBackAndNeverGivesOneToOtherWater) {
    const auto before = numbersOf(open_);
    const std::set<int> first = given(open_);
    wantSections(1.0);
    const std::set<int> fine = given(open_);
    EXPECT_GT(fine.size(), first.size());
    open_.undoStack().undo();
    ASSERT_TRUE(support::derive(open_));
    EXPECT_EQ(numbersOf(open_), before);
    // What was given in between stays given, though the edit is undone.
    EXPECT_GE(open_.water()->numbering.waters.size(), fine.size());
    const auto known = open_.water()->numbering.waters.back().number;
    wantSections(0.5);
    for (const int number : given(open_)) {
        EXPECT_TRUE(number > known || first.contains(number) || fine.contains(number)) << number;
    }
}

TEST_F(SectionNumbers, AreTheSameWhenTheFileIsOpenedAgain) {
    wantSections(1.0);
    wantSections(2.0);
    edits::nameSection(open_, 1, "Heron Bay");
    ASSERT_TRUE(support::derive(open_));
    ASSERT_TRUE(open_.finishKeeping());
    const auto before = numbersOf(open_);
    OpenWater again;
    ASSERT_TRUE(again.open(path_));
    ASSERT_TRUE(support::derive(again));
    EXPECT_EQ(numbersOf(again), before);
    EXPECT_EQ(again.derived().sections->sections[1].name, "Heron Bay");
}

TEST_F(SectionNumbers, ASplitLeavesTheLargerPartItsNumberAndComesBackWhole) {
    const auto before = numbersOf(open_);
    const int highest = *given(open_).rbegin();
    const sections::Section& section = open_.derived().sections->sections[2];
    const int number = section.number;
    const geo::WaterPoint m = section.middle;
    ASSERT_TRUE(edits::splitSection(open_, {{m.x_m - 500.0, m.y_m}, {m.x_m + 500.0, m.y_m}}));
    ASSERT_TRUE(support::derive(open_));
    const std::set<int> split = given(open_);
    EXPECT_TRUE(split.contains(number));
    EXPECT_EQ(*split.rbegin(), highest + 1) << "the smaller part is new to the map";
    open_.undoStack().undo();
    ASSERT_TRUE(support::derive(open_));
    EXPECT_EQ(numbersOf(open_), before);
}

TEST_F(SectionNumbers, DividedAnewTheyGoWithTheirWater) {
    const auto before = numbersOf(open_);
    open_.divideAfresh();
    open_.jobs().finishAll();
    EXPECT_TRUE(open_.isCurrent(water::Step::sections));
    EXPECT_EQ(numbersOf(open_), before) << "the ground is the same, so are the borders";
}

TEST_F(SectionNumbers, OfAWaterThatAnotherHasAreNoChangeToBeKept) {
    ASSERT_TRUE(open_.finishKeeping());
    OpenWater looker;
    ASSERT_TRUE(looker.open(path_));
    ASSERT_TRUE(looker.isReadOnly());
    ASSERT_TRUE(support::derive(looker));
    EXPECT_EQ(numbersOf(looker), numbersOf(open_));
    EXPECT_TRUE(looker.keeper().unkept().empty());
}

} // namespace
