// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/chart_link.h"
#include "app/days/refresher.h"
#include "app/days/step_panel.h"
#include "app/days/survey_day/survey_day.h"
#include "app/edits/add_stays.h"
#include "app/edits/add_survey_day.h"
#include "app/edits/change_sections.h"
#include "app/edits/name_section.h"
#include "core/water/questions/section_use.h"
#include "tests/support/desk_bowl.h"

#include <gtest/gtest.h>

#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <array>
#include <cmath>
#include <functional>

namespace {

using chart::ToolKind;

/// At the desk, with the sections of a square bowl of 23 ha.
class SectionChanges : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(open_.create(folder_.filePath("small.gpkg"), "Skarrow Water"));
        ASSERT_TRUE(support::layBowl(open_));
        day_.steps().openStep(6);
        day_.resize(380, 900);
        day_.show();
        for (std::size_t i = 1; i < map().sections.size() && !neighbour_; ++i) {
            if (edits::joinSections(open_, middle(0), middle(i))) {
                open_.undoStack().undo();
                derive();
                neighbour_ = i;
            }
        }
        ASSERT_TRUE(neighbour_);
    }

    void derive() { ASSERT_TRUE(support::derive(open_)); }
    const sections::SectionMap& map() { return *open_.derived().sections; }
    geo::WaterPoint middle(std::size_t section) { return map().sections.at(section).middle; }
    std::size_t neighbour() const { return neighbour_.value_or(0); }
    QPushButton* button(const QString& words) {
        day_.findChild<days::Refresher*>()->finish();
        for (auto* each : day_.findChildren<QPushButton*>()) {
            if (each->text() == words) {
                return each;
            }
        }
        ADD_FAILURE() << "no " << words.toStdString();
        return nullptr;
    }
    /// Right across the section from west to east, through its middle.
    geo::Path acrossOf(std::size_t section) {
        const geo::WaterPoint through = middle(section);
        double west_m = through.x_m;
        double east_m = through.x_m;
        for (const std::size_t cell : map().sections[section].cells) {
            const grid::GridFrame& frame = map().sectionOfCell.frame();
            const geo::WaterPoint p = frame.centre(frame.cellAt(cell));
            west_m = std::min(west_m, p.x_m);
            east_m = std::max(east_m, p.x_m);
        }
        return {
            {west_m - 8.0, through.y_m}, {through.x_m, through.y_m}, {east_m + 8.0, through.y_m}};
    }

    QTemporaryDir folder_;
    open_water::OpenWater open_;
    preferences::Preferences preferences_;
    days::ChartLink chart_{open_, preferences_};
    days::survey_day::SurveyDay day_{{open_, preferences_, chart_}};
    std::optional<std::size_t> neighbour_;
};

TEST_F(SectionChanges, ASectionIsSplitAlongTheDrawnLineAndThatCanBeUndone) {
    const std::size_t count = map().sections.size();
    button("Split...")->click();
    EXPECT_EQ(chart_.tool(), ToolKind::stroke);
    EXPECT_TRUE(button("Split...")->isChecked());
    chart_.give(chart::StrokeMade{acrossOf(0)});
    EXPECT_FALSE(chart_.isAsking());
    EXPECT_FALSE(button("Split...")->isChecked());
    derive();
    EXPECT_EQ(map().sections.size(), count + 1);
    open_.undoStack().undo();
    derive();
    EXPECT_EQ(map().sections.size(), count);
    EXPECT_TRUE(open_.water()->sectionChanges.empty());
}

TEST_F(SectionChanges, ALineThatCutsNothingIsRefusedAndAskedForAgain) {
    QSignalSpy told(&open_, &open_water::OpenWater::failed);
    const int before = open_.undoStack().count();
    button("Split...")->click();
    chart_.give(chart::StrokeMade{{middle(0), {middle(0).x_m + 10.0, middle(0).y_m}}});
    EXPECT_EQ(told.size(), 1);
    EXPECT_EQ(open_.undoStack().count(), before);
    EXPECT_TRUE(open_.water()->sectionChanges.empty());
    EXPECT_EQ(chart_.tool(), ToolKind::stroke) << "the hand may try once more";
    button("Split...")->click();
    EXPECT_FALSE(chart_.isAsking()) << "the same button again puts the pen down";
}

