// SPDX-License-Identifier: GPL-3.0-or-later
// The dialogs behind the menus, answered as a hand would.
#include "tests/app/window/window_case.h"

#include "app/days/refresher.h"
#include "app/edits/change_settings.h"
#include "app/edits/set_plan.h"
#include "app/window/guide_window.h"
#include "tests/support/desk_bowl.h"

#include <QClipboard>
#include <QDialogButtonBox>
#include <QFile>
#include <QFileDialog>
#include <QMenu>
#include <QMessageBox>
#include <QPrintPreviewDialog>
#include <QPrintPreviewWidget>
#include <QPushButton>
#include <QTextBlock>
#include <QTimer>

#include <functional>

namespace {

using window_case::Window;

class Dialogs : public Window {
protected:
    void SetUp() override {
        Window::SetUp();
        QApplication::setAttribute(Qt::AA_DontUseNativeDialogs);
    }
    /// Chooses the act and answers the dialog that it opens.
    template <class Dialog>
    void answer(const QString& act, const std::function<void(Dialog&)>& answered) {
        bool wasThere = false;
        QTimer asking;
        QObject::connect(&asking, &QTimer::timeout, [&] {
            if (auto* dialog = qobject_cast<Dialog*>(QApplication::activeModalWidget())) {
                asking.stop();
                wasThere = true;
                answered(*dialog);
            }
        });
        asking.start(0);
        action(act).trigger();
        EXPECT_TRUE(wasThere) << act.toStdString();
    }
    /// The button of a step, as a hand would press it; it opens a dialog for a file.
    void chooseAtStep(const QString& words, const QString& path) {
        bool wasThere = false;
        QTimer asking;
        QObject::connect(&asking, &QTimer::timeout, [&] {
            if (auto* dialog = qobject_cast<QFileDialog*>(QApplication::activeModalWidget())) {
                asking.stop();
                wasThere = true;
                dialog->setDirectory(QFileInfo(path).path());
                dialog->findChild<QLineEdit*>(QStringLiteral("fileNameEdit"))
                    ->setText(QFileInfo(path).fileName());
                QMetaObject::invokeMethod(dialog, "accept");
            }
        });
        asking.start(0);
        for (QPushButton* button : window_->findChildren<QPushButton*>()) {
            if (button->text() == words) {
                button->click();
            }
        }
        EXPECT_TRUE(wasThere) << words.toStdString();
    }
    /// The bowl with tomorrow planned and shown.
    void layPlannedBowl() {
        choose("New water...", folder_.filePath("bowl.gpkg"));
        ASSERT_TRUE(support::layBowl(open()));
        edits::setPlan(open(), "Set", [](marks::Plan& plan) { plan.count = 3; });
        showPlanned();
    }
    void showPlanned() {
        open().planTomorrow();
        open().jobs().finishAll();
        window_->show();
        days().setCurrentIndex(1);
        do { // until the steps show what was planned
            QCoreApplication::processEvents();
            open().jobs().finishAll();
        } while (!open().isPlanCurrent());
        for (days::Refresher* refresher : window_->findChildren<days::Refresher*>()) {
            refresher->finish();
        }
        ASSERT_TRUE(open().planned());
    }
    void choose(const QString& act, const QString& path) {
        answer<QFileDialog>(act, [&](QFileDialog& dialog) {
            dialog.setDirectory(QFileInfo(path).path());
            dialog.findChild<QLineEdit*>(QStringLiteral("fileNameEdit"))
                ->setText(QFileInfo(path).fileName());
            static_cast<QDialog&>(dialog).setResult(QDialog::Accepted);
            QMetaObject::invokeMethod(&dialog, "accept");
        });
    }
};

TEST_F(Dialogs, MakeANewWaterUnderTheNameThatWasGiven) {
    choose("New water...", folder_.filePath("Heron Bay"));
    EXPECT_EQ(open().path(), folder_.filePath("Heron Bay.gpkg"));
    EXPECT_EQ(open().water()->name, "Heron Bay");
    choose("New water...", folder_.filePath("St. Mary.gpkg"));
    EXPECT_EQ(open().path(), folder_.filePath("St. Mary.gpkg"));
    EXPECT_EQ(open().water()->name, "St. Mary");
    answer<QFileDialog>("New water...", [](QFileDialog& dialog) { dialog.reject(); });
    EXPECT_EQ(open().water()->name, "St. Mary");
}

TEST_F(Dialogs, ASheetThatIsSavedIsKeptToBeWrittenUp) {
    layPlannedBowl();
    const auto planned = open().planned();
    const QString path = folder_.filePath("sheet.pdf");
    chooseAtStep("Save PDF…", path);
    open().jobs().finishAll();
    EXPECT_TRUE(QFile::exists(path));
    ASSERT_EQ(open().water()->sheets.size(), 1U);
    const water::BoatSheet& sheet = open().water()->sheets[0];
    EXPECT_EQ(sheet.day, planned->plan.day.day);
    ASSERT_EQ(sheet.stops.size(), planned->day.stops.size());
    for (std::size_t i = 0; i < sheet.stops.size(); ++i) {
        const marks::DayStop& stop = planned->day.stops[i];
        EXPECT_EQ(sheet.stops[i].rank, stop.rank);
        EXPECT_LE(std::chrono::abs(sheet.stops[i].to - stop.leave), std::chrono::seconds(30));
        EXPECT_LE(std::chrono::abs(sheet.stops[i].from - (stop.leave - stop.stay)),
                  std::chrono::seconds(30));
    }
    EXPECT_TRUE(open().isPlanCurrent()) << "it changes nothing that the plan is made from";
    EXPECT_TRUE(open().finishKeeping());
    open_water::OpenWater again;
    ASSERT_TRUE(again.open(folder_.filePath("bowl.gpkg")));
    EXPECT_EQ(again.water()->sheets, open().water()->sheets);
}

TEST_F(Dialogs, ASheetIsNotKeptInAWaterThatItIsNotOf) {
    layPlannedBowl();
    const QString path = folder_.filePath("sheet.pdf");
    chooseAtStep("Save PDF…", path);
    // It is being written, or is, and nobody has heard of it yet.
    ASSERT_TRUE(open().create(folder_.filePath("other.gpkg"), "other"));
    open().jobs().finishAll();
    EXPECT_TRUE(QFile::exists(path));
    EXPECT_EQ(open().water()->name, "other");
    EXPECT_TRUE(open().water()->sheets.empty());
}

TEST_F(Dialogs, ASheetOfAWaterThatCanOnlyBeReadIsMadeAndSaidNotToBeKept) {
    layPlannedBowl();
    ASSERT_TRUE(open().create(folder_.filePath("other.gpkg"), "other"));
    open_water::OpenWater elsewhere;
    ASSERT_TRUE(elsewhere.open(folder_.filePath("bowl.gpkg")));
    ASSERT_TRUE(open().open(folder_.filePath("bowl.gpkg")));
    ASSERT_TRUE(open().isReadOnly());
    showPlanned();
    const QString path = folder_.filePath("sheet.pdf");
    chooseAtStep("Save PDF…", path);
    open().jobs().finishAll();
    EXPECT_TRUE(QFile::exists(path));
    EXPECT_TRUE(open().water()->sheets.empty());
    EXPECT_TRUE(open().keeper().unkept().empty()) << "or the window could not be left";
    EXPECT_TRUE(said().contains("It is not kept to be written up")) << said().toStdString();
}

TEST_F(Dialogs, OpenTheWaterThatWasChosen) {
    const QString path = folder_.filePath("first.gpkg");
    choose("New water...", path);
    choose("New water...", folder_.filePath("second.gpkg"));
    choose("Open water...", path);
    open().opening().finishAll();
    EXPECT_EQ(open().path(), path);
    answer<QFileDialog>("Open water...", [](QFileDialog& dialog) { dialog.reject(); });
    EXPECT_EQ(open().path(), path);
}

TEST_F(Dialogs, GiveEverythingInTheFolderThatWasChosen) {
    ASSERT_TRUE(open().create(folder_.filePath("bowl.gpkg"), "bowl"));
    ASSERT_TRUE(support::layBowl(open()));
    const QString given = folder_.filePath("given");
    ASSERT_TRUE(QDir().mkpath(given));
    choose("Export...", given);
    open().jobs().finishAll();
    EXPECT_EQ(said(), "Exported into " + given + ".");
    EXPECT_FALSE(isWrong());
    EXPECT_GT(QDir(given).entryList(QDir::Files).size(), 3);
}

TEST_F(Dialogs, SaveTheChartAsAPageThatIsOfNow) {
    ASSERT_TRUE(open().create(folder_.filePath("bowl.gpkg"), "bowl"));
    ASSERT_TRUE(support::layBowl(open()));
    const QString path = folder_.filePath("chart.pdf");
    answer<QFileDialog>("Chart on paper...", [](QFileDialog& dialog) { dialog.reject(); });
    EXPECT_FALSE(QFile::exists(path)) << "nothing was chosen";
    ASSERT_TRUE(edits::changeSettings(
        open(), "Set cell", [](water::Settings& s) { s.cell = units::Length::metres(9.0); }));
    ASSERT_FALSE(open().isCurrent(water::Step::draw));
    choose("Chart on paper...", path);
    open().jobs().finishAll();
    EXPECT_EQ(said(), "The chart is in " + path + ".");
    EXPECT_TRUE(open().isCurrent(water::Step::draw)) << "an old chart comes on no paper";
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.read(5) == "%PDF-");
}

