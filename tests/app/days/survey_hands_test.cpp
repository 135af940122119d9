// SPDX-License-Identifier: GPL-3.0-or-later
// The buttons and lists of the survey day: each does what its words say, at the place given, and
// can be undone.
#include "app/edits/add_survey_day.h"
#include "app/edits/change_settings.h"
#include "app/edits/change_water.h"
#include "app/edits/remove_survey_day.h"
#include "app/edits/set_shoreline.h"
#include "tests/app/days/desk.h"
#include "tests/support/desk_bowl.h"

#include <QCheckBox>
#include <QSignalSpy>
#include <QSpinBox>

#include <cmath>

namespace {

using geo::WaterPoint;

class SurveyHands : public support::Desk {
protected:
    void SetUp() override {
        Desk::SetUp();
        ASSERT_TRUE(edits::changeSettings(open_, "cell", [](water::Settings& settings) {
            settings.cell = units::Length::metres(15.0); // quickly drawn
        }));
        ASSERT_TRUE(edits::addSurveyDay(open_, support::bowlDay()));
        ASSERT_TRUE(edits::setShoreline(open_, support::bowlShore()));
        open_.jobs().finishAll();
    }
    void expectAt(geo::LonLat place, WaterPoint wanted) {
        EXPECT_LT(geo::distance_m(water().frame->toWater(place), wanted), 0.01);
        EXPECT_NEAR(place.lat_deg, 55.2, 0.1) << "not swapped";
        EXPECT_NEAR(place.lon_deg, 3.1, 0.1) << "not swapped";
    }
    QLineEdit& edit(const QString& name) {
        for (QLineEdit* each : day_.findChildren<QLineEdit*>()) {
            if (each->isVisible() && each->accessibleName() == name &&
                qobject_cast<widgets::AmountField*>(each) == nullptr) {
                return *each;
            }
        }
        throw std::logic_error("no line " + name.toStdString());
    }
    QComboBox& choice(const QStringList& items) {
        for (QComboBox* each : day_.findChildren<QComboBox*>()) {
            if (each->isVisible() && each->itemText(0) == items.front() &&
                each->count() == items.size()) {
                return *each;
            }
        }
        throw std::logic_error("no such choice");
    }
};

const QStringList bottoms{"not felt", "soft", "gravel", "rock", "weed"};

TEST_F(SurveyHands, ALeadIsAddedWithItsDepthLevelBottomAndPlace) {
    edits::change(open_, "level", {water::Part::facts},
                  [](water::Water& w) { w.chartLevel = units::WaterLevel::metresOnGauge(1.0); });
    openStep(0);
    EXPECT_FALSE(button("Add").isEnabled());
    edit("Depth").setText("4.0 m");
    edit("Level").setText("1.4");
    EXPECT_FALSE(button("Add").isEnabled()) << "no place yet";
    edit("Place").setText("55.2005 N 3.0990 E");
    choice(bottoms).setCurrentText("gravel");
    ASSERT_TRUE(button("Add").isEnabled());
    button("Add").click();
    ASSERT_EQ(water().leadLine.size(), 1U);
    const auto& lead = water().leadLine[0];
    EXPECT_NEAR(lead.depth.inMetres(), 3.6, 1e-9) << "40 cm above chart level";
    EXPECT_EQ(lead.bottom, soundings::Bottom::gravel);
    EXPECT_NEAR(lead.place.lat_deg, 55.2005, 1e-9);
    EXPECT_NEAR(lead.place.lon_deg, 3.0990, 1e-9);
    EXPECT_EQ(edit("Depth").text(), "");
    auto& table = named<widgets::PlainTable>("Soundings by lead line");
    EXPECT_EQ(rowOf(table, 0), (QStringList{"3.6 m", "gravel", "55.20050 N  3.09900 E"}));
    open_.undoStack().undo();
    EXPECT_TRUE(water().leadLine.empty());
    open_.jobs().finishAll();
}

TEST_F(SurveyHands, ALeadIsPointedAtChangedAndRemoved) {
    openStep(0);
    edit("Depth").setText("3.64 m");
    choice(bottoms).setCurrentText("weed");
    button("Sound on chart").click();
    EXPECT_TRUE(chart_.isAsking());
    EXPECT_TRUE(chart_.prompt().contains("3.64 m"));
    chart_.give(chart::PointMade{{25.0, -40.0}});
    ASSERT_EQ(water().leadLine.size(), 1U);
    expectAt(water().leadLine[0].place, {25.0, -40.0});
    EXPECT_NEAR(water().leadLine[0].depth.inMetres(), 3.64, 1e-9);
    EXPECT_EQ(water().leadLine[0].bottom, soundings::Bottom::weed);
    EXPECT_TRUE(chart_.isAsking()) << "until it is stopped";
    chart_.stopAsking();
    const auto placed = water().leadLine[0];
    QSignalSpy looked(&chart_, &days::ChartLink::lookedAt);
    named<widgets::PlainTable>("Soundings by lead line").selectRow(0);
    EXPECT_EQ(looked.size(), 1);
    EXPECT_EQ(edit("Depth").text(), "3.6 m");
    EXPECT_EQ(edit("Level").text(), "");
    EXPECT_EQ(choice(bottoms).currentText(), "weed");
    choice(bottoms).setCurrentText("rock");
    button("Change").click();
    EXPECT_EQ(water().leadLine[0].bottom, soundings::Bottom::rock);
    EXPECT_EQ(water().leadLine[0].depth, placed.depth) << "what was not typed over stays";
    EXPECT_EQ(water().leadLine[0].place, placed.place);
    edit("Depth").setText("5 m");
    edit("Place").setText("55.2010 N 3.1010 E");
    button("Change").click();
    EXPECT_NEAR(water().leadLine[0].depth.inMetres(), 5.0, 1e-9);
    EXPECT_NEAR(water().leadLine[0].place.lat_deg, 55.2010, 1e-9);
    button("Remove").click();
    EXPECT_TRUE(water().leadLine.empty());
    open_.jobs().finishAll();
}

TEST_F(SurveyHands, ALeadMayReachThreeHundredAndFiftyMetresAndNoMore) {
    openStep(0);
    edit("Place").setText("55.2010 N 3.1010 E");
    for (const auto& [depth, isTaken] : {std::pair("350", true),
                                         {"350.1", false},
                                         {"-0.1", false},
                                         {"0", true},
                                         {"deep", false},
                                         {"", false}}) {
        edit("Depth").setText(depth);
        EXPECT_EQ(button("Add").isEnabled(), isTaken) << depth;
        EXPECT_EQ(button("Sound on chart").isEnabled(), isTaken) << depth;
    }
    edit("Depth").setText("3");
    edit("Level").setText("high");
    EXPECT_FALSE(button("Add").isEnabled());
}

TEST_F(SurveyHands, TheLaunchIsSetWhereOnePoints) {
    openStep(1);
    EXPECT_TRUE(says("No launch set"));
    button("Set launch").click();
    chart_.give(chart::PointMade{{-120.0, 35.0}});
    EXPECT_FALSE(chart_.isAsking());
    ASSERT_TRUE(water().plan.launch);
    expectAt(*water().plan.launch, {-120.0, 35.0});
    EXPECT_TRUE(says("Launch at " + wording::Words::place(*water().plan.launch)));
    open_.undoStack().undo();
    EXPECT_FALSE(water().plan.launch);
    open_.jobs().finishAll();
}

TEST_F(SurveyHands, TheShoreIsTracedReshapedTakenAwayAndGivenIslands) {
    openStep(1);
    const auto before = water().shoreline;
    button("Trace...").click();
    EXPECT_EQ(chart_.tool(), chart::ToolKind::polygon);
    chart_.give(chart::RingMade{{{-250, -200}, {260, -200}, {260, 210}, {-250, 210}}});
    ASSERT_EQ(water().shoreline.size(), 1U);
    expectAt(water().shoreline[0].outer[1], {260.0, -200.0});
    button("Add island...").click();
    chart_.give(chart::RingMade{{{10, 10}, {50, 10}, {30, 50}}});
    ASSERT_EQ(water().shoreline[0].islands.size(), 1U);
    button("Reshape").click();
    EXPECT_EQ(chart_.tool(), chart::ToolKind::shore);
    using Act = chart::ShoreMade::Act;
    chart_.give(chart::ShoreMade{Act::move, {0, 0, 2}, {255.0, 205.0}});
    expectAt(water().shoreline[0].outer[2], {255.0, 205.0});
    const auto corners = water().shoreline[0].outer.size();
    chart_.give(chart::ShoreMade{Act::add, {0, 0, 0}, {0.0, -215.0}});
    EXPECT_EQ(water().shoreline[0].outer.size(), corners + 1);
    expectAt(water().shoreline[0].outer[1], {0.0, -215.0});
    chart_.give(chart::ShoreMade{Act::remove, {0, 0, 1}, {}});
    EXPECT_EQ(water().shoreline[0].outer.size(), corners);
    button("Remove island").click();
    chart_.give(chart::PointMade{{30.0, 20.0}});
    EXPECT_TRUE(water().shoreline[0].islands.empty());
    EXPECT_FALSE(chart_.isAsking());
    button("Take away").click();
    EXPECT_TRUE(water().shoreline.empty());
    EXPECT_FALSE(button("Take away").isEnabled());
    EXPECT_FALSE(button("Reshape").isEnabled());
    EXPECT_TRUE(says("depths near the bank are a guess"));
    while (water().shoreline != before && open_.undoStack().canUndo()) {
        open_.undoStack().undo();
    }
    EXPECT_EQ(water().shoreline, before);
    open_.jobs().finishAll();
}

TEST_F(SurveyHands, ADayIsTakenOutAndComesBack) {
    openStep(0);
    EXPECT_TRUE(button("Remove day").isEnabled());
    button("Remove day").click();
    EXPECT_TRUE(water().days.empty());
    EXPECT_FALSE(button("Remove day").isEnabled());
    EXPECT_TRUE(says("Drop a log of soundings"));
    open_.undoStack().undo();
    EXPECT_EQ(water().days.size(), 1U);
    open_.jobs().finishAll();
}

TEST_F(SurveyHands, WeedIsNotedWithItsGrowthAndItsHeightButNoHeightOfNone) {
    openStep(5);
    auto& kinds = choice({"none", "thin", "thick"});
    EXPECT_EQ(kinds.currentText(), "thick");
    type("Height", "1.2 m");
    for (const auto& [kind, growth] : {std::pair("none", weed::Growth::none),
                                       {"thin", weed::Growth::thin},
                                       {"thick", weed::Growth::thick}}) {
        kinds.setCurrentText(kind);
        button("At places").click();
        EXPECT_TRUE(chart_.prompt().contains(kind));
        const WaterPoint at{10.0 * static_cast<double>(water().weedNotes.size()), 30.0};
        chart_.give(chart::PointMade{at});
        const weed::WeedNote& note = water().weedNotes.back();
        EXPECT_EQ(note.growth, growth);
        expectAt(note.place, at);
        EXPECT_EQ(note.height.has_value(), growth != weed::Growth::none);
        EXPECT_TRUE(!note.height || std::abs(note.height->inMetres() - 1.2) < 1e-9);
    }
    auto& notes = named<widgets::PlainTable>("Weed notes");
    EXPECT_EQ(rowOf(notes, 1), (QStringList{"thin", "1.2 m", "",
                                            wording::Words::place(water().weedNotes[1].place)}));
    chart_.stopAsking();
    notes.setFocus();
    notes.selectRow(1);
    QTest::keyClick(&notes, Qt::Key_Delete);
    ASSERT_EQ(water().weedNotes.size(), 2U);
    EXPECT_EQ(water().weedNotes[1].growth, weed::Growth::thick);
    type("Height", "60.1");
    EXPECT_TRUE(field("Height").isWrong());
    type("Height", "60");
    EXPECT_FALSE(field("Height").isWrong());
    open_.jobs().finishAll();
}

TEST_F(SurveyHands, TracksComeOntoTheChartWithTheStepsThatAreAboutThem) {
    using chart::LayerKind;
    const auto shown = [&](LayerKind kind) { return chart_.content().shown.contains(kind); };
    openStep(0);
    EXPECT_TRUE(shown(LayerKind::soundings));
    EXPECT_FALSE(shown(LayerKind::crossings));
    openStep(1);
    EXPECT_FALSE(shown(LayerKind::soundings));
    openStep(2);
    EXPECT_TRUE(shown(LayerKind::soundings));
    EXPECT_TRUE(shown(LayerKind::crossings));
    openStep(3);
    EXPECT_FALSE(shown(LayerKind::soundings));
    EXPECT_FALSE(shown(LayerKind::crossings));
}

TEST_F(SurveyHands, SoundingsAreSetAsideAndTakenBackOneByOneAndManyAtOnce) {
    ASSERT_TRUE(support::derive(open_));
    openStep(2);
    chart_.selectSounding(chart::SoundingPick{0, 100});
    EXPECT_FALSE(button("Keep this one").isEnabled());
    ASSERT_TRUE(button("Set this one aside").isEnabled());
    button("Set this one aside").click();
    EXPECT_EQ(water().days[0].setAsideByHand, (std::vector<std::size_t>{100}));
    EXPECT_TRUE(button("Keep this one").isEnabled());
    EXPECT_FALSE(button("Set this one aside").isEnabled());
    button("Keep this one").click();
    EXPECT_TRUE(water().days[0].setAsideByHand.empty());
    ASSERT_TRUE(support::derive(open_));
    QSignalSpy happened(&open_, &open_water::OpenWater::happened);
    button("Set aside...").click();
    EXPECT_TRUE(button("Set aside...").isChecked());
    EXPECT_FALSE(button("Take back...").isChecked());
    chart_.giveSoundings(0, {5, 6, 7});
    EXPECT_EQ(water().days[0].setAsideByHand, (std::vector<std::size_t>{5, 6, 7}));
    EXPECT_EQ(happened.last()[0].toString(), "3 set aside.");
    ASSERT_TRUE(support::derive(open_));
    auto& reasons = named<widgets::PlainTable>("");
    EXPECT_EQ(rowOf(reasons, 0), (QStringList{"by hand", "3"}));
    reasons.clearSelection();
    reasons.selectRow(0);
    EXPECT_EQ(chart_.selection().sounding, (chart::SoundingPick{0, 5}));
    EXPECT_TRUE(says("1 of 3: by hand"));
    button("Next").click();
    EXPECT_EQ(chart_.selection().sounding, (chart::SoundingPick{0, 6}));
    button("Previous").click();
    EXPECT_EQ(chart_.selection().sounding, (chart::SoundingPick{0, 5}));
    button("Take back...").click();
    chart_.giveSoundings(0, {6});
    EXPECT_EQ(water().days[0].setAsideByHand, (std::vector<std::size_t>{5, 7}));
    EXPECT_EQ(happened.last()[0].toString(), "1 taken back.");
    open_.jobs().finishAll();
}

TEST_F(SurveyHands, AChosenSectionIsRenamedByItsRow) {
    ASSERT_TRUE(support::derive(open_));
    openStep(6);
    ASSERT_GE(open_.derived().sections->sections.size(), 2U);
    auto& table = named<widgets::PlainTable>("");
    table.selectRow(1);
    EXPECT_EQ(chart_.content().selection.section, 1);
    table.model()->setData(table.model()->index(1, 0), "Heron Bay ");
    EXPECT_TRUE(QTest::qWaitFor([&] { return !water().sectionNames.empty(); }));
    ASSERT_TRUE(support::derive(open_));
    EXPECT_EQ(open_.derived().sections->sections[1].name, "Heron Bay");
    table.clearSelection();
    EXPECT_FALSE(chart_.content().selection.section);
    open_.jobs().finishAll();
}

TEST_F(SurveyHands, LinesAreProposedForTheTimeGivenAndShownOnTheChart) {
    ASSERT_TRUE(support::derive(open_));
    openStep(7);
    EXPECT_FALSE(button("Save as GPX...").isEnabled());
    const geo::LonLat launch = water().frame->toEarth({-200.0, 0.0});
    edits::change(open_, "launch", {water::Part::plan},
                  [&](water::Water& w) { w.plan.launch = launch; });
    open_.jobs().finishAll();
    const auto propose = [&](int minutes) {
        for (auto* spin : day_.findChildren<QSpinBox*>()) {
            if (spin->isVisible()) {
                spin->setValue(minutes);
            }
        }
        button("Propose lines").click();
        open_.jobs().finishAll();
        return chart_.content().nextLines;
    };
    const auto shorter = propose(20);
    ASSERT_TRUE(shorter);
    EXPECT_LE(shorter->duration, std::chrono::minutes(20));
    EXPECT_TRUE(chart_.content().shown.contains(chart::LayerKind::nextLines));
    EXPECT_TRUE(button("Save as GPX...").isEnabled());
    const auto longer = propose(60);
    EXPECT_LE(longer->duration, std::chrono::minutes(60));
    EXPECT_GT(longer->duration, std::chrono::minutes(20));
    QSignalSpy looked(&chart_, &days::ChartLink::lookedAt);
    named<widgets::PlainTable>("").selectRow(0);
    ASSERT_EQ(looked.size(), 1);
    EXPECT_EQ(looked[0][0].value<WaterPoint>(), longer->lines[0].start);
}

/// A day of twelve lines over the bowl, along its rows or across them, on which the sounder showed
/// so much too much.
soundings::SurveyDay dayOfLines(bool isAcross, double tooMuch_m) {
    soundings::SurveyDay day;
    for (int line = 0; line < 12; ++line) {
        day.passStarts.edit().push_back(day.soundings.size());
        for (int k = 0; k < 40; ++k) {
            const double along = -1.0 + 2.0 * k / 39.0;
            const double beside = -1.0 + 2.0 * (line + 0.5) / 12.0;
            const double x = isAcross ? beside : along;
            const double y = isAcross ? along : beside;
            day.soundings.edit().push_back(
                {{3.1 + 0.0038 * x, 55.2 + 0.0019 * y},
                 units::Depth::metres(8.0 + tooMuch_m - 4.0 * std::hypot(x, y)),
                 {}});
        }
    }
    return day;
}

TEST_F(SurveyHands, WhatTheCrossingsAskForIsAddedOnceAgreedAndCanBeTakenBack) {
    soundings::SurveyDay held = dayOfLines(false, 0.0);
    held.gauge = soundings::Gauge::constant(units::WaterLevel::metresOnGauge(0.0));
    ASSERT_TRUE(edits::addSurveyDay(open_, held));
    ASSERT_TRUE(edits::addSurveyDay(open_, dayOfLines(true, 0.3)));
    edits::removeSurveyDay(open_, water().days[0].id);
    ASSERT_TRUE(support::derive(open_));
    openStep(2);
    ASSERT_FALSE(chart_.content().derived.checked->crossings.empty());
    chart_.selectSounding(chart::SoundingPick{1, 39});
    chart_.selectCrossing(0);
    EXPECT_FALSE(chart_.selection().sounding) << "the newer of the two stays chosen";
    EXPECT_EQ(chart_.selection().crossing, 0U);
    EXPECT_EQ(chart_.chosenPlace(), chart_.content().derived.checked->crossings[0].at);
    chart_.selectSounding(chart::SoundingPick{0, 3});
    EXPECT_FALSE(chart_.selection().crossing);
    EXPECT_EQ(chart_.selection().sounding, (chart::SoundingPick{0, 3}));
    ASSERT_FALSE(water().days[1].agreedOffset);
    button("Agree").click();
    ASSERT_TRUE(water().days[1].agreedOffset);
    EXPECT_NEAR(water().days[1].agreedOffset->inMetres(), -0.3, 0.05);
    EXPECT_FALSE(water().days[0].agreedOffset);
    open_.jobs().finishAll();
    QCoreApplication::processEvents();
    EXPECT_TRUE(says("added, as agreed"));
    button("Take back").click();
    EXPECT_FALSE(water().days[1].agreedOffset);
    open_.jobs().finishAll();
}

/// Lines there and back over a wavy bottom, and as many across, by a sounder whose positions come
/// late.
soundings::SurveyDay dayOfLatePositions(const geo::WaterFrame& frame, double delay_s) {
    constexpr double speed_m_s = 2.0;
    constexpr int lines = 7;
    constexpr double length_m = 280.0;
    soundings::SurveyDay day;
    auto now = units::momentFrom("2026-09-05T08:00:00Z", units::Clock()).value();
    for (int line = 0; line < 2 * lines; ++line) {
        day.passStarts.edit().push_back(day.soundings.size());
        const double off_m = -127.0 + 40.0 * (line % lines);
        const auto at = [&](double along_m) {
            const double turned_m = (line % 2 == 0 ? along_m : length_m - along_m) - 0.5 * length_m;
            return line < lines ? WaterPoint{turned_m, off_m} : WaterPoint{off_m, turned_m};
        };
        for (int second = 0; second <= static_cast<int>(length_m / speed_m_s); ++second) {
            const WaterPoint boat = at(speed_m_s * second);
            const double depth_m =
                8.0 + 3.0 * std::sin(boat.x_m / 40.0) * std::cos(boat.y_m / 55.0);
            day.soundings.edit().push_back({frame.toEarth(at(speed_m_s * (second - delay_s))),
                                            units::Depth::metres(depth_m), now});
            now += std::chrono::seconds(1);
        }
        now += std::chrono::minutes(2);
    }
    return day;
}

TEST_F(SurveyHands, PositionsThatComeLateAreMovedOnceAgreedAndBackAgain) {
    ASSERT_TRUE(edits::addSurveyDay(open_, dayOfLatePositions(*water().frame, 1.5)));
    edits::removeSurveyDay(open_, water().days[0].id);
    ASSERT_TRUE(support::derive(open_));
    openStep(2);
    EXPECT_TRUE(says("positions 1.5 s late"));
    ASSERT_FALSE(water().days[0].agreedDelay_s);
    button("Agree").click();
    ASSERT_TRUE(water().days[0].agreedDelay_s);
    EXPECT_NEAR(*water().days[0].agreedDelay_s, 1.5, 0.2);
    EXPECT_FALSE(water().days[0].agreedOffset);
    open_.jobs().finishAll();
    QCoreApplication::processEvents();
    button("Take back").click();
    EXPECT_FALSE(water().days[0].agreedDelay_s);
    open_.jobs().finishAll();
}

} // namespace
