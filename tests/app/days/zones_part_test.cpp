// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/chart_canvas.h"
#include "app/days/chart_link.h"
#include "app/days/refresher.h"
#include "app/days/step_panel.h"
#include "app/days/survey_day/structure_view.h"
#include "app/days/survey_day/survey_day.h"
#include "app/days/survey_day/zone_rows.h"
#include "app/edits/change_settings.h"
#include "app/widgets/amount_field.h"
#include "app/widgets/plain_table.h"
#include "tests/support/desk_bowl.h"

#include <gtest/gtest.h>

#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

namespace {

using chart::ZonesPicked;
constexpr int bandsStep = 4;
constexpr int weedStep = 5;
constexpr int sectionsStep = 6;

/// At the desk, with structure and weed of a square bowl of 23 ha.
class Zones : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(open_.create(folder_.filePath("small.gpkg"), "Skarrow Water"));
        ASSERT_TRUE(support::layBowl(open_));
        ASSERT_TRUE(edits::changeSettings(open_, "Set clarity", [](water::Settings& settings) {
            settings.secchi = units::Depth::metres(4.0);
        }));
        ASSERT_TRUE(support::derive(open_));
        ASSERT_FALSE(open_.derived().structure->zones.empty());
        ASSERT_FALSE(open_.derived().weed->zones.zones.empty());
        day_.resize(380, 900);
        day_.show();
    }

    const std::vector<structure::Zone>& structure() { return open_.derived().structure->zones; }
    /// The list of zones of the open step.
    widgets::PlainTable& list() {
        for (auto* each : day_.findChildren<widgets::PlainTable*>()) {
            if (each->isVisible() && each->accessibleName() == "Zones") {
                return *each;
            }
        }
        throw std::logic_error("no list of zones is to be seen");
    }
    widgets::AmountField& field(const QString& name) {
        day_.findChild<days::Refresher*>()->finish();
        for (auto* each : day_.findChildren<widgets::AmountField*>()) {
            if (each->accessibleName() == name) {
                return *each;
            }
        }
        throw std::logic_error("no field " + name.toStdString());
    }
    void type(widgets::AmountField& field, const QString& text) {
        field.setFocus();
        field.selectAll();
        QTest::keyClicks(&field, text);
        QTest::keyClick(&field, Qt::Key_Return);
    }

    QTemporaryDir folder_;
    open_water::OpenWater open_;
    preferences::Preferences preferences_;
    days::ChartLink chart_{open_, preferences_};
    days::survey_day::SurveyDay day_{{open_, preferences_, chart_}};
};

TEST_F(Zones, ARowChosenIsShownOnTheChart) {
    day_.steps().openStep(bandsStep);
    QSignalSpy looked(&chart_, &days::ChartLink::lookedAt);
    list().selectRow(0);
    EXPECT_EQ(chart_.content().selection.zone, 0);
    EXPECT_EQ(looked.size(), 1);
    QTest::keyClick(&list(), Qt::Key_Escape);
    EXPECT_FALSE(chart_.content().selection.zone);
}

TEST_F(Zones, AClickOnTheChartChoosesTheRow) {
    day_.steps().openStep(bandsStep);
    chart::ChartCanvas canvas;
    canvas.resize(600, 500);
    canvas.setContent(chart_.content());
    canvas.showWholeWater();
    QSignalSpy clicked(&canvas, &chart::ChartCanvas::zoneClicked);
    QObject::connect(&canvas, &chart::ChartCanvas::zoneClicked, &chart_,
                     &days::ChartLink::selectZone);
    const auto last = structure().size() - 1;
    const QPointF at = canvas.viewFrame().toScreen(structure()[last].middle);
    QTest::mouseClick(&canvas, Qt::LeftButton, {}, at.toPoint());
    ASSERT_EQ(clicked.size(), 1);
    EXPECT_EQ(chart_.content().selection.zone, static_cast<int>(last));
    EXPECT_EQ(list().chosen(), static_cast<int>(last));
    QTest::mouseClick(&canvas, Qt::LeftButton, {}, QPoint(2, 2));
    EXPECT_FALSE(chart_.content().selection.zone) << "a click on land lets go";
    EXPECT_EQ(list().chosen(), -1);
}

TEST_F(Zones, OnlyTheFamilyOfTheOpenStepIsPickedFrom) {
    EXPECT_EQ(chart_.content().zonesPicked, ZonesPicked::none);
    day_.steps().openStep(weedStep);
    EXPECT_EQ(chart_.content().zonesPicked, ZonesPicked::weed);
    list().selectRow(0);
    EXPECT_EQ(chart_.content().selection.zone, static_cast<int>(structure().size()))
        << "weed is counted after structure";
    day_.steps().openStep(bandsStep);
    EXPECT_EQ(chart_.content().zonesPicked, ZonesPicked::structure);
    EXPECT_FALSE(chart_.content().selection.zone);
    EXPECT_EQ(list().chosen(), -1);
    day_.steps().openStep(sectionsStep);
    EXPECT_EQ(chart_.content().zonesPicked, ZonesPicked::none) << "a click chooses a section";
}

