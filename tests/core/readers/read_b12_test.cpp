// SPDX-License-Identifier: GPL-3.0-or-later
// The text form of IHO B-12 Ed. 3.0.0 (2022) has the header LON,LAT,DEPTH,TIME; metres and UTC are
// laid down.
#include "core/readers/read_soundings.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

namespace readers {

namespace {

const std::string rows = "3.1,55.2,4.0,2026-09-05T07:42:00Z\n3.1001,55.2,4.5,2026-09-05T07:42:01\n";

TEST(ReadB12, ATextTableIsKnownByTheHeaderThatIsLaidDown) {
    const support::ScratchFolder scratch;
    const auto kind = readKindOf(scratch.file("b12.csv", "LON,LAT,DEPTH,TIME\r\n" + rows));
    ASSERT_TRUE(kind);
    EXPECT_EQ(*kind, SoundingFileKind::b12);
}

TEST(ReadB12, ATableThatOnlyLooksLikeItStaysATable) {
    const support::ScratchFolder scratch;
    for (const std::string header : {"lon,lat,depth,time", "LON,LAT,DEPTH,TIME,TEMP", "3,55,4,0"}) {
        std::string text = header;
        text.append("\n").append(rows);
        const auto kind = readKindOf(scratch.file("table.csv", text));
        ASSERT_TRUE(kind) << header;
        EXPECT_EQ(*kind, SoundingFileKind::table) << header;
    }
}

TEST(ReadB12, ItsTimesAreUtcWhateverTheClockOfTheWater) {
    const support::ScratchFolder scratch;
    SoundingFileSettings settings;
    settings.unit = DepthUnit::feet;
    settings.clock = *units::Clock::inZone("Europe/Berlin");
    base::Progress progress;
    const auto read =
        readSoundings(scratch.file("b12.csv", "LON,LAT,DEPTH,TIME\n" + rows), settings, progress);
    ASSERT_TRUE(read) << read.error().sentence();
    ASSERT_EQ(read->soundings.size(), 2U);
    EXPECT_EQ(read->kind, SoundingFileKind::b12);
    EXPECT_DOUBLE_EQ(read->soundings[0].shown.inMetres(), 4.0);
    using namespace std::chrono_literals;
    const units::Moment start{std::chrono::sys_days(2026y / 9 / 5) + 7h + 42min};
    EXPECT_EQ(*read->soundings[0].time, start);
    EXPECT_EQ(*read->soundings[1].time, start + 1s);
}

} // namespace

} // namespace readers
