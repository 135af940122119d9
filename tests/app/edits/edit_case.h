// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/edits/change_water.h"
#include "app/open_water/open_water.h"
#include "core/store/water_store.h"

#include <gtest/gtest.h>

#include <QTemporaryDir>

#include <functional>
#include <set>
#include <vector>

namespace edit_case {

using open_water::OpenWater;
using water::Part;
using water::Water;

/// What one act of the user does.
struct Act {
    const char* name; ///< As undo and redo call it.
    std::set<Part> parts;
    std::function<void(OpenWater&)> act;
    std::function<void(Water&)> expected; ///< The same, done by hand.
};

/// An open water with something in each of its parts. Ids: days 3 and 8, lead line 21 and 22, weed
/// 31, stays 41 and 42, fish 51 (of 42): the next is 52.
class Edits : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(open_.create(path_, "Skarrow Water"));
        fillWith(full());
        QObject::connect(&open_, &OpenWater::changed,
                         [this](const std::set<Part>& parts) { told_.push_back(parts); });
    }

    static Water full();

    /// Puts `water` in the place of what is open, as if it had been so when it was opened.
    void fillWith(const Water& water) {
        edits::change(open_, "fill", {water::allParts.begin(), water::allParts.end()},
                      [&](Water& all) { all = water; });
        open_.undoStack().clear();
        told_.clear();
    }
    [[nodiscard]] Water inFile() {
        open_.finishKeeping();
        base::Progress quiet;
        return store::open(path_.toStdString()).value()->load(quiet).value();
    }
    /// The act does what is expected, with undo and redo, in memory and in the file.
    void check(const Act& act) {
        SCOPED_TRACE(act.name);
        const Water before = *open_.water();
        Water expected = before;
        act.expected(expected);
        ASSERT_FALSE(expected == before) << "an act that does nothing proves nothing";
        told_.clear();
        act.act(open_);
        EXPECT_TRUE(*open_.water() == expected);
        ASSERT_EQ(open_.undoStack().count(), 1);
        EXPECT_EQ(open_.undoStack().undoText().toStdString(), act.name);
        EXPECT_TRUE(inFile() == expected);
        open_.undoStack().undo();
        EXPECT_TRUE(*open_.water() == before);
        EXPECT_TRUE(inFile() == before);
        EXPECT_EQ(open_.undoStack().redoText().toStdString(), act.name);
        open_.undoStack().redo();
        EXPECT_TRUE(*open_.water() == expected);
        EXPECT_TRUE(inFile() == expected);
        EXPECT_EQ(told_, (std::vector<std::set<Part>>(3, act.parts)));
        open_.undoStack().undo();
        open_.undoStack().clear();
    }
    /// The act finds nothing to do: there is nothing to undo then, and nobody is told.
    void checkIdle(const char* name, const std::function<void(OpenWater&)>& act) {
        SCOPED_TRACE(name);
        const auto before = open_.water();
        told_.clear();
        act(open_);
        EXPECT_EQ(open_.water(), before);
        EXPECT_EQ(open_.undoStack().count(), 0);
        EXPECT_TRUE(told_.empty());
    }

    QTemporaryDir folder_;
    const QString path_ = folder_.filePath("small.gpkg");
    OpenWater open_;
    std::vector<std::set<Part>> told_;
};

inline Water Edits::full() {
    Water water;
    water.name = "Skarrow Water";
    water.frame = geo::WaterFrame::centredOn({3.1, 55.2}).value();
    water.shoreline = {{{{3.1, 55.2}, {3.11, 55.2}, {3.11, 55.206}, {3.1, 55.206}},
                        {{{3.103, 55.204}, {3.104, 55.204}, {3.104, 55.205}}}}};
    water.days.resize(2);
    water.days[0].id = soundings::SurveyDayId(8);
    water.days[1].id = soundings::SurveyDayId(3);
    for (soundings::SurveyDay& day : water.days) {
        day.soundings.edit().assign(6, {{3.105, 55.203}, units::Depth::metres(4.0), std::nullopt});
        day.passStarts = {0};
        day.setAsideByHand = {1, 4};
        day.keptByHand = {2, 5};
    }
    water.leadLine = {{soundings::LeadLineId(21), {3.101, 55.201}, units::Depth::metres(2.0), {}},
                      {soundings::LeadLineId(22), {3.102, 55.202}, units::Depth::metres(3.0), {}}};
    water.weedNotes = {{weed::WeedNoteId(31), {3.103, 55.201}, weed::Growth::thin, {}}};
    water.houseRules.rodLimit = 4;
    water.sectionNames = {{{3.105, 55.202}, "Heron Bay"}};
    water.pinnedMarks = {{"first", {3.106, 55.202}}, {"second", {3.107, 55.202}}};
    water.banned = {{"snags", {{3.101, 55.2}, {3.102, 55.2}, {3.102, 55.201}}},
                    {"", {{3.103, 55.2}, {3.104, 55.2}, {3.104, 55.201}}}};
    water.beliefProfiles = {{"autumn", {}}, {"spring", {}}};
    water.beliefProfiles[1].weights.set(marks::FactorKind::shelter, 1.75);
    water.dayByHand = {{{3.106, 55.202}, {3.107, 55.202}},
                       {{{3.107, 55.202}, std::chrono::minutes(50)}}};
    water.log = logbook::Log(2);
    for (std::size_t i = 0; i < 2; ++i) {
        water.log.edit(i).id = logbook::StayId(41 + static_cast<std::int64_t>(i));
        water.log.edit(i).start = units::Moment(std::chrono::hours(10 * (i + 1)));
        water.log.edit(i).end = water.log[i].start + std::chrono::hours(2);
        water.log.edit(i).place = {3.105, 55.202};
    }
    water.log.edit(1).runs.resize(1);
    water.log.edit(1).runs[0].id = logbook::FishId(51);
    water.log.edit(1).runs[0].time = water.log[1].start + std::chrono::hours(1);
    return water;
}

} // namespace edit_case
