// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/preferences/preferences.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QSettings>
#include <QSignalSpy>
#include <QTemporaryDir>

namespace {

using preferences::BackdropChoice;
using preferences::Preferences;
using preferences::Theme;
using preferences::UnitSystem;

class PreferencesTest : public testing::Test {
protected:
    void SetUp() override { QSettings().clear(); }
    /// A file that is there.
    QString file(const QString& name) const {
        QFile made(folder_.filePath(name));
        EXPECT_TRUE(made.open(QIODevice::WriteOnly));
        return made.fileName();
    }
    static void expectKept(const BackdropChoice& choice) {
        Preferences::setBackdrop("/waters/a.gpkg", choice);
        const BackdropChoice kept = Preferences::backdropOf("/waters/a.gpkg");
        EXPECT_EQ(kept.path, choice.path);
        EXPECT_NEAR(kept.strength, choice.strength, 1e-6);
        EXPECT_EQ(kept.isShown, choice.isShown);
    }
    QTemporaryDir folder_;
};

TEST_F(PreferencesTest, UnitsAreMetricUntilChosenOtherwiseAndStaySoInTheNextRun) {
    Preferences first;
    EXPECT_EQ(first.units(), UnitSystem::metric);
    QSignalSpy changed(&first, &Preferences::unitsChanged);
    first.setUnits(UnitSystem::metric);
    EXPECT_EQ(changed.count(), 0);
    first.setUnits(UnitSystem::imperial);
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(first.units(), UnitSystem::imperial);
    Preferences second;
    EXPECT_EQ(second.units(), UnitSystem::imperial);
    second.setUnits(UnitSystem::metric);
    EXPECT_EQ(Preferences().units(), UnitSystem::metric);
}

TEST_F(PreferencesTest, RecentWatersAreNewestFirstEachOnceAndStillThere) {
    const QString a = file("a.gpkg");
    const QString b = file("b.gpkg");
    const QString c = file("c.gpkg");
    Preferences preferences;
    EXPECT_EQ(preferences.recentWaters(), QStringList());
    for (const QString& path : {a, b, c, a}) {
        preferences.addRecentWater(path);
    }
    EXPECT_EQ(Preferences().recentWaters(), QStringList({a, c, b}));
    QFile::remove(c);
    EXPECT_EQ(Preferences().recentWaters(), QStringList({a, b}));
}

TEST_F(PreferencesTest, RemembersEightWaters) {
    Preferences preferences;
    QStringList expected;
    for (int i = 0; i < 10; ++i) {
        const QString path = file(QStringLiteral("%1.gpkg").arg(i));
        preferences.addRecentWater(path);
        expected.prepend(path);
    }
    EXPECT_EQ(preferences.recentWaters(), expected.mid(0, 8));
}

TEST_F(PreferencesTest, TheBackdropOfEachWaterIsKeptWithStrengthAndWhetherItIsShown) {
    const QString picture = file("photo.tif");
    expectKept({picture, 0.35, true});
    expectKept({picture, 1.0, false});
    expectKept({picture, 0.0, true});
    const QString other = file("other.tif");
    Preferences::setBackdrop("/waters/b.gpkg", {other, 0.7, true});
    EXPECT_EQ(Preferences::backdropOf("/waters/a.gpkg").path, picture);
    EXPECT_EQ(Preferences::backdropOf("/waters/b.gpkg").path, other);
    Preferences::setBackdrop("/waters/a.gpkg", {});
    EXPECT_EQ(Preferences::backdropOf("/waters/a.gpkg").path, "");
    EXPECT_EQ(Preferences::backdropOf("/waters/b.gpkg").path, other);
}

TEST_F(PreferencesTest, ABackdropThatIsGoneOrBadlyKeptIsNone) {
    const QString picture = file("photo.tif");
    Preferences::setBackdrop("/waters/a.gpkg", {picture, 7.0, true});
    EXPECT_EQ(Preferences::backdropOf("/waters/a.gpkg").strength, 1.0) << "held to the range";
    QFile::remove(picture);
    const BackdropChoice gone = Preferences::backdropOf("/waters/a.gpkg");
    EXPECT_EQ(gone.path, "");
    EXPECT_EQ(gone.strength, 0.5);
    EXPECT_TRUE(gone.isShown);
    EXPECT_EQ(Preferences::backdropOf("/waters/never.gpkg").path, "");
}

TEST_F(PreferencesTest, TheThemeIsLightUntilChosenAndStaysSoInTheNextRun) {
    Preferences first;
    EXPECT_EQ(first.theme(), Theme::light);
    QSignalSpy changed(&first, &Preferences::lookChanged);
    first.setTheme(Theme::light);
    EXPECT_EQ(changed.count(), 0);
    for (const Theme theme : {Theme::dark, Theme::highContrast, Theme::light}) {
        first.setTheme(theme);
        EXPECT_EQ(Preferences().theme(), theme);
    }
    EXPECT_EQ(changed.count(), 3);
    QSettings().setValue("theme", "of a later version");
    EXPECT_EQ(Preferences().theme(), Theme::light);
}

TEST_F(PreferencesTest, TypeGrowsAndShrinksByStepsAndStopsAtTheEnds) {
    Preferences first;
    EXPECT_EQ(first.typeScale(), 1.0);
    QSignalSpy changed(&first, &Preferences::lookChanged);
    first.makeTypeLarger();
    EXPECT_GT(first.typeScale(), 1.0);
    EXPECT_EQ(Preferences().typeScale(), first.typeScale());
    first.makeTypeSmaller();
    EXPECT_EQ(first.typeScale(), 1.0);
    first.makeTypeNormal();
    EXPECT_EQ(changed.count(), 2) << "nothing changed the last time";
    for (int turn = 0; turn < 20; ++turn) {
        first.makeTypeLarger();
    }
    EXPECT_EQ(first.typeScale(), Preferences::typeScales().back());
    for (int turn = 0; turn < 20; ++turn) {
        first.makeTypeSmaller();
    }
    EXPECT_EQ(first.typeScale(), Preferences::typeScales().front());
    first.makeTypeNormal();
    EXPECT_EQ(Preferences().typeScale(), 1.0);
    QSettings().setValue("typeScale", 40.0);
    EXPECT_EQ(Preferences().typeScale(), 1.0) << "nobody could read, or mend it";
}

TEST_F(PreferencesTest, EachKindOfFileHasItsOwnLastFolder) {
    using preferences::FileKind;
    EXPECT_EQ(Preferences::folderOf(FileKind::water), "");
    Preferences::keepFolderOf(FileKind::water, file("a.gpkg"));
    EXPECT_EQ(Preferences::folderOf(FileKind::water), folder_.path());
    EXPECT_EQ(Preferences::folderOf(FileKind::survey), "");
    {
        const QTemporaryDir gone;
        Preferences::keepFolderOf(FileKind::output, gone.path());
        EXPECT_EQ(Preferences::folderOf(FileKind::output), gone.path());
    }
    EXPECT_EQ(Preferences::folderOf(FileKind::output), "") << "a stick that was pulled out";
}

TEST_F(PreferencesTest, HowAPartOfTheWindowWasLeftIsKeptToTheByte) {
    EXPECT_TRUE(Preferences::stateOf("place").isEmpty());
    const QByteArray state("\x00\x01\xff state", 9);
    Preferences::keepState("place", state);
    EXPECT_EQ(Preferences::stateOf("place"), state);
    EXPECT_TRUE(Preferences::stateOf("across").isEmpty());
}

} // namespace
