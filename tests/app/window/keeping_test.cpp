// SPDX-License-Identifier: GPL-3.0-or-later
// What the window says and asks where something is not kept, and where unnamed waters are found.
#include "app/edits/change_facts.h"
#include "app/edits/set_plan.h"
#include "app/window/kept_words.h"
#include "app/window/sample_water.h"
#include "app/window/start_page.h"
#include "tests/app/window/window_case.h"
#include "tests/support/desk_bowl.h"
#include "tests/support/failing_disk.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QLineEdit>
#include <QMenu>
#include <QMessageBox>
#include <QPushButton>
#include <QTest>
#include <QTimer>

#include <functional>
#include <set>

namespace {

using support::FailingDisk;
using window_case::Window;

void setCount(open_water::OpenWater& open, int count) {
    edits::setPlan(open, "Set count", [count](marks::Plan& plan) { plan.count = count; });
}

water::Water inFile(const QString& path) {
    base::Progress quiet;
    return store::open(path.toStdString()).value()->load(quiet).value();
}

/// The window of somebody who leaves it.
class Leaving : public Window {
protected:
    void SetUp() override {
        Window::SetUp();
        QApplication::setAttribute(Qt::AA_DontUseNativeDialogs);
        open().keeper().setRetryInterval(std::chrono::hours(1));
    }
    void TearDown() override {
        disk_.heal();
        Window::TearDown();
    }
    QLabel& notKept() { return *window_->findChild<QLabel*>(QStringLiteral("notKept")); }
    /// Answers each dialog that opens during the act with the next of these. \return how many
    /// opened.
    std::size_t answer(const std::vector<std::function<void(QDialog&)>>& answers,
                       const std::function<void()>& act) {
        std::size_t asked = 0;
        QTimer asking;
        QDialog* last = nullptr;
        QObject::connect(&asking, &QTimer::timeout, [&] {
            auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
            if (dialog != nullptr && dialog != last) {
                last = dialog;
                const std::size_t now = asked++;
                now < answers.size() ? answers[now](*dialog) : dialog->reject();
            }
        });
        asking.start(0);
        act();
        return asked;
    }
    static std::function<void(QDialog&)> press(const QString& words) {
        return [words](QDialog& dialog) {
            for (QPushButton* button : dialog.findChildren<QPushButton*>()) {
                if (button->text() == words) {
                    button->click();
                    return;
                }
            }
            ADD_FAILURE() << "no " << words.toStdString();
            dialog.reject();
        };
    }
    std::function<void(QDialog&)> choose(const QString& path) {
        return [this, path](QDialog& dialog) {
            disk_.heal();
            auto& files = dynamic_cast<QFileDialog&>(dialog);
            files.setDirectory(QFileInfo(path).path());
            files.findChild<QLineEdit*>(QStringLiteral("fileNameEdit"))
                ->setText(QFileInfo(path).fileName());
            QMetaObject::invokeMethod(&files, "accept");
        };
    }