TEST_F(Dialogs, BeginInTheFolderOfTheLastFileOfTheirKind) {
    ASSERT_TRUE(QDir(folder_.path()).mkdir("waters"));
    const QString waters = folder_.filePath("waters");
    choose("New water...", waters + "/a.gpkg");
    const auto beginsIn = [this](const QString& act) {
        QString folder;
        answer<QFileDialog>(act, [&](QFileDialog& dialog) {
            folder = dialog.directory().path();
            dialog.reject();
        });
        return folder;
    };
    EXPECT_EQ(beginsIn("Open water..."), waters);
    EXPECT_EQ(beginsIn("New water..."), waters);
    ASSERT_TRUE(support::layBowl(open()));
    EXPECT_NE(beginsIn("Chart on paper..."), waters) << "what is given away has its own";
    choose("Chart on paper...", folder_.filePath("chart.pdf"));
    open().jobs().finishAll();
    EXPECT_EQ(beginsIn("Chart on paper..."), folder_.path());
    EXPECT_EQ(beginsIn("Open water..."), waters);
}

TEST_F(Dialogs, SaveTheChartAtTheScaleThatWasChosen) {
    ASSERT_TRUE(open().create(folder_.filePath("bowl.gpkg"), "bowl"));
    ASSERT_TRUE(support::layBowl(open()));
    QMenu* scales = nullptr;
    for (QAction* each : button("File").menu()->actions()) {
        scales = each->text() == "Chart at a scale" ? each->menu() : scales;
    }
    ASSERT_NE(scales, nullptr);
    QAction* wanted = nullptr;
    for (QAction* each : scales->actions()) {
        wanted = each->text() == "1 : 5,000..." ? each : wanted;
    }
    ASSERT_NE(wanted, nullptr);
    for (const char* name : {"chart.png", "chart.svg"}) {
        const QString path = folder_.filePath(name);
        wanted->setText(name); // So that the hand finds it among the acts of the window.
        window_->addAction(wanted);
        choose(name, path);
        open().jobs().finishAll();
        EXPECT_EQ(said(), "The chart is in " + path + ".");
        EXPECT_TRUE(QFile::exists(path));
    }
    const QImage picture(folder_.filePath("chart.png"));
    // The bowl is 508 m across, which at 1 : 5,000 is 102 mm; beside it lie key and margins.
    const double width_mm = 1000.0 * picture.width() / picture.dotsPerMeterX();
    EXPECT_GT(width_mm, 102.0);
    EXPECT_LT(width_mm, 180.0);
}

