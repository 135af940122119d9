// SPDX-License-Identifier: GPL-3.0-or-later
// Every kind of bad input: what is bad is counted by its reason, the first of each is quoted, and
// the rest of the file is used.
#include "core/readers/gpx_file.h"
#include "core/readers/line_reader.h"
#include "core/readers/nmea_sentence.h"
#include "core/readers/read_soundings.h"
#include "core/readers/whole_text.h"
#include "tests/support/scratch_folder.h"

#include <fmt/format.h>
#include <gtest/gtest.h>
#include <sys/stat.h>

namespace readers {

namespace {

base::Result<ReadSoundings> readText(const std::string& text) {
    const support::ScratchFolder scratch;
    base::Progress progress;
    return readSoundings(scratch.file("file", text), {}, progress);
}

/// All rows are accounted for, so many for this reason, the first at this line and so quoted.
void expectRefused(const base::Result<ReadSoundings>& read, const std::string& reason,
                   std::size_t count, std::size_t line, const std::string& quote) {
    ASSERT_TRUE(read) << read.error().sentence();
    EXPECT_EQ(read->report.read, read->report.used + read->report.refusedCount());
    ASSERT_TRUE(read->report.refused.contains(reason)) << read->report.refusedText();
    const RefusedRows& rows = read->report.refused.at(reason);
    EXPECT_EQ(rows.count, count);
    EXPECT_EQ(rows.firstLine, line);
    EXPECT_EQ(rows.firstText, quote);
}

std::size_t usedIn(const base::Result<ReadSoundings>& read) {
    return read ? read->soundings.size() : 0;
}

std::string sentence(const std::string& body) {
    return fmt::format("${}*{:02X}\r\n", body, nmeaChecksum(body));
}

std::string fix(const std::string& time, const std::string& date = "050926") {
    return sentence("GPRMC," + time + ",A,5512.0000,N,00306.0000,E,4.0,0.0," + date + ",,,A");
}

/// Letters as UTF-16.
std::string wide(const std::string& text, bool isLittle, bool hasMark) {
    std::string out;
    if (hasMark) {
        out = isLittle ? "\xFF\xFE" : "\xFE\xFF";
    }
    for (const char c : text) {
        out += isLittle ? std::string{c, '\0'} : std::string{'\0', c};
    }
    return out;
}

const std::string goodTable = "lon,lat,depth\n3.1,55.2,4.0\n3.1001,55.2,4.5\n";
const std::string goodLog = fix("074200") + sentence("SDDPT,3.7,0.0") + fix("074201");

TEST(BadInput, ChecksumFailuresAreCounted) {
    const auto read = readText(goodLog + "$SDDPT,3.9,0.0*00\r\n$SDDPT,4.9,0.0*ZZ\r\n");
    expectRefused(read, "bad_checksum", 2, 4, "$SDDPT,3.9,0.0*00");
    EXPECT_EQ(usedIn(read), 1U);
}

TEST(BadInput, ALastLineThatIsCutOffIsCounted) {
    const auto log = readText(goodLog + "$SDDPT,4.");
    expectRefused(log, "truncated", 1, 4, "$SDDPT,4.");
    EXPECT_EQ(usedIn(log), 1U);
    const auto table = readText(goodTable + "3.1,55.");
    expectRefused(table, "wrong_columns", 1, 4, "3.1,55.");
    EXPECT_EQ(usedIn(table), 2U);
}

TEST(BadInput, TenMegabytesWithoutALineBreakAreOneBadRow) {
    std::string long10;
    long10.resize(10'000'000, 'a');
    const auto table = readText("lon,lat,depth\n3.1,55.2,4\n" + long10 + "\n3.1,55.2,5\n");
    expectRefused(table, "wrong_columns", 1, 3, std::string(80, 'a'));
    EXPECT_EQ(usedIn(table), 2U);
    const auto log = readText(fix("074200") + sentence("SDDPT,3.7,0.0") + long10 + "\r\n" +
                              fix("074201") + sentence("SDDPT,3.8,0.0"));
    ASSERT_TRUE(log) << log.error().sentence();
    EXPECT_EQ(usedIn(log), 2U);
    const auto before = readText(long10 + "\n" + goodLog);
    ASSERT_TRUE(before) << before.error().sentence();
    EXPECT_EQ(usedIn(before), 1U);
}

TEST(BadInput, NulBytesAreCountedOrPassedOver) {
    const auto table = readText(goodTable + std::string("3.1,5\0.2,4\n", 11) +
                                std::string(50, '\0') + "\n3.1,55.2,5\n");
    expectRefused(table, "not_a_number", 1, 4, "3.1,5?.2,4");
    EXPECT_EQ(table->report.refused.at("wrong_columns").count, 1U);
    EXPECT_EQ(usedIn(table), 3U);
    const auto log = readText(fix("074200") + std::string(5000, '\0') + sentence("SDDPT,3.7,0.0") +
                              std::string(5000, '\0'));
    ASSERT_TRUE(log) << log.error().sentence();
    EXPECT_EQ(usedIn(log), 1U);
}

TEST(BadInput, Utf16IsReadWithAndWithoutItsMark) {
    const std::string gpx = "<?xml version=\"1.0\" encoding=\"UTF-16\"?><gpx><trk><trkseg><trkpt "
                            "lat=\"55.2\" lon=\"3.1\"><extensions><depth>3.2</depth></extensions>"
                            "</trkpt></trkseg></trk></gpx>";
    for (const bool isLittle : {true, false}) {
        for (const bool hasMark : {true, false}) {
            SCOPED_TRACE(fmt::format("little {} mark {}", isLittle, hasMark));
            const auto table = readText(wide(goodTable, isLittle, hasMark));
            ASSERT_TRUE(table) << table.error().sentence();
            EXPECT_EQ(usedIn(table), 2U);
            EXPECT_EQ(table->report.refusedCount(), 0U);
            const auto log = readText(wide(goodLog, isLittle, hasMark));
            ASSERT_TRUE(log) << log.error().sentence();
            EXPECT_EQ(usedIn(log), 1U);
            const auto track = readText(wide(gpx, isLittle, hasMark));
            ASSERT_TRUE(track) << track.error().sentence();
            EXPECT_EQ(usedIn(track), 1U);
        }
    }
}

TEST(BadInput, WrongNumberOfColumnsHalfWayIsCounted) {
    std::string text = "lon,lat,depth,time\n";
    for (int i = 0; i < 1000; ++i) {
        text += fmt::format("3.1,{:.6f},4.0,2026-09-05T07:{:02}:{:02}Z", 55.2 + 1e-5 * i, i / 60,
                            i % 60) +
                (i == 500 ? ",9,9\n" : "\n");
        if (i == 600) {
            text += "3.1,55.2\n";
        }
    }
    const auto read = readText(text);
    expectRefused(read, "wrong_columns", 2, 502, "3.1,55.205000,4.0,2026-09-05T07:08:20Z,9,9");
    EXPECT_EQ(usedIn(read), 999U);
}

TEST(BadInput, PlacesAtZeroZeroAreCounted) {
    expectRefused(readText(goodTable + "0,0,5\n0.0,-0.0,5\n"), "zero_position", 2, 4, "0,0,5");
    const auto gpx = readText("<gpx><trk><trkseg>\n<trkpt lat=\"0\" lon=\"0\"><extensions><depth>2"
                              "</depth></extensions></trkpt>\n<trkpt lat=\"55.2\" lon=\"3.1\">"
                              "<extensions><depth>3</depth></extensions></trkpt>"
                              "</trkseg></trk></gpx>");
    expectRefused(gpx, "zero_position", 1, 2, " 2");
}

TEST(BadInput, YearsThatCannotBeAreCounted) {
    const auto table = readText("lon,lat,depth,time\n3.1,55.2,4,2026-09-05T07:42:00Z\n"
                                "3.1,55.2,4,1980-03-06T00:00:00Z\n3.1,55.2,4,2080-01-06T00:00:00Z\n"
                                "3.1,55.2,4,2026-09-05T07:42:01Z\n");
    expectRefused(table, "impossible_time", 2, 3, "3.1,55.2,4,1980-03-06T00:00:00Z");
    EXPECT_EQ(usedIn(table), 2U);
    const auto log =
        readText(fix("074200", "060180") + sentence("SDDPT,3.7,0.0") + fix("074200", "050926") +
                 sentence("SDDPT,3.8,0.0") + sentence("GPZDA,074300,05,09,2080,00,00") +
                 sentence("GPGLL,5512.0000,N,00306.0000,E,074300,A,A") + sentence("SDDPT,3.9,0.0"));
    expectRefused(log, "impossible_time", 2, 2, "SDDPT");
    EXPECT_EQ(usedIn(log), 1U);
}

TEST(BadInput, DepthsThatAreNoNumberAreCounted) {
    const auto table =
        readText(goodTable + "3.1,55.2,nan\n3.1,55.2,inf\n3.1,55.2,-inf\n3.1,55.2,1e999\n");
    expectRefused(table, "not_a_number", 4, 4, "3.1,55.2,nan");
    EXPECT_EQ(usedIn(table), 2U);
    const auto log = readText(goodLog + sentence("SDDPT,nan,0.0") + sentence("SDDPT,inf,0.0"));
    expectRefused(log, "no_depth", 2, 4, "$SDDPT,nan,0.0*18");
    EXPECT_EQ(usedIn(log), 1U);
}

TEST(BadInput, NegativeDepthsAreCounted) {
    const auto table = readText(goodTable + "3.1,55.2,-4\n3.1,55.2,-0.5\n");
    expectRefused(table, "negative_depth", 2, 4, "3.1 55.2 depth -4");
    EXPECT_EQ(usedIn(table), 2U);
    const auto log = readText(goodLog + sentence("SDDPT,-3.7,0.0"));
    expectRefused(log, "negative_depth", 1, 4, "3.1 55.2 depth -3.7");
    EXPECT_EQ(usedIn(log), 1U);
}

TEST(BadInput, NoReaderWaitsForAPipe) {
    const support::ScratchFolder folder;
    const auto pipe = folder.path() / "pipe.gpx";
    ASSERT_EQ(::mkfifo(pipe.c_str(), 0600), 0);
    base::Progress silent;
    const std::string what = "it is a pipe or a device and no file";
    EXPECT_EQ(LineReader::open(pipe).error().what, what);
    EXPECT_EQ(wholeText(pipe).error().what, what);
    EXPECT_EQ(walkGpx(
                  pipe, [](const GpxPoint&) {}, silent)
                  .error()
                  .what,
              what);
}

TEST(BadInput, ARefusalIsOneLineThoughTheFileHoldsControls) {
    const auto read = readText("l\x1b[2Jon,l\x07"
                               "at,sp\x01"
                               "eed of something long enough\n3.1,5,4\n");
    ASSERT_FALSE(read);
    for (const char c : read.error().sentence()) {
        EXPECT_TRUE(c >= ' ' || c < 0);
    }
}

} // namespace

} // namespace readers