TEST_F(Zones, AThresholdTypedInIsUsedAndCanBeUndone) {
    day_.steps().openStep(bandsStep);
    type(field("Drop-off from"), "35 %");
    EXPECT_EQ(open_.water()->settings.structure.dropOffFrom_percent, 35.0);
    ASSERT_TRUE(support::derive(open_));
    EXPECT_EQ(open_.derived().structure->report->dropOffFrom_percent, 35.0);
    open_.undoStack().undo();
    EXPECT_FALSE(open_.water()->settings.structure.dropOffFrom_percent);
    EXPECT_EQ(field("Drop-off from").text(), "") << "automatic";
}

TEST_F(Zones, AThresholdOutOfItsRangeIsMarkedAndChangesNothing) {
    day_.steps().openStep(bandsStep);
    type(field("Broad scale"), "5 m");
    EXPECT_TRUE(field("Broad scale").isWrong());
    EXPECT_EQ(open_.water()->settings.structure, water::StructureChoice());
}

TEST_F(Zones, WeedIsNotedAlongALineAndOverAnAreaEachInOneActThatCanBeUndone) {
    day_.steps().openStep(weedStep);
    type(field("Height"), "0.8 m");
    const auto press = [this](const QString& words) {
        for (auto* each : day_.findChildren<QPushButton*>()) {
            if (each->text() == words) {
                each->click();
            }
        }
    };
    press("Along a line");
    ASSERT_EQ(chart_.tool(), chart::ToolKind::stroke);
    chart_.give(chart::StrokeMade{{{0.0, 0.0}, {100.0, 0.0}}});
    ASSERT_EQ(open_.water()->weedNotes.size(), 1U);
    const weed::WeedNote line = open_.water()->weedNotes[0];
    EXPECT_EQ(line.growth, weed::Growth::thick);
    EXPECT_NEAR(line.height->inMetres(), 0.8, 1e-9);
    EXPECT_EQ(line.extent, weed::Extent::line);
    EXPECT_EQ(line.corners.size(), 2U);
    EXPECT_FALSE(line.seen) << "nobody has said when";
    type(field("Seen"), "20.8.2025");
    press("Over an area");
    ASSERT_EQ(chart_.tool(), chart::ToolKind::lasso);
    chart_.give(chart::RingMade{{{-60.0, 20.0}, {60.0, 20.0}, {60.0, 120.0}, {-60.0, 120.0}}});
    ASSERT_EQ(open_.water()->weedNotes.size(), 2U);
    EXPECT_EQ(open_.water()->weedNotes[1].extent, weed::Extent::area);
    EXPECT_EQ(open_.water()->weedNotes[1].corners.size(), 4U);
    EXPECT_EQ(open_.water()->weedNotes[1].seen, units::dayFrom("2025-08-20"));
    open_.undoStack().undo();
    EXPECT_EQ(open_.water()->weedNotes.size(), 1U);
    press("At places");
    EXPECT_TRUE(chart_.isAsking());
    day_.steps().openStep(bandsStep);
    EXPECT_FALSE(chart_.isAsking()) << "the pen is put down with the step";
    open_.undoStack().undo();
    EXPECT_TRUE(open_.water()->weedNotes.empty());
}

TEST(ZoneRows, GiveTheEdgeOfADropOffAndTheAreaOfAHump) {
    structure::ZoneMap map;
    map.zones.resize(2);
    map.zones[0].kind = structure::ZoneKind::dropOff;
    map.zones[0].name = "Drop-off 1";
    map.zones[0].area = units::Area::hectares(1.5);
    map.zones[0].deepest = units::Depth::metres(8.0);
    map.zones[0].edgeLength = units::Length::metres(240.0);
    map.zones[0].topEdges = {{{0.0, 0.0}, {150.0, 0.0}}};
    map.zones[0].shoreTops = {{{0.0, 9.0}, {90.0, 9.0}}};
    map.zones[0].meanTrust_m = 0.4;
    map.zones[1].name = "Hump 1";
    map.zones[1].area = units::Area::hectares(2.0);
    const wording::Words words;
    const auto rows = days::survey_day::zoneRows(map, words);
    EXPECT_EQ(rows[0], (QStringList{"Drop-off 1", "0 to 8 m", "240 m", "±0.4 m"}));
    EXPECT_EQ(rows[1][2], "2.0 ha");
    // 1 acre = 4046.856 m² (NIST Special Publication 811, international acre; from memory).
    EXPECT_EQ(days::survey_day::zoneCard(map, 0, words),
              "Drop-off 1: 1.5 ha (3.7 ac); edge 240 m, of it 90.0 m along the bank; depths on "
              "average within ±0.4 m.");
    map.zones[0].edgeLength = units::Length::metres(90.0);
    EXPECT_TRUE(days::survey_day::zoneCard(map, 0, words).contains("90.0 m, all along the bank"));
    EXPECT_EQ(days::survey_day::zoneCard(map, 2, words), "");
    EXPECT_EQ(days::survey_day::zoneCard(map, -1, words), "");
    EXPECT_EQ(days::survey_day::zoneHelp(map, 0),
              "A steep bank between shallower and deeper water.");
    EXPECT_EQ(days::survey_day::zoneHelp(map, 2), "");
    EXPECT_EQ(days::survey_day::zoneHelp(map, -1), "");
}

} // namespace