/// How many pages the preview that `act` opens shows.
int pagesOfPreview(const std::function<void()>& act) {
    int pages = -1;
    QTimer asking;
    QObject::connect(&asking, &QTimer::timeout, [&] {
        if (auto* dialog = qobject_cast<QPrintPreviewDialog*>(QApplication::activeModalWidget())) {
            asking.stop();
            auto* preview = dialog->findChild<QPrintPreviewWidget*>();
            preview->updatePreview();
            pages = preview->pageCount();
            dialog->reject();
        }
    });
    asking.start(0);
    act();
    return pages;
}

TEST_F(Dialogs, ShowSheetAndChartAsTheyWillBePrintedAlsoWithoutAPrinter) {
    EXPECT_EQ(pagesOfPreview([this] { action("Preview of the chart...").trigger(); }), -1);
    EXPECT_TRUE(isWrong()) << "there is none yet";
    layPlannedBowl();
    EXPECT_EQ(pagesOfPreview([this] { action("Preview of the chart...").trigger(); }), 1);
    QPushButton* preview = nullptr;
    for (QPushButton* each : window_->findChildren<QPushButton*>()) {
        preview = each->text() == "Preview…" ? each : preview;
    }
    ASSERT_NE(preview, nullptr);
    EXPECT_EQ(pagesOfPreview([preview] { preview->click(); }), 2) << "front and back";
    EXPECT_TRUE(open().water()->sheets.empty()) << "nothing was printed, nothing is to write up";
}