TEST_F(SectionChanges, TwoNeighboursAreJoinedByPointingAtThem) {
    const std::size_t count = map().sections.size();
    const std::string name = "Heron Bay";
    edits::nameSection(open_, 0, QString::fromStdString(name));
    derive();
    const geo::WaterPoint place = middle(0);
    const units::Area alone = map().sections[0].area;
    chart_.selectSection(std::nullopt);
    button("Join...")->click();
    chart_.give(chart::PointMade{{5000.0, 5000.0}});
    EXPECT_TRUE(chart_.prompt().contains("first")) << "no section there: asked again";
    chart_.give(chart::PointMade{place});
    EXPECT_TRUE(chart_.prompt().contains("Heron Bay"));
    chart_.give(chart::PointMade{middle(neighbour())});
    EXPECT_FALSE(chart_.isAsking());
    derive();
    EXPECT_EQ(map().sections.size(), count - 1);
    const auto joined = static_cast<std::size_t>(sections::sectionAt(map(), place));
    EXPECT_EQ(map().sections[joined].name, name);
    EXPECT_GT(map().sections[joined].area.inSquareMetres(), 1.5 * alone.inSquareMetres());
}

TEST_F(SectionChanges, ABorderIsMovedToTheDrawnLine) {
    const std::size_t count = map().sections.size();
    const geo::WaterPoint first = middle(0);
    const geo::WaterPoint second = middle(neighbour());
    // Square to the way from one to the other, three quarters along it.
    const geo::WaterPoint way{second.x_m - first.x_m, second.y_m - first.y_m};
    const geo::WaterPoint at{first.x_m + 0.75 * way.x_m, first.y_m + 0.75 * way.y_m};
    const geo::Path line{{at.x_m - 3.0 * way.y_m, at.y_m + 3.0 * way.x_m},
                         {at.x_m + 3.0 * way.y_m, at.y_m - 3.0 * way.x_m}};
    const geo::WaterPoint between{first.x_m + 0.7 * way.x_m, first.y_m + 0.7 * way.y_m};
    chart_.selectSection(0);
    button("Move border...")->click();
    chart_.give(chart::PointMade{second});
    EXPECT_EQ(chart_.tool(), ToolKind::stroke);
    chart_.give(chart::StrokeMade{line});
    EXPECT_FALSE(chart_.isAsking());
    derive();
    EXPECT_EQ(map().sections.size(), count);
    EXPECT_EQ(sections::sectionAt(map(), between), sections::sectionAt(map(), first));
    EXPECT_NE(sections::sectionAt(map(), second), sections::sectionAt(map(), first));
}

TEST_F(SectionChanges, AllAreTakenBackInOneActThatCanBeUndone) {
    ASSERT_TRUE(edits::splitSection(open_, acrossOf(0)));
    derive();
    ASSERT_TRUE(edits::splitSection(open_, acrossOf(1)));
    derive();
    ASSERT_EQ(open_.water()->sectionChanges.size(), 2U);
    EXPECT_TRUE(button("Take last back")->isVisible());
    button("Take last back")->click();
    EXPECT_EQ(open_.water()->sectionChanges.size(), 1U);
    open_.undoStack().undo();
    button("Take all back")->click();
    EXPECT_TRUE(open_.water()->sectionChanges.empty());
    EXPECT_FALSE(button("Take all back")->isVisible());
    open_.undoStack().undo();
    EXPECT_EQ(open_.water()->sectionChanges.size(), 2U);
}

TEST_F(SectionChanges, TheChosenSectionStaysChosenWhenNumbersShift) {
    const auto last = static_cast<int>(map().sections.size()) - 1;
    const geo::WaterPoint place = middle(static_cast<std::size_t>(last));
    chart_.selectSection(last);
    ASSERT_TRUE(edits::splitSection(open_, acrossOf(0)));
    derive();
    EXPECT_EQ(chart_.content().selection.section, sections::sectionAt(map(), place));
}

