// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/add_survey_day.h"
#include "app/edits/add_weed_notes.h"
#include "app/edits/change_settings.h"
#include "app/edits/reshape_shore.h"
#include "app/edits/set_aside_soundings.h"
#include "app/edits/set_shoreline.h"
#include "app/edits/take_back_soundings.h"
#include "app/open_water/open_water.h"

#include <gtest/gtest.h>

#include <QTemporaryDir>

namespace {

using Positions = std::vector<std::size_t>;

class SurveyDayEdits : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(open_.create(folder_.filePath("small.gpkg"), "Skarrow Water"));
    }

    static soundings::SurveyDay smallDay() {
        soundings::SurveyDay day;
        day.name = "first";
        day.passStarts = {0};
        for (int i = 0; i < 4; ++i) {
            day.soundings.edit().push_back({{3.1 + 1e-4 * i, 55.2}, units::Depth::metres(3.0), {}});
        }
        return day;
    }

    const soundings::SurveyDay& day() { return open_.water()->days.at(0); }

    QTemporaryDir folder_;
    open_water::OpenWater open_;
};

TEST_F(SurveyDayEdits, FirstDayLaysTheFrameAndUndoTakesItAway) {
    ASSERT_TRUE(edits::addSurveyDay(open_, smallDay()));
    EXPECT_TRUE(open_.water()->frame.has_value());
    EXPECT_TRUE(day().id.isGiven());
    open_.undoStack().undo();
    EXPECT_FALSE(open_.water()->frame.has_value());
    EXPECT_TRUE(open_.water()->days.empty());
}

TEST_F(SurveyDayEdits, DayWithoutSoundingsIsRefusedAndChangesNothing) {
    EXPECT_FALSE(edits::addSurveyDay(open_, soundings::SurveyDay()));
    EXPECT_EQ(open_.undoStack().count(), 0);
    EXPECT_TRUE(open_.water()->days.empty());
}

TEST_F(SurveyDayEdits, SetAsideByHandAddsUpAndCanBeUndone) {
    ASSERT_TRUE(edits::addSurveyDay(open_, smallDay()));
    edits::setAsideSoundings(open_, {{1, 2}});
    edits::setAsideSoundings(open_, {{2, 3}});
    EXPECT_EQ(day().setAsideByHand, (Positions{1, 2, 3}));
    open_.undoStack().undo();
    EXPECT_EQ(day().setAsideByHand, (Positions{1, 2}));
}

TEST_F(SurveyDayEdits, NothingIsTakenBackBeforeTheSoundingsAreLookedOver) {
    ASSERT_TRUE(edits::addSurveyDay(open_, smallDay()));
    const int before = open_.undoStack().count();
    edits::takeBackSoundings(open_, {{0}});
    EXPECT_EQ(open_.undoStack().count(), before);
}

TEST_F(SurveyDayEdits, ShorelineCanBeUndone) {
    const geo::LonLatPiece square{{{3.1, 55.2}, {3.11, 55.2}, {3.11, 55.21}, {3.1, 55.21}}, {}};
    ASSERT_TRUE(edits::setShoreline(open_, {square}));
    EXPECT_TRUE(open_.water()->frame.has_value());
    open_.undoStack().undo();
    EXPECT_TRUE(open_.water()->shoreline.empty());
}

/// 0.6 km square with its corners at whole thousandths of a degree.
geo::LonLatPiece pond() {
    return {{{3.1, 55.2}, {3.11, 55.2}, {3.11, 55.206}, {3.1, 55.206}}, {}};
}

TEST_F(SurveyDayEdits, EachCornerOfTheShoreIsAnActOfItsOwn) {
    ASSERT_TRUE(edits::setShoreline(open_, {pond()}));
    const auto frame = *open_.water()->frame;
    const geo::WaterPoint corner = frame.toWater(pond().outer[2]);
    ASSERT_TRUE(edits::moveShoreCorner(open_, {0, 0, 2}, {corner.x_m + 50.0, corner.y_m}));
    ASSERT_TRUE(edits::addShoreCorner(open_, {0, 0, 2}, {corner.x_m - 100.0, corner.y_m + 40.0}));
    ASSERT_TRUE(edits::removeShoreCorner(open_, {0, 0, 0}));
    EXPECT_EQ(open_.water()->shoreline[0].outer.size(), 4U);
    open_.undoStack().undo();
    EXPECT_EQ(open_.water()->shoreline[0].outer.size(), 5U);
    open_.undoStack().undo();
    open_.undoStack().undo();
    EXPECT_EQ(open_.water()->shoreline, std::vector{pond()});
}

TEST_F(SurveyDayEdits, IslandsComeAndGoAndCanBeUndone) {
    ASSERT_TRUE(edits::setShoreline(open_, {pond()}));
    const geo::WaterPoint middle = open_.water()->frame->toWater({3.105, 55.203});
    const geo::Ring island{{middle.x_m - 30.0, middle.y_m - 30.0},
                           {middle.x_m + 30.0, middle.y_m - 30.0},
                           {middle.x_m, middle.y_m + 30.0}};
    ASSERT_TRUE(edits::addIsland(open_, island));
    EXPECT_EQ(open_.water()->shoreline[0].islands.size(), 1U);
    ASSERT_TRUE(edits::removeIslandAt(open_, middle));
    EXPECT_TRUE(open_.water()->shoreline[0].islands.empty());
    open_.undoStack().undo();
    open_.undoStack().undo();
    EXPECT_EQ(open_.water()->shoreline, std::vector{pond()});
}

TEST_F(SurveyDayEdits, AShoreThatWouldCrossItselfIsRefusedAndNothingChanges) {
    ASSERT_TRUE(edits::setShoreline(open_, {pond()}));
    const int before = open_.undoStack().count();
    const geo::WaterPoint beyond = open_.water()->frame->toWater({3.09, 55.203});
    const auto moved = edits::moveShoreCorner(open_, {0, 0, 2}, beyond);
    ASSERT_FALSE(moved.has_value());
    EXPECT_EQ(open_.undoStack().count(), before);
    EXPECT_EQ(open_.water()->shoreline, std::vector{pond()});
}

TEST_F(SurveyDayEdits, SettingOutOfItsRangeIsRefusedAndSaysWhy) {
    const auto set = edits::changeSettings(open_, "Set cell", [](water::Settings& settings) {
        settings.cell = units::Length::metres(5000.0);
    });
    ASSERT_FALSE(set.has_value());
    EXPECT_FALSE(set.error().what.empty());
    EXPECT_FALSE(open_.water()->settings.cell.has_value());
}

TEST_F(SurveyDayEdits, SameWeedNotesTwiceAreOneEach) {
    weed::WeedNote note;
    note.place = {3.1, 55.2};
    edits::addWeedNotes(open_, {note, note});
    edits::addWeedNotes(open_, {note});
    EXPECT_EQ(open_.water()->weedNotes.size(), 1U);
    EXPECT_EQ(open_.undoStack().count(), 1);
}

} // namespace