TEST_F(Dialogs, PutTheChartOnTheClipboardAsAPicture) {
    QGuiApplication::clipboard()->clear();
    action("Copy the chart").trigger();
    EXPECT_TRUE(isWrong()) << "there is none yet";
    ASSERT_TRUE(open().create(folder_.filePath("bowl.gpkg"), "bowl"));
    ASSERT_TRUE(support::layBowl(open()));
    action("Copy the chart").trigger();
    open().jobs().finishAll();
    EXPECT_EQ(QGuiApplication::clipboard()->image().size(), QSize(1600, 1000));
    EXPECT_FALSE(isWrong());
}

TEST_F(Dialogs, CopyNoMarksOfAPlanOfBefore) {
    ASSERT_TRUE(open().create(folder_.filePath("bowl.gpkg"), "bowl"));
    ASSERT_TRUE(support::layBowl(open()));
    window_->show();
    window_->showDay(1); // which shows the marks
    open().planTomorrow();
    open().jobs().finishAll();
    ASSERT_TRUE(open().planned());
    edits::setPlan(open(), "Set scope", [](marks::Plan& plan) { plan.tackle.scope = 5.0; });
    ASSERT_FALSE(open().isPlanCurrent());
    action("Copy the chart").trigger();
    open().jobs().finishAll();
    EXPECT_TRUE(open().isPlanCurrent()) << "ropes of another scope would be in the picture";
    EXPECT_FALSE(QGuiApplication::clipboard()->image().isNull());
}

TEST_F(Dialogs, SayWhatTheProgramIsAndIsNot) {
    answer<QMessageBox>("About Meremark", [](QMessageBox& box) {
        EXPECT_TRUE(
            box.text().contains("Not for navigation. Local rules and the fishery's staff go "
                                "first."));
        EXPECT_TRUE(box.text().contains("GPL-3.0-or-later"));
        box.reject();
    });
}

TEST_F(Dialogs, ShowThePageOfKeysAsAChapterOfTheGuide) {
    action("Keys and files").trigger();
    const auto* page = window_->findChild<window::GuidePage*>();
    ASSERT_NE(page, nullptr);
    EXPECT_TRUE(page->isReadOnly());
    EXPECT_EQ(page->chapter(), "keys");
    EXPECT_EQ(page->document()->begin().text(), "Keys and files");
    EXPECT_TRUE(page->toPlainText().contains("undo, redo: everything can be undone"));
}

TEST_F(Dialogs, TheGuideBeginsAtItsBeginningBeforeThereIsAWater) {
    action("Guide").trigger();
    EXPECT_EQ(window_->findChild<window::GuidePage*>()->chapter(), "start");
}

TEST_F(Window, LooksLikePaperAndInk) {
    const QString sheet = qApp->styleSheet();
    EXPECT_FALSE(sheet.isEmpty());
    EXPECT_FALSE(sheet.contains('@')) << "a colour without a word";
    const chart::Palette& p = chart::Palette::screen();
    EXPECT_TRUE(sheet.contains("QLabel#said[wrong=\"true\"] { color: " + p.rust.name()));
    EXPECT_TRUE(sheet.contains("QLabel#waterName { font-size: 15.0pt; font-weight: 600; color: " +
                               p.ink.name()));
    const QPalette palette = QApplication::palette();
    EXPECT_EQ(palette.color(QPalette::WindowText), p.ink);
    EXPECT_EQ(palette.color(QPalette::Text), p.ink);
    EXPECT_EQ(palette.color(QPalette::Window), p.card);
    EXPECT_EQ(palette.color(QPalette::Base), p.field);
    EXPECT_EQ(palette.color(QPalette::Disabled, QPalette::Text), p.faintInk);
    EXPECT_EQ(palette.color(QPalette::HighlightedText), p.card);
    EXPECT_EQ(palette.color(QPalette::Highlight), p.ink);
}

} // namespace
