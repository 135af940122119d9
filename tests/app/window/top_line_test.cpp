// SPDX-License-Identifier: GPL-3.0-or-later
// The line above the chart, and the menus: each thing does what its text says, under its key.
#include "app/edits/change_facts.h"
#include "app/edits/set_plan.h"
#include "tests/app/window/window_case.h"

#include <QTest>

#include <QMenu>

#include <algorithm>
#include <array>
#include <map>

namespace {

using chart::LayerKind;
using window_case::Window;

TEST_F(Window, TwoPressesOfUndoInATenthOfASecondAreTwoStepsBack) {
    ASSERT_TRUE(open().create(folder_.filePath("a.gpkg"), "a"));
    window_->show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(window_.get()));
    for (const char* name : {"b", "c"}) {
        edits::changeFacts(open(), "Name water", [&](water::Water& water) { water.name = name; });
    }
    QTest::keyClick(window_.get(), Qt::Key_Z, Qt::ControlModifier);
    QTest::keyClick(window_.get(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(open().water()->name, "a");
    QTest::keyClick(window_.get(), Qt::Key_2, Qt::ControlModifier);
    EXPECT_EQ(days().currentIndex(), 1) << "before the next key is typed";
}

TEST_F(Window, HasEveryActUnderItsKey) {
    std::map<QString, QString> keys;
    for (const QAction* action : window_->actions()) {
        keys[action->text()] = action->shortcut().toString();
    }
    const std::map<QString, QString> wanted{{"New water...", "Ctrl+N"},
                                            {"Open water...", "Ctrl+O"},
                                            {"Name this water...", "Ctrl+Shift+N"},
                                            {"Export...", "Ctrl+E"},
                                            {"Chart on paper...", "Ctrl+Shift+C"},
                                            {"Copy the chart", "Ctrl+Alt+C"},
                                            {"Preview of the chart...", "Ctrl+Alt+P"},
                                            {"Cut through the water", "Ctrl+K"},
                                            {"Light", "Ctrl+Alt+1"},
                                            {"Dark", "Ctrl+Alt+2"},
                                            {"High contrast", "Ctrl+Alt+3"},
                                            {"Larger type", "Ctrl++"},
                                            {"Smaller type", "Ctrl+-"},
                                            {"Normal type", "Ctrl+0"},
                                            {"Whole water", "Ctrl+Shift+1"},
                                            {"Zoom to the section", "Ctrl+Shift+2"},
                                            {"Zoom to the mark", "Ctrl+Shift+3"},
                                            {"Measure", "Ctrl+Shift+K"},
                                            {"Guide", "F1"},
                                            {"Keys and files", ""},
                                            {"About Meremark", ""},
                                            {"Quit", "Ctrl+Q"},
                                            {"Depths", "Ctrl+F1"},
                                            {"Contours", "Ctrl+F2"},
                                            {"Structure", "Ctrl+F3"},
                                            {"Weed", "Ctrl+F4"},
                                            {"Sections", "Ctrl+F5"},
                                            {"Closed water", "Ctrl+F6"},
                                            {"Soundings", "Ctrl+F7"},
                                            {"Crossings", "Ctrl+F8"},
                                            {"Where to sound next", "Ctrl+F9"},
                                            {"Places", "Ctrl+F10"},
                                            {"Stays and fish", "Ctrl+F11"},
                                            {"Marks", "Ctrl+F12"},
                                            {"Rates by place", "Ctrl+Shift+F5"},
                                            {"Backdrop", "Ctrl+Shift+B"},
                                            {"Change since an earlier survey", "Ctrl+Shift+F6"},
                                            {"Longitudes and latitudes", "Ctrl+Shift+G"},
                                            {"Show the hints again", ""}};
    EXPECT_EQ(keys, wanted);
    std::map<QString, QString> buttons;
    for (const QToolButton* button : window_->findChildren<QToolButton*>()) {
        if (!button->shortcut().isEmpty()) {
            buttons[button->text()] = button->shortcut().toString();
        }
    }
    EXPECT_EQ(buttons["Survey day"], "Ctrl+1");
    EXPECT_EQ(buttons["Tomorrow"], "Ctrl+2");
    EXPECT_EQ(buttons["Looking back"], "Ctrl+3");
    EXPECT_EQ(buttons["Undo"], QKeySequence(QKeySequence::Undo).toString());
    EXPECT_EQ(buttons["Redo"], "Ctrl+Y");
    EXPECT_EQ(button("File").toolTip(), "New, open, export, help (F10)");
    EXPECT_EQ(button("View").toolTip(), "Theme, type, and what of the water is seen (F7)");
    EXPECT_EQ(button("On the chart").toolTip(), "What the chart shows (F6)");
    EXPECT_EQ(button("File").menu()->actions().front()->text(), "New water...");
    EXPECT_EQ(button("On the chart").menu()->actions().front()->text(), "Depths");
}

TEST_F(Window, ShowsAndHidesTheLayerThatIsNamed) {
    const std::array<std::pair<const char*, LayerKind>, 14> layers{
        {{"Depths", LayerKind::depth},
         {"Contours", LayerKind::contours},
         {"Structure", LayerKind::structure},
         {"Weed", LayerKind::weed},
         {"Sections", LayerKind::sections},
         {"Closed water", LayerKind::closed},
         {"Soundings", LayerKind::soundings},
         {"Crossings", LayerKind::crossings},
         {"Where to sound next", LayerKind::nextLines},
         {"Places", LayerKind::places},
         {"Stays and fish", LayerKind::log},
         {"Marks", LayerKind::marks},
         {"Backdrop", LayerKind::backdrop},
         {"Change since an earlier survey", LayerKind::change}}};
    for (const auto& [text, kind] : layers) {
        SCOPED_TRACE(text);
        QAction& layer = action(text);
        for (int i = 0; i < 2; ++i) {
            const auto before = canvas().content().shown;
            EXPECT_EQ(layer.isChecked(), before.contains(kind));
            layer.trigger();
            auto expected = before;
            if (expected.erase(kind) == 0) {
                expected.insert(kind);
            }
            EXPECT_EQ(canvas().content().shown, expected);
            EXPECT_EQ(layer.isChecked(), expected.contains(kind));
        }
    }
}

TEST_F(Window, ShowsTheDayThatIsChosen) {
    const std::array titles{"Survey day", "Tomorrow", "Looking back"};
    EXPECT_TRUE(button("Survey day").isChecked());
    for (const int day : {1, 2, 0}) {
        button(titles.at(static_cast<std::size_t>(day))).click();
        EXPECT_TRUE(button(titles.at(static_cast<std::size_t>(day))).isChecked());
        EXPECT_EQ(days().currentIndex(), day);
    }
    for (const int day : {2, 1, 0}) {
        window_->showDay(day);
        for (int each = 0; each < 3; ++each) {
            EXPECT_EQ(button(titles.at(static_cast<std::size_t>(each))).isChecked(), each == day);
        }
        EXPECT_EQ(days().currentIndex(), day);
    }
}

TEST_F(Window, SaysTheLevelOfThePlanWithItsSignInTheUnitChosen) {
    EXPECT_TRUE(hasLabel("Meremark"));
    EXPECT_FALSE(hasLabel("level ±0.00 m"));
    ASSERT_TRUE(open().create(folder_.filePath("small.gpkg"), "Skarrow Water"));
    EXPECT_TRUE(hasLabel("Skarrow Water"));
    EXPECT_TRUE(hasLabel("level ±0.00 m"));
    EXPECT_TRUE(button("m").isChecked());
    EXPECT_FALSE(button("ft").isChecked());
    const auto setLevel = [this](double level_m) {
        edits::setPlan(open(), "Set level", [level_m](marks::Plan& plan) {
            plan.day.levelChange = units::Length::metres(level_m);
        });
    };
    setLevel(-0.35);
    EXPECT_TRUE(hasLabel("level −0.35 m"));
    button("ft").click();
    EXPECT_TRUE(hasLabel("level −1.1 ft")); // 0.35 / 0.3048 = 1.148
    EXPECT_TRUE(button("ft").isChecked());
    EXPECT_FALSE(button("m").isChecked());
    EXPECT_EQ(QSettings().value("units"), "imperial");
    setLevel(0.61);
    EXPECT_TRUE(hasLabel("level +2.0 ft")); // 0.61 / 0.3048 = 2.001
    button("m").click();
    EXPECT_TRUE(hasLabel("level +0.61 m"));
    press("Ctrl+U");
    EXPECT_TRUE(hasLabel("level +2.0 ft"));
    button("ft").click();
    EXPECT_TRUE(button("ft").isChecked()) << "what is chosen already stays so";
    press("Ctrl+U");
    EXPECT_TRUE(hasLabel("level +0.61 m"));
}

TEST_F(Window, UndoesAndRedoesByNameAndOnlyWhereThereIsSomething) {
    ASSERT_TRUE(open().create(folder_.filePath("small.gpkg"), "Skarrow Water"));
    EXPECT_FALSE(button("Undo").isEnabled());
    EXPECT_FALSE(button("Redo").isEnabled());
    edits::changeFacts(open(), "Name water", [](water::Water& water) { water.name = "Other"; });
    EXPECT_TRUE(button("Undo").isEnabled());
    EXPECT_FALSE(button("Redo").isEnabled());
    EXPECT_EQ(button("Undo").toolTip(), "Undo: Name water (Ctrl+Z)");
    EXPECT_TRUE(hasLabel("Other"));
    button("Undo").click();
    EXPECT_EQ(open().water()->name, "Skarrow Water");
    EXPECT_TRUE(hasLabel("Skarrow Water"));
    EXPECT_FALSE(button("Undo").isEnabled());
    EXPECT_EQ(button("Redo").toolTip(), "Redo: Name water (Ctrl+Y)");
    button("Redo").click();
    EXPECT_EQ(open().water()->name, "Other");
}

TEST_F(Window, BearsTheNameOfTheWater) {
    EXPECT_EQ(window_->windowTitle(), "Meremark");
    ASSERT_TRUE(open().create(folder_.filePath("small.gpkg"), "Skarrow Water"));
    EXPECT_EQ(window_->windowTitle(), "Skarrow Water - Meremark");
    edits::changeFacts(open(), "Name water", [](water::Water& water) { water.name = "Other"; });
    EXPECT_EQ(window_->windowTitle(), "Other - Meremark");
    open().undoStack().undo();
    EXPECT_EQ(window_->windowTitle(), "Skarrow Water - Meremark");
}

} // namespace
