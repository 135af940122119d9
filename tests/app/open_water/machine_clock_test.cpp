// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/open_water/machine_clock.h"
#include "app/open_water/open_water.h"

#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace {

TEST(MachineClock, IsTheZoneOfTheMachineOrElseUtc) {
    EXPECT_EQ(open_water::machineClock("Europe/Berlin").zone(), "Europe/Berlin");
    EXPECT_EQ(open_water::machineClock("").zone(), "Etc/UTC");
    EXPECT_EQ(open_water::machineClock("Nowhere/At_All").zone(), "Etc/UTC");
}

TEST(MachineClock, IsWhatANewWaterBeginsWith) {
    const bool wasSet = qEnvironmentVariableIsSet("TZ");
    const QByteArray before = qgetenv("TZ");
    qputenv("TZ", "America/Halifax");
    const QTemporaryDir folder;
    open_water::OpenWater named;
    EXPECT_TRUE(named.create(folder.filePath("new.gpkg"), "New"));
    EXPECT_EQ(named.water()->clock.zone(), "America/Halifax");
    open_water::OpenWater unnamed;
    unnamed.keepUnnamedIn(folder.path());
    EXPECT_EQ(unnamed.water()->clock.zone(), "America/Halifax");
    if (wasSet) {
        qputenv("TZ", before);
    } else {
        qunsetenv("TZ");
    }
}

} // namespace