    FailingDisk disk_;
};

TEST(KeptWords, NameThePartsAndTheReason) {
    using water::Part;
    const base::Error full{base::ErrorKind::unwritableOutput, "the disk is full", "a.gpkg",
                           "make room"};
    EXPECT_EQ(window::notKeptWords({Part::days, Part::plan}, full, true),
              "Not kept yet: survey days, plan. a.gpkg: the disk is full; make room. It is tried "
              "again every few seconds.");
    EXPECT_EQ(window::notKeptWords({Part::log}, full, false),
              "Not kept yet: log. a.gpkg: the disk is full; make room.");
    EXPECT_EQ(window::notKeptWords({Part::log}, std::nullopt, true), "") << "it is under way";
    EXPECT_EQ(window::notKeptWords({}, full, true), "");
    std::set<QString> names;
    for (const Part part : water::allParts) {
        names.insert(window::partsInWords({part}));
    }
    EXPECT_EQ(names.size(), water::allParts.size()) << "each by a name of its own";
    EXPECT_FALSE(names.contains(""));
}

TEST_F(Leaving, TheLineBelowSaysWhatIsNotKeptUntilItIs) {
    ASSERT_TRUE(open().create(folder_.filePath("a.gpkg"), "a"));
    window_->show();
    EXPECT_FALSE(notKept().isVisible());
    disk_.failAfter(0, FailingDisk::Way::isFull);
    setCount(open(), 5);
    open().finishKeeping();
    emit open().happened("Something else.");
    EXPECT_TRUE(notKept().isVisible());
    EXPECT_TRUE(notKept().text().startsWith("Not kept yet: plan. "))
        << notKept().text().toStdString();
    EXPECT_TRUE(notKept().text().contains("the disk is full"));
    disk_.heal();
    open().finishKeeping();
    EXPECT_FALSE(notKept().isVisible());
}

TEST_F(Leaving, NothingIsAskedWhereAllIsKept) {
    ASSERT_TRUE(open().create(folder_.filePath("a.gpkg"), "a"));
    setCount(open(), 5);
    EXPECT_EQ(answer({}, [this] { EXPECT_TRUE(window_->close()); }), 0U);
    EXPECT_EQ(inFile(folder_.filePath("a.gpkg")).plan.count, 5);
}

TEST_F(Leaving, NothingIsAskedOfAWaterWithoutANameAndNothingIsLost) {
    setCount(open(), 5);
    EXPECT_EQ(answer({}, [this] { EXPECT_TRUE(window_->close()); }), 0U);
    const QStringList files = open().unnamedWaters()->files();
    ASSERT_EQ(files.size(), 1);
    EXPECT_EQ(inFile(files[0]).plan.count, 5);
}

TEST_F(Leaving, WithSomethingThatIsNotKeptAsksAndOffersAnotherPlace) {
    const QString path = folder_.filePath("a.gpkg");
    const QString other = folder_.filePath("other.gpkg");
    ASSERT_TRUE(open().create(path, "a"));
    disk_.failAfter(0, FailingDisk::Way::isFull);
    setCount(open(), 5);
    EXPECT_EQ(answer({press("Stay")}, [this] { EXPECT_FALSE(window_->close()); }), 1U);
    EXPECT_EQ(open().water()->plan.count, 5);
    EXPECT_EQ(answer({press("Save in another place..."), choose(other)},
                     [this] { EXPECT_TRUE(window_->close()); }),
              2U);
    EXPECT_EQ(open().path(), other);
    EXPECT_EQ(inFile(other).plan.count, 5);
}

TEST_F(Leaving, LosesWhatIsNotKeptOnlyWhereTheUserSaysSo) {
    const QString path = folder_.filePath("a.gpkg");
    const QString other = folder_.filePath("other.gpkg");
    ASSERT_TRUE(open().create(other, "other"));
    ASSERT_TRUE(open().create(path, "a"));
    disk_.failAfter(0, FailingDisk::Way::isFull);
    setCount(open(), 5);
    EXPECT_EQ(answer({press("Stay")}, [&] { openWater(other); }), 1U);
    EXPECT_EQ(open().path(), path);
    EXPECT_EQ(answer({press("Lose these changes")}, [&] { openWater(other); }), 1U);
    EXPECT_EQ(open().path(), other);
    disk_.heal();
    EXPECT_NE(inFile(path).plan.count, 5);
}

TEST_F(Leaving, AWaterGetsItsNameAndItsPlace) {
    const QString named = folder_.filePath("Heron Bay.gpkg");
    action("Name this water...").trigger();
    EXPECT_TRUE(isWrong()) << "there is nothing to name yet";
    setCount(open(), 5);
    ASSERT_TRUE(open().finishKeeping());
    EXPECT_EQ(window_->windowTitle(), "Water without a name - Meremark");
    const QString before = open().path();
    EXPECT_EQ(answer({choose(folder_.filePath("Heron Bay"))},
                     [this] { action("Name this water...").trigger(); }),
              1U);
    ASSERT_TRUE(open().finishKeeping());
    EXPECT_EQ(open().path(), named);
    EXPECT_EQ(window_->windowTitle(), "Heron Bay - Meremark");
    EXPECT_EQ(inFile(named).name, "Heron Bay");
    EXPECT_EQ(inFile(named).plan.count, 5);
    EXPECT_FALSE(QFileInfo::exists(before));
    EXPECT_EQ(preferences::Preferences().recentWaters(), QStringList{named});
    EXPECT_EQ(said(), "The water lives in " + named + " from now on.");
}

TEST_F(Leaving, WatersThatCanBeOpenedAgainAreListedAtTheStart) {
    auto waters = [](const window::StartPage& page) {
        QList<QToolButton*> found;
        for (QToolButton* each : page.findChildren<QToolButton*>()) {
            if (each->property("choice") == "water" && !each->isHidden()) {
                found.append(each);
            }
        }
        return found;
    };
    auto* none = window_->findChild<window::StartPage*>();
    ASSERT_NE(none, nullptr);
    window_->show();
    EXPECT_TRUE(none->isVisible()) << "it says what to drop";
    EXPECT_TRUE(waters(*none).isEmpty()) << "there is nothing to open yet";
    setCount(open(), 5);
    EXPECT_FALSE(none->isVisible());
    ASSERT_TRUE(open().finishKeeping());
    const QString unnamed = open().path();
    const QString named = folder_.filePath("a.gpkg");
    ASSERT_TRUE(open().create(named, "a"));
    window_ = std::make_unique<window::MainWindow>(unnamed_);
    window_->show();
    auto& page = *window_->findChild<window::StartPage*>();
    EXPECT_TRUE(page.isVisible());
    const auto buttons = waters(page);
    ASSERT_EQ(buttons.size(), 2);
    EXPECT_EQ(buttons[0]->accessibleName(), "a");
    EXPECT_EQ(buttons[0]->toolTip(), named);
    EXPECT_TRUE(buttons[1]->accessibleName().startsWith("Water without a name, of "));
    EXPECT_EQ(buttons[1]->toolTip(), unnamed);
    buttons[1]->click();
    open().opening().finishAll();
    EXPECT_EQ(open().path(), unnamed);
    EXPECT_EQ(open().water()->plan.count, 5);
    EXPECT_FALSE(page.isVisible());
}

TEST_F(Leaving, TheStartShowsEachWaterAsASmallPicture) {
    const QString drawn = folder_.filePath("bowl.gpkg");
    ASSERT_TRUE(open().create(drawn, "The bowl"));
    ASSERT_TRUE(support::layBowl(open()));
    ASSERT_TRUE(open().finishKeeping());
    const QString empty = folder_.filePath("empty.gpkg");
    ASSERT_TRUE(open().create(empty, "empty"));
    window_ = std::make_unique<window::MainWindow>(unnamed_);
    window_->show();
    auto& page = *window_->findChild<window::StartPage*>();
    page.finishPictures();
    const auto coloursOf = [&](const QString& path) {
        std::set<QRgb> colours;
        for (const QToolButton* each : page.findChildren<QToolButton*>()) {
            if (each->toolTip() == path) {
                const QImage picture = each->icon().pixmap(132, 84).toImage();
                for (int x = 0; x < picture.width(); ++x) {
                    colours.insert(picture.pixel(x, picture.height() / 2));
                }
            }
        }
        return colours.size();
    };
    QStringList names;
    for (const QToolButton* each : page.findChildren<QToolButton*>()) {
        names.append(each->accessibleName());
    }
    EXPECT_TRUE(names.contains("The bowl")) << "by its own name, not its file's";
    EXPECT_GT(coloursOf(drawn), 5U) << "depths from bank to bank";
    EXPECT_EQ(coloursOf(empty), 1U) << "paper, as nothing is drawn yet";
}

TEST_F(Leaving, TheSampleComesWholeWithoutAQuestion) {
    const QStringList files =
        window::sampleFiles(QStringLiteral(MEREMARK_SOURCE_DIR "/build/release/bin"));
    ASSERT_EQ(files.size(), 10);
    for (const QString& file : files) {
        EXPECT_TRUE(QFileInfo(file).isFile()) << file.toStdString();
    }
    EXPECT_TRUE(window::sampleFiles(folder_.path()).isEmpty());
}

TEST_F(Leaving, AnUnnamedWaterIsNeverCrowdedOutOfTheListOfThoseOpenedLately) {
    setCount(open(), 5);
    ASSERT_TRUE(open().finishKeeping());
    const QString unnamed = open().path();
    for (int i = 0; i < 9; ++i) {
        ASSERT_TRUE(open().create(folder_.filePath(QStringLiteral("%1.gpkg").arg(i)), "a"));
    }
    const preferences::Preferences preferences;
    EXPECT_FALSE(preferences.recentWaters().contains(unnamed));
    const auto choices = window::waterChoices(preferences, open());
    ASSERT_EQ(choices.size(), 9U);
    EXPECT_EQ(choices.back().path, unnamed);
}

} // namespace
