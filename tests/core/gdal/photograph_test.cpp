// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gdal/photograph.h"

#include "tests/support/made_up_photograph.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

namespace {

gdal::Photograph read(const support::CameraNotes& notes, const units::Clock& clock) {
    const support::ScratchFolder folder;
    const auto path = folder.file("pike.jpg", support::MadeUpPhotograph(notes).bytes());
    const auto photograph = gdal::readPhotograph(path, clock);
    EXPECT_TRUE(photograph.has_value()) << photograph.error().sentence();
    return photograph.value_or(gdal::Photograph{});
}

std::string timeOf(const gdal::Photograph& photograph) {
    return photograph.time ? units::isoText(*photograph.time) : "none";
}

TEST(Photograph, IsTimedByTheSatellitesElseByTheCameraAndItsOffsetElseByTheWatersClock) {
    const auto london = units::Clock::inZone("Europe/London").value();
    support::CameraNotes notes;
    notes.time = "2026:10:03 09:12:30";
    EXPECT_EQ(timeOf(read(notes, london)), "2026-10-03T08:12:30Z");
    notes.offset = "+02:00";
    EXPECT_EQ(timeOf(read(notes, london)), "2026-10-03T07:12:30Z");
    notes.gpsDate = "2026:10:02";
    EXPECT_EQ(timeOf(read(notes, london)), "2026-10-03T07:12:30Z") << "a date alone is no time";
    notes.gpsTime = {6, 11, 29};
    EXPECT_EQ(timeOf(read(notes, london)), "2026-10-02T06:11:29Z");
}

TEST(Photograph, SaysWhereItWasTaken) {
    support::CameraNotes notes;
    notes.hasPlace = true;
    const gdal::Photograph photograph = read(notes, {});
    ASSERT_TRUE(photograph.place);
    EXPECT_NEAR(photograph.place->lat_deg, 55.0 + 12.0 / 60 + 30.0 / 3600, 1e-9);
    EXPECT_NEAR(photograph.place->lon_deg, -3.1, 1e-9);
    EXPECT_EQ(timeOf(photograph), "none");
    notes.hasSides = false;
    EXPECT_EQ(read(notes, {}).place, std::nullopt) << "east or west, nobody knows";
}

TEST(Photograph, MayKnowNothingAndMustBeAPicture) {
    EXPECT_EQ(read({}, {}), gdal::Photograph{});
    support::CameraNotes odd;
    odd.time = "2026:13:03 09:12:30";
    EXPECT_EQ(read(odd, {}), gdal::Photograph{});
    const support::ScratchFolder folder;
    const auto none = gdal::readPhotograph(folder.file("a.jpg", "no picture"), {});
    ASSERT_FALSE(none.has_value());
    EXPECT_EQ(none.error().kind, base::ErrorKind::unusableInput);
    EXPECT_FALSE(gdal::readPhotograph(folder.path() / "nowhere.jpg", {}).has_value());
}

} // namespace
