// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/file_taker.h"

#include "app/days/chart_link.h"
#include "app/days/survey_day/column_dialog.h"
#include "tests/support/held_job.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

namespace {

using days::survey_day::ColumnDialog;
using days::survey_day::FileTaker;

class FileTakerTest : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(open_.create(folder_.filePath("small.gpkg"), "Skarrow Water"));
    }
    /// A track whose columns are known by their names; the unit of its depths may be told or not.
    QString track(const QString& name, const QByteArray& depthColumn) {
        QFile file(folder_.filePath(name));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write("lon,lat," + depthColumn + "\n");
        for (int i = 0; i < 20; ++i) {
            file.write(QStringLiteral("%1,55.2,4.0\n").arg(3.1 + 1e-4 * i, 0, 'f', 4).toLatin1());
        }
        return file.fileName();
    }
    ColumnDialog* question() { return window_.findChild<ColumnDialog*>(); }
    bool isDone() {
        return QTest::qWaitFor([this] { return !taker_.isBusy() && !open_.jobs().isBusy(); },
                               30000);
    }
    std::size_t days() { return open_.water()->days.size(); }

    QTemporaryDir folder_;
    open_water::OpenWater open_;
    preferences::Preferences preferences_;
    days::ChartLink chart_{open_, preferences_};
    QWidget window_;
    days::survey_day::FileTaker taker_{{open_, preferences_, chart_}, &window_};
};

TEST_F(FileTakerTest, AsksForAnUncertainUnitWhileTheBackgroundGoesOn) {
    taker_.take({track("unsure.csv", "depth")});
    ASSERT_NE(question(), nullptr);
    EXPECT_TRUE(taker_.isBusy());
    bool hasRun = false;
    open_.jobs().start<int>(
        "Something else", [](base::Progress&) { return base::Result<int>(1); },
        [&](base::Result<int>) { hasRun = true; });
    EXPECT_TRUE(QTest::qWaitFor([&] { return hasRun; }, 30000));
    EXPECT_EQ(days(), 0U);
    question()->accept();
    EXPECT_TRUE(isDone());
    EXPECT_EQ(days(), 1U);
}

TEST_F(FileTakerTest, TheNextFileWaitsForTheAnswer) {
    taker_.take({track("unsure.csv", "depth"), track("sure.csv", "depth_m")});
    ASSERT_NE(question(), nullptr);
    EXPECT_EQ(days(), 0U);
    QSignalSpy said(&open_, &open_water::OpenWater::happened);
    question()->reject();
    EXPECT_TRUE(isDone());
    ASSERT_GE(said.count(), 1);
    EXPECT_TRUE(said[0][0].toString().contains("unsure.csv was left out"));
    ASSERT_EQ(days(), 1U);
    EXPECT_EQ(open_.water()->days[0].source, "sure.csv");
}

TEST_F(FileTakerTest, WhatComesWithAWaterWaitsUntilThatIsOpenAndGoesIntoIt) {
    const QString other = folder_.filePath("other.gpkg");
    {
        open_water::OpenWater making;
        ASSERT_TRUE(making.create(other, "Other"));
    }
    QObject::connect(&taker_, &FileTaker::waterFound, &open_, &open_water::OpenWater::startOpening);
    taker_.take({track("sure.csv", "depth_m"), other});
    EXPECT_EQ(days(), 0U);
    EXPECT_TRUE(
        QTest::qWaitFor([this] { return !taker_.isBusy() && !open_.opening().isBusy(); }, 30000));
    EXPECT_EQ(open_.path(), other);
    EXPECT_EQ(days(), 1U);
}

TEST_F(FileTakerTest, GoesOnWhereTheWaterAmongTheFilesCannotBeOpened) {
    QFile broken(folder_.filePath("broken.gpkg"));
    QFile(open_.path()).copy(broken.fileName());
    QObject::connect(&taker_, &FileTaker::waterFound, &open_, [this](const QString&) {
        open_.startOpening(folder_.filePath("nowhere.gpkg"));
    });
    taker_.take({broken.fileName(), track("sure.csv", "depth_m")});
    EXPECT_TRUE(
        QTest::qWaitFor([this] { return !taker_.isBusy() && !open_.opening().isBusy(); }, 30000));
    EXPECT_EQ(open_.water()->name, "Skarrow Water");
    EXPECT_EQ(days(), 1U);
}

TEST_F(FileTakerTest, PutsNothingThatWasReadForOneWaterIntoAnother) {
    support::HeldJob held(open_.jobs());
    taker_.take({track("one.csv", "depth_m"), track("two.csv", "depth_m")});
    QSignalSpy said(&open_, &open_water::OpenWater::happened);
    ASSERT_TRUE(open_.create(folder_.filePath("other.gpkg"), "Other"));
    held.letGo();
    EXPECT_TRUE(isDone());
    EXPECT_EQ(days(), 0U);
    ASSERT_EQ(said.count(), 2) << "the one that waited, and the one that was being read";
    EXPECT_TRUE(said[0][0].toString().contains("left out: another water was opened"));
    EXPECT_TRUE(said[1][0].toString().contains("one.csv was left out: another water was opened"));
}

TEST_F(FileTakerTest, TakesFilesAfterItWasStopped) {
    support::HeldJob held(open_.jobs());
    taker_.take({track("one.csv", "depth_m")});
    open_.jobs().cancelAll();
    held.letGo();
    EXPECT_TRUE(isDone());
    EXPECT_EQ(days(), 0U);
    taker_.take({track("two.csv", "depth_m")});
    EXPECT_TRUE(isDone());
    EXPECT_EQ(days(), 1U);
}

} // namespace
