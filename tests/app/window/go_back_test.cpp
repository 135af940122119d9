// SPDX-License-Identifier: GPL-3.0-or-later
// Copies at the desk: taken by themselves, listed at the start, and gone back to.
#include "app/window/go_back.h"

#include "app/edits/change_facts.h"
#include "core/store/connection.h"
#include "tests/app/window/window_case.h"
#include "tests/support/desk_bowl.h"

#include <QDialogButtonBox>
#include <QFileDialog>
#include <QListWidget>
#include <QPushButton>
#include <QTimer>

#include <functional>

namespace {

using window_case::Window;

class GoingBack : public Window {
protected:
    void SetUp() override {
        Window::SetUp();
        // A day's work, and what was done of it an hour later.
        ASSERT_TRUE(open().create(path_, "bowl"));
        ASSERT_TRUE(support::layBowl(open()));
        ASSERT_TRUE(open().finishKeeping());
        taken_ =
            copies().take(path_.toStdString(), units::Moment(std::chrono::hours(500'000))).value();
        edits::changeFacts(open(), QStringLiteral("Name"),
                           [](water::Water& water) { water.name = "Spoilt"; });
        ASSERT_TRUE(open().finishKeeping());
        // The next day, at the start.
        window_.reset();
        window_ = std::make_unique<window::MainWindow>(unnamed_);
    }
    [[nodiscard]] store::Copies& copies() { return copies_; }
    /// Answers the dialog that `act` opens.
    void answer(const std::function<void()>& act,
                const std::function<void(window::GoBack&)>& answered) {
        bool wasThere = false;
        QTimer asking;
        QObject::connect(&asking, &QTimer::timeout, [&] {
            if (auto* dialog = qobject_cast<window::GoBack*>(QApplication::activeModalWidget())) {
                asking.stop();
                wasThere = true;
                answered(*dialog);
            }
        });
        asking.start(0);
        act();
        EXPECT_TRUE(wasThere);
    }
    static QListWidgetItem& itemOf(window::GoBack& dialog, const store::Copy& copy,
                                   const store::Copies& copies, const QString& path) {
        const auto known = copies.of(path.toStdString());
        int row = 0;
        while (known.at(static_cast<std::size_t>(row)).taken != copy.taken) {
            ++row;
        }
        return *dialog.findChild<QListWidget*>()->item(row);
    }

    const QString path_ = folder_.filePath(QStringLiteral("bowl.gpkg"));
    store::Copies copies_{folder_.filePath(QStringLiteral("copies")).toStdString()};
    store::Copy taken_;
};

TEST_F(GoingBack, FromTheStartShowsWhatEachCopyHoldsAndLaysItInPlace) {
    answer([this] { button("Go back...").click(); },
           [this](window::GoBack& dialog) {
               dialog.finishPictures();
               QListWidgetItem& item = itemOf(dialog, taken_, copies_, path_);
               EXPECT_TRUE(item.text().endsWith("as many of everything as now"))
                   << item.text().toStdString();
               // Water is painted: the picture is not of one colour.
               const QImage picture = item.icon().pixmap(208, 140).toImage();
               EXPECT_NE(picture.pixel(picture.width() / 2, picture.height() / 2),
                         picture.pixel(2, 2));
               QPushButton* back = nullptr;
               for (QPushButton* each : dialog.findChildren<QPushButton*>()) {
                   back = each->text() == "Go back to this one" ? each : back;
               }
               ASSERT_NE(back, nullptr);
               EXPECT_FALSE(back->isEnabled()) << "nothing is chosen yet";
               item.setSelected(true);
               dialog.findChild<QListWidget*>()->setCurrentItem(&item);
               back->click();
           });
    open().opening().finishAll();
    EXPECT_EQ(open().water()->name, "bowl");
    EXPECT_GE(copies_.of(path_.toStdString()).size(), 2U) << "what was gone back from is kept";
}

TEST_F(GoingBack, OffersToRescueWhatCanBeReadOfADamagedFile) {
    std::filesystem::resize_file(path_.toStdString(),
                                 std::filesystem::file_size(path_.toStdString()) - 4096);
    bool wasAsked = false;
    answer([this] { openWater(path_); },
           [&wasAsked](window::GoBack& dialog) {
               for (QPushButton* each : dialog.findChildren<QPushButton*>()) {
                   if (each->text().startsWith("Rescue what can be read")) {
                       wasAsked = true;
                       // Where to is asked next, and answered with "nowhere".
                       auto* asking = new QTimer(qApp);
                       QObject::connect(asking, &QTimer::timeout, [asking] {
                           auto* where =
                               qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
                           if (where != nullptr) {
                               asking->stop();
                               asking->deleteLater();
                               where->reject();
                           }
                       });
                       asking->start(0);
                       each->click();
                       return;
                   }
               }
               dialog.reject();
           });
    EXPECT_TRUE(wasAsked);
    EXPECT_FALSE(open().isOpen());
}

TEST_F(GoingBack, IsOfferedWhereTheFileIsDamaged) {
    std::filesystem::resize_file(path_.toStdString(), 20'000);
    answer([this] { openWater(path_); },
           [this](window::GoBack& dialog) {
               bool isSaid = false;
               for (const QLabel* each : dialog.findChildren<QLabel*>()) {
                   isSaid = isSaid || each->text().contains("bowl.gpkg is damaged");
               }
               EXPECT_TRUE(isSaid);
               dialog.finishPictures();
               EXPECT_TRUE(itemOf(dialog, taken_, copies_, path_).text().contains("soundings"));
               dialog.reject();
           });
    EXPECT_FALSE(open().isOpen());
    EXPECT_TRUE(isWrong());
}

class ANewerWater : public Window {};

TEST_F(ANewerWater, IsShownAndSaysThatNothingIsSavedIntoIt) {
    const QString path = folder_.filePath(QStringLiteral("newer.gpkg"));
    ASSERT_TRUE(open().create(path, "bowl"));
    ASSERT_TRUE(support::layBowl(open()));
    ASSERT_TRUE(open().finishKeeping());
    window_.reset();
    {
        const auto file =
            store::Connection::open(path.toStdString(), store::Connection::Access::existing)
                .value();
        file->execute("UPDATE water_file SET value='99' WHERE key='schema_step'");
        ASSERT_TRUE(file->outcome().has_value());
    }
    window_ = std::make_unique<window::MainWindow>(unnamed_);
    openWater(path);
    ASSERT_TRUE(open().isOpen());
    EXPECT_TRUE(open().isReadOnly());
    EXPECT_TRUE(said().startsWith("A newer version of Meremark keeps")) << said().toStdString();
    EXPECT_TRUE(isWrong());
    EXPECT_EQ(open().water()->name, "bowl");
}

} // namespace
