// SPDX-License-Identifier: GPL-3.0-or-later
// What the hand does at the window: the menu under the right button, the wind, zooming, measuring.
#include "app/days/chart_link.h"
#include "app/days/looking_back/looking_back_day.h"
#include "app/days/step_panel.h"
#include "app/days/tomorrow/tomorrow_day.h"
#include "app/edits/set_plan.h"
#include "app/wording/words.h"
#include "tests/app/window/window_case.h"
#include "tests/support/desk_bowl.h"

#include <QClipboard>
#include <QMenu>
#include <QTest>
#include <QTimer>

#include <functional>

namespace {

using window_case::Window;

class AtHand : public Window {
protected:
    void SetUp() override {
        Window::SetUp();
        ASSERT_TRUE(open().create(folder_.filePath("bowl.gpkg"), "bowl"));
        ASSERT_TRUE(support::layBowl(open()));
        window_->resize(1280, 800);
        window_->show();
        window_->showDay(1);
        open().planTomorrow();
        open().jobs().finishAll();
        QCoreApplication::processEvents();
        ASSERT_TRUE(open().planned());
        ASSERT_FALSE(open().planned()->marks.empty());
    }
    /// The right button there; then the act with these words.
    void chooseAt(geo::WaterPoint place, const QString& words) {
        bool wasThere = false;
        QStringList offered;
        QTimer asking;
        QObject::connect(&asking, &QTimer::timeout, [&] {
            auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
            if (menu == nullptr) {
                return;
            }
            asking.stop();
            for (QAction* act : menu->actions()) {
                offered.append(act->text());
                if (act->text().startsWith(words)) {
                    wasThere = true;
                    act->trigger();
                }
            }
            menu->close();
        });
        asking.start(0);
        emit canvas().menuAsked(place, QPoint(300, 300));
        QCoreApplication::processEvents();
        EXPECT_TRUE(wasThere) << words.toStdString() << " of " << offered.join("; ").toStdString();
    }
    [[nodiscard]] const marks::Mark& best() { return open().planned()->marks.front(); }
    [[nodiscard]] geo::WaterPoint middle() {
        return canvas().viewFrame().toWater(QRectF(canvas().rect()).center());
    }
};

TEST_F(AtHand, TheMenuCopiesThePositionUnderThePointer) {
    const geo::WaterPoint place = middle();
    chooseAt(place, "Copy position");
    EXPECT_EQ(QGuiApplication::clipboard()->text(),
              wording::Words::place(open().water()->frame->toEarth(place)));
    chooseAt(place, "Copy what is known here");
    EXPECT_TRUE(QGuiApplication::clipboard()->text().contains(" m"));
}

TEST_F(AtHand, TheMenuMakesAnOwnMarkAndKeepsAndLetsGoOfOne) {
    const geo::WaterPoint place{middle().x_m + 60.0, middle().y_m - 40.0};
    chooseAt(place, "Own mark here");
    ASSERT_EQ(open().water()->pinnedMarks.size(), 1U);
    EXPECT_LT(geo::distance_m(open().water()->frame->toWater(open().water()->pinnedMarks[0].place),
                              place),
              0.1);
    open().undoStack().undo();
    EXPECT_TRUE(open().water()->pinnedMarks.empty());
    open().jobs().finishAll();
    QCoreApplication::processEvents();
    chooseAt(best().place, QStringLiteral("Keep mark %1").arg(best().rank));
    EXPECT_EQ(open().water()->pinnedMarks.size(), 1U);
}

TEST_F(AtHand, TheWindIsTurnedOnTheChartAndCanBeUndone) {
    const auto before = open().water()->plan.day.wind;
    emit canvas().windDropped(units::Bearing::degrees(225.0));
    ASSERT_TRUE(open().water()->plan.day.wind.from);
    EXPECT_EQ(open().water()->plan.day.wind.from->inDegrees(), 225.0);
    EXPECT_EQ(open().water()->plan.day.wind.speed, before.speed) << "as strong as it was";
    EXPECT_EQ(open().undoStack().undoText(), "Turn the wind");
    open().undoStack().undo();
    EXPECT_EQ(open().water()->plan.day.wind, before);
}

TEST_F(AtHand, ZoomsToTheWaterTheSectionAndTheMark) {
    const chart::ViewFrame whole = canvas().viewFrame();
    action("Zoom to the section").trigger();
    EXPECT_TRUE(isWrong()) << "none is chosen";
    EXPECT_EQ(canvas().viewFrame(), whole);
    emit canvas().sectionClicked(0);
    action("Zoom to the section").trigger();
    const auto& section = open().derived().sections->sections[0];
    EXPECT_TRUE(canvas().viewFrame().box().holds(section.middle));
    for (const geo::WaterPoint corner : section.pieces.front().outer) {
        EXPECT_TRUE(canvas().viewFrame().box().holds(corner));
    }
    emit canvas().markClicked(best().rank);
    action("Zoom to the mark").trigger();
    EXPECT_GT(canvas().viewFrame().pixelsPerMetre(), whole.pixelsPerMetre());
    EXPECT_TRUE(canvas().viewFrame().box().holds(best().anchors.bow.place));
    action("Whole water").trigger();
    EXPECT_EQ(canvas().viewFrame(), whole);
}

TEST_F(AtHand, MeasuresUntilEscape) {
    action("Measure").trigger();
    EXPECT_EQ(canvas().tool(), chart::ToolKind::measure);
    EXPECT_TRUE(said().startsWith("Click from place to place"));
    QTest::keyClick(window_.get(), Qt::Key_Escape);
    EXPECT_EQ(canvas().tool(), chart::ToolKind::pan);
}

TEST_F(AtHand, KeysGoWhereTheHandIs) {
    window_->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(window_.get()));
    canvas().setFocus();
    window_->showDay(2);
    EXPECT_EQ(QApplication::focusWidget(), &canvas()) << "who works on the chart stays at it";
    window_->findChild<days::looking_back::LookingBackDay*>()->steps().giveKeys();
    button("Survey day").click();
    auto& steps = window_->findChild<days::survey_day::SurveyDay*>()->steps();
    EXPECT_TRUE(steps.isAncestorOf(QApplication::focusWidget()));
}

} // namespace