TEST_F(SectionChanges, EachIsUndoneAndRedoneToTheSameMap) {
    const auto areas = [this] {
        std::vector<double> all;
        for (const sections::Section& section : map().sections) {
            all.push_back(section.area.inSquareMetres());
        }
        return all;
    };
    const auto before = areas();
    const geo::WaterPoint a = middle(0);
    const geo::WaterPoint b = middle(neighbour());
    const geo::WaterPoint between{0.5 * (a.x_m + b.x_m), 0.5 * (a.y_m + b.y_m)};
    // Square to the line from one middle to the other, a little nearer to the first.
    const geo::Path border{{between.x_m + (a.x_m - b.x_m) * 0.1 - 3.0 * (b.y_m - a.y_m),
                            between.y_m + (a.y_m - b.y_m) * 0.1 + 3.0 * (b.x_m - a.x_m)},
                           {between.x_m + (a.x_m - b.x_m) * 0.1 + 3.0 * (b.y_m - a.y_m),
                            between.y_m + (a.y_m - b.y_m) * 0.1 - 3.0 * (b.x_m - a.x_m)}};
    const std::array<std::function<base::Result<void>()>, 3> changes{
        [&] { return edits::splitSection(open_, acrossOf(0)); },
        [&] { return edits::joinSections(open_, a, b); },
        [&] { return edits::moveBorder(open_, a, b, border); }};
    for (std::size_t i = 0; i < changes.size(); ++i) {
        SCOPED_TRACE(i);
        ASSERT_TRUE(changes[i]());
        derive();
        const auto changed = areas();
        EXPECT_NE(changed, before);
        open_.undoStack().undo();
        derive();
        EXPECT_EQ(areas(), before);
        open_.undoStack().redo();
        derive();
        EXPECT_EQ(areas(), changed);
        open_.undoStack().undo();
        derive();
    }
}

TEST_F(SectionChanges, ANamedSectionKeepsItsNameItsCutAndItsCatchesWhenTheWaterIsDrawnAgain) {
    ASSERT_TRUE(edits::splitSection(open_, acrossOf(0)));
    derive();
    const geo::WaterPoint place = middle(0);
    const std::size_t count = map().sections.size();
    edits::nameSection(open_, 0, "Heron Bay");
    logbook::Stay stay;
    stay.place = open_.water()->frame->toEarth(place);
    stay.end = stay.start + std::chrono::hours(4);
    stay.rods = 2;
    stay.runs.resize(1);
    stay.runs[0].landed = true;
    edits::addStays(open_, "Add stay", {stay});
    derive();
    // Another survey day: the bottom lies otherwise, and the map is made anew.
    soundings::SurveyDay day;
    day.passStarts = {0};
    for (int i = 0; i < 300; ++i) {
        const double x = -1.0 + 2.0 * (i % 20) / 19.0;
        const int row = i / 20;
        const double y = -1.0 + 2.0 * row / 14.0;
        day.soundings.edit().push_back({{3.1 + 0.0037 * x, 55.2 + 0.00185 * y},
                                        units::Depth::metres(8.1 - 4.0 * std::hypot(x, y)),
                                        {}});
    }
    const auto drawnBefore = open_.derived().drawn;
    ASSERT_TRUE(edits::addSurveyDay(open_, day));
    derive();
    ASSERT_NE(open_.derived().drawn, drawnBefore);
    EXPECT_TRUE(map().refused.empty());
    EXPECT_EQ(map().sections.size(), count);
    const auto number = sections::sectionAt(map(), place);
    ASSERT_NE(number, sections::noSection);
    const auto at = static_cast<std::size_t>(number);
    EXPECT_EQ(map().sections[at].name, "Heron Bay");
    const auto uses = water::useOfSections(*open_.water(), open_.derived());
    EXPECT_EQ(uses.at(at).stays, 1);
    EXPECT_EQ(uses.at(at).tally.fish, 1);
}

} // namespace
