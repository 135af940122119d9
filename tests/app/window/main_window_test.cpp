// SPDX-License-Identifier: GPL-3.0-or-later
// The window as a whole: waters opened and refused, what the bottom line says, and what chart, side
// view and days tell each other.
#include "app/chart/read_out.h"
#include "app/days/tomorrow/tomorrow_day.h"
#include "app/edits/add_survey_day.h"
#include "app/edits/set_shoreline.h"
#include "app/side_view/side_view.h"
#include "core/store/connection.h"
#include "tests/app/window/window_case.h"

#include "app/edits/set_plan.h"
#include "tests/support/desk_bowl.h"
#include "tests/support/failing_disk.h"

#include <QDropEvent>
#include <QFileInfo>
#include <QKeyEvent>
#include <QMenu>
#include <QMimeData>
#include <QProgressBar>
#include <QTest>

namespace {

using chart::ToolKind;
using window_case::Window;

void fileOf(const QString& path, const std::string& name, const std::string& sql = {}) {
    water::Water water;
    water.name = name;
    base::Progress quiet;
    ASSERT_TRUE(
        store::create(path.toStdString()).value()->save(water, water::allParts, quiet).has_value());
    if (!sql.empty()) {
        store::Connection::open(path.toStdString(), store::Connection::Access::existing)
            .value()
            ->execute(sql);
    }
}

TEST_F(Window, SaysHowToBegin) {
    EXPECT_EQ(said(), "Drop a log of soundings or a water file on the window to begin.");
    EXPECT_FALSE(isWrong());
}

TEST_F(Window, OpensAWaterAndSaysSo) {
    const QString path = folder_.filePath("a.gpkg");
    fileOf(path, "Skarrow Water");
    openWater(path);
    EXPECT_EQ(said(), "Opened " + path + ".");
    EXPECT_FALSE(isWrong());
    EXPECT_EQ(window_->windowTitle(), "Skarrow Water - Meremark");
    EXPECT_EQ(preferences::Preferences().recentWaters(), QStringList{path});
}

TEST_F(Window, SaysWhyAWaterCannotBeOpenedAndKeepsTheOneThatIs) {
    const QString path = folder_.filePath("a.gpkg");
    fileOf(path, "Skarrow Water");
    openWater(path);
    fileOf(folder_.filePath("damaged.gpkg"), "damaged", "UPDATE settings SET value=x'00'");
    QFile foreign(folder_.filePath("foreign.gpkg"));
    ASSERT_TRUE(foreign.open(QIODevice::WriteOnly));
    foreign.write("lon,lat\n");
    foreign.close();
    for (const auto& [name, why] :
         {std::pair("nowhere.gpkg", "there is no such water file; check the name"),
          std::pair("damaged.gpkg",
                    "column value holds something that is no text; take a copy that "
                    "is whole"),
          std::pair("foreign.gpkg",
                    "this is no water file; give a file that Meremark made, or bring "
                    "its soundings in as survey days")}) {
        openWater(folder_.filePath(name));
        EXPECT_EQ(said(), folder_.filePath(name) + ": " + why);
        EXPECT_TRUE(isWrong());
        EXPECT_EQ(open().path(), path);
        EXPECT_EQ(window_->windowTitle(), "Skarrow Water - Meremark");
    }
    EXPECT_EQ(preferences::Preferences().recentWaters(), QStringList{path});
    openWater(path);
    EXPECT_FALSE(isWrong()) << "what is well is no longer said in red";
}

TEST_F(Window, SaysThatAWaterCanOnlyBeRead) {
    const QString path = folder_.filePath("a.gpkg");
    fileOf(path, "Skarrow Water");
    support::FailingDisk disk;
    disk.forbidWriting();
    openWater(path);
    EXPECT_EQ(said(), path + " can only be read: nothing you change will be kept.");
    window_.reset();
}

TEST_F(Window, OffersTheWatersOpenedLatelyTheLastOneFirst) {
    QMenu* recent = nullptr;
    for (QAction* each : button("File").menu()->actions()) {
        recent = each->text() == "Open again" ? each->menu() : recent;
    }
    ASSERT_NE(recent, nullptr);
    emit recent->aboutToShow();
    ASSERT_EQ(recent->actions().size(), 1);
    EXPECT_EQ(recent->actions()[0]->text(), "nothing yet");
    EXPECT_FALSE(recent->actions()[0]->isEnabled());
    const QString a = folder_.filePath("a.gpkg");
    const QString b = folder_.filePath("b.gpkg");
    fileOf(a, "a");
    fileOf(b, "b");
    openWater(a);
    openWater(b);
    emit recent->aboutToShow();
    ASSERT_EQ(recent->actions().size(), 2);
    EXPECT_EQ(recent->actions()[0]->text(), b);
    EXPECT_EQ(recent->actions()[1]->text(), a);
    recent->actions()[1]->trigger();
    open().opening().finishAll();
    EXPECT_EQ(open().path(), a);
}

TEST_F(Window, TakesAWaterFileThatIsDropped) {
    const QString path = folder_.filePath("a.GPKG");
    fileOf(path, "dropped");
    const auto drop = [this](const QList<QUrl>& urls) {
        QMimeData data;
        data.setUrls(urls);
        QDragEnterEvent enter({5, 5}, Qt::CopyAction, &data, Qt::LeftButton, {});
        enter.ignore();
        QApplication::sendEvent(window_.get(), &enter);
        EXPECT_TRUE(enter.isAccepted());
        QDropEvent event({5, 5}, Qt::CopyAction, &data, Qt::LeftButton, {});
        QApplication::sendEvent(window_.get(), &event);
    };
    drop({QUrl::fromLocalFile(path)});
    open().opening().finishAll();
    EXPECT_EQ(open().path(), path);
    EXPECT_EQ(open().water()->name, "dropped");
    QMimeData words;
    words.setText("words");
    QDragEnterEvent enter({5, 5}, Qt::CopyAction, &words, Qt::LeftButton, {});
    enter.ignore();
    QApplication::sendEvent(window_.get(), &enter);
    EXPECT_FALSE(enter.isAccepted());
    // Anything else is taken as something for the survey day.
    window_->showDay(2);
    drop({QUrl::fromLocalFile(QStringLiteral(MEREMARK_SAMPLE_DIR "/files/lead-line.csv")),
          QUrl::fromLocalFile(path)});
    QTRY_VERIFY_WITH_TIMEOUT(days().currentIndex() == 0, 60'000);
    EXPECT_EQ(open().path(), path);
}

class WindowOnABowl : public Window {
protected:
    void SetUp() override {
        Window::SetUp();
        ASSERT_TRUE(open().create(folder_.filePath("bowl.gpkg"), "bowl"));
        ASSERT_TRUE(support::layBowl(open()));
        window_->show();
        // The panels come with the next turn of the event loop, and count in a job of their own.
        QCoreApplication::processEvents();
        open().jobs().finishAll();
    }
};

TEST_F(WindowOnABowl, SaysWhatWasDrawnAndWhatWasPlannedAndWhatIsNext) {
    const auto& derived = open().derived();
    const QString drawn = QStringLiteral("Drawn: %L1 cells of 6.0 m, %L2 sections. Next: ")
                              .arg(derived.drawn->report.cells)
                              .arg(derived.sections->sections.size());
    EXPECT_EQ(said(), drawn + "choose marks under Tomorrow.");
    open().planTomorrow();
    open().jobs().finishAll();
    EXPECT_TRUE(said().contains("Strength of the wind: not said")) << said().toStdString();
    EXPECT_TRUE(isWrong());
    edits::setPlan(open(), "Set wind", [](marks::Plan& plan) {
        plan.day.wind = {units::Bearing::degrees(225.0), units::Speed::metresPerSecond(4.0)};
    });
    open().planTomorrow();
    open().jobs().finishAll();
    const auto planned = open().planned();
    ASSERT_NE(planned, nullptr);
    EXPECT_EQ(said(),
              QStringLiteral("Marks ranked for %1: %L2 places looked at, the best %L3 kept. Next: "
                             "the sheet.")
                  .arg(wording::Words::day(planned->plan.day.day))
                  .arg(planned->looked)
                  .arg(planned->marks.size()));
    ASSERT_TRUE(edits::setShoreline(open(), {}));
    ASSERT_TRUE(support::derive(open()));
    EXPECT_TRUE(said().endsWith("Next: bring in a shoreline.")) << said().toStdString();
}

TEST_F(WindowOnABowl, TellsOfFailuresInRed) {
    base::Error error{base::ErrorKind::unwritableOutput, "the disk is full", "a.gpkg", "make room"};
    emit open().failed(error);
    EXPECT_EQ(said(), "a.gpkg: the disk is full; make room");
    EXPECT_TRUE(isWrong());
    emit open().happened("All is well.");
    EXPECT_EQ(said(), "All is well.");
    EXPECT_FALSE(isWrong());
}

TEST_F(WindowOnABowl, SaysWhatRunsAndStopsItOnTheButtonAndOnEscape) {
    auto& bar = *window_->findChild<QProgressBar*>();
    auto& stop = button("Stop");
    EXPECT_FALSE(bar.isVisible());
    for (const bool byKey : {false, true}) {
        bool wasStopped = false;
        open().jobs().start<void>(
            "Counting fish",
            [&wasStopped](base::Progress& progress) -> base::Result<void> {
                while (!progress.stopAsked()) {
                    progress.tell(0.375);
                }
                wasStopped = true;
                return {};
            },
            [](const base::Result<void>&) {});
        EXPECT_TRUE(stop.isVisible());
        EXPECT_TRUE(label("Counting fish").isVisible());
        EXPECT_EQ(bar.value(), 0);
        QTRY_VERIFY_WITH_TIMEOUT(bar.value() == 38, 60'000);
        if (byKey) {
            QTest::keyClick(window_.get(), Qt::Key_Escape);
        } else {
            stop.click();
        }
        open().jobs().finishAll();
        EXPECT_TRUE(wasStopped);
        EXPECT_FALSE(stop.isVisible());
        EXPECT_FALSE(bar.isVisible());
    }
}

TEST_F(WindowOnABowl, GoesOnSayingWhatRunsWhereOneThingEndsInAnother) {
    const auto isSaid = std::make_shared<bool>(false);
    open().jobs().start<void>(
        "first", [](base::Progress&) { return base::Result<void>(); },
        [this](const base::Result<void>&) {
            open().jobs().start<void>(
                "second",
                [](base::Progress& progress) -> base::Result<void> {
                    while (!progress.stopAsked()) {
                    }
                    return {};
                },
                [](const base::Result<void>&) {});
        });
    QObject::connect(&open().jobs(), &jobs::JobRunner::finished, window_.get(), [this, isSaid] {
        *isSaid = *isSaid || (label("second").isVisible() && button("Stop").isVisible());
        open().jobs().cancelAll();
    });
    open().jobs().finishAll();
    EXPECT_TRUE(*isSaid);
    EXPECT_FALSE(button("Stop").isVisible());
}

TEST_F(WindowOnABowl, CutsThroughTheWaterAndPutsThePenDown) {
    auto& side = *window_->findChild<side_view::SideView*>();
    action("Cut through the water").trigger();
    EXPECT_EQ(canvas().tool(), ToolKind::cutLine);
    EXPECT_EQ(said(), "Draw a line on the chart: the cut along it stands below.");
    QTest::keyClick(window_.get(), Qt::Key_Escape);
    EXPECT_EQ(canvas().tool(), ToolKind::pan);
    // Shared, as the window tells of it once more when it goes.
    const auto cut = std::make_shared<geo::Path>();
    QObject::connect(&side, &side_view::SideView::cutChanged,
                     [cut](const geo::Path& path) { *cut = path; });
    action("Cut through the water").trigger();
    emit canvas().made(chart::LineMade{{-50.0, 10.0}, {60.0, 20.0}});
    EXPECT_EQ(canvas().tool(), ToolKind::pan);
    ASSERT_GE(cut->size(), 2U);
    EXPECT_EQ(cut->front(), (geo::WaterPoint{-50.0, 10.0}));
    EXPECT_EQ(cut->back(), (geo::WaterPoint{60.0, 20.0}));
}

TEST_F(WindowOnABowl, ReadsOutWhatLiesUnderThePointerInBothViews) {
    auto& side = *window_->findChild<side_view::SideView*>();
    auto& readOut = *window_->findChild<QLabel*>(QStringLiteral("readOut"));
    const QString here = chart::readOutAt(canvas().content(), {10.0, 0.0}).line();
    ASSERT_FALSE(here.isEmpty());
    emit canvas().pointedAt(geo::WaterPoint{10.0, 0.0});
    EXPECT_EQ(readOut.text(), here);
    emit canvas().pointedAt(std::nullopt);
    EXPECT_EQ(readOut.text(), " ");
    emit side.pointedAt(geo::WaterPoint{10.0, 0.0});
    EXPECT_EQ(readOut.text(), here);
    emit side.pointedAt(std::nullopt);
    EXPECT_EQ(readOut.text(), " ");
}

TEST_F(WindowOnABowl, LeadsFromAClickToWhatWasClicked) {
    open().planTomorrow();
    open().jobs().finishAll();
    ASSERT_GE(open().planned()->marks.size(), 2U);
    auto& side = *window_->findChild<side_view::SideView*>();
    emit canvas().markClicked(2);
    EXPECT_EQ(days().currentIndex(), 1);
    EXPECT_EQ(canvas().content().selection.mark, std::optional(2));
    emit canvas().sectionClicked(1);
    EXPECT_EQ(canvas().content().selection.section, std::optional(1));
    EXPECT_FALSE(side.showsTrack());
}

TEST_F(Window, GivesNothingBeforeTheWaterIsDrawn) {
    ASSERT_TRUE(open().create(folder_.filePath("small.gpkg"), "small"));
    action("Export...").trigger();
    EXPECT_EQ(said(), "There is nothing to give before the water is drawn.");
    EXPECT_TRUE(isWrong());
    action("Chart on paper...").trigger();
    EXPECT_EQ(said(), "There is no chart before the water is drawn.");
    EXPECT_TRUE(isWrong());
}

} // namespace
