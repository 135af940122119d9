// SPDX-License-Identifier: GPL-3.0-or-later
// Logs as somebody's spreadsheet wrote them.
#include "core/readers/decoded_text.h"
#include "core/readers/quoted_rows.h"
#include "core/readers/read_log.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

namespace readers {

namespace {

base::Result<ReadLog> readText(const std::string& text) {
    const support::ScratchFolder scratch;
    base::Progress progress;
    return readLog(scratch.file("log.csv", text), units::Clock(), progress);
}

const std::string header = "kind,stay,start,end,time,lon,lat,rods,species,weight,note";
const std::string rows = "stay,1,2026-10-03T08:00:00Z,2026-10-03T10:00:00Z,,3.1,55.2,2,,,slow\n"
                         "fish,1,,,2026-10-03T09:00:00Z,,,,pike,9.6,\n";

std::string with(std::string text, char from, const std::string& to) {
    std::string out;
    for (const char c : text) {
        out += c == from ? to : std::string(1, c);
    }
    return out;
}

/// As UTF-16 with the low byte first, ASCII only.
std::string wide(const std::string& text) {
    std::string out;
    for (const char c : text) {
        out += c;
        out += '\0';
    }
    return out;
}

TEST(LogTables, ReadTheSameWithAnySeparatorAndEncoding) {
    const auto plain = readText(header + "\n" + rows);
    ASSERT_TRUE(plain) << plain.error().sentence();
    ASSERT_EQ(plain->log.size(), 1U);
    EXPECT_EQ(plain->log[0].runs.at(0).weight, units::Weight::kilograms(9.6));
    const std::string all = header + "\n" + rows;
    for (const std::string& text :
         {with(all, ',', ";"), with(all, ',', "\t"), with(all, ',', "|"), with(all, '\n', "\r\n"),
          with(all, '\n', "\r"), "\xEF\xBB\xBF" + all, "\xFF\xFE" + wide(all), wide(all)}) {
        const auto read = readText(text);
        ASSERT_TRUE(read) << read.error().sentence() << text;
        EXPECT_EQ(read->log, plain->log) << text;
        EXPECT_EQ(read->lines, plain->lines) << text;
        EXPECT_TRUE(read->report.notes.empty());
        EXPECT_EQ(read->report.refusedCount(), 0U);
    }
}

TEST(LogTables, TakeGermanDatesAndADecimalComma) {
    const auto read = readText("kind;stay;start;end;time;lon;lat;rods;weight_kg;note\n"
                               "stay;1;03.10.2026 08:00;03.10.2026 10:30;;3,1;55,2;2;;Schilf\n"
                               "fish;1;;;03.10.2026 09:15;;;;1,234;\n"
                               "fish;1;;;24.12.2026 9:15;;;;1.234;\n");
    ASSERT_TRUE(read) << read.error().sentence();
    ASSERT_EQ(read->log.size(), 1U);
    const logbook::Stay& stay = read->log[0];
    EXPECT_EQ(units::isoText(stay.start), "2026-10-03T08:00:00Z");
    EXPECT_EQ(units::isoText(stay.end), "2026-10-03T10:30:00Z");
    EXPECT_EQ(stay.place, (geo::LonLat{3.1, 55.2}));
    EXPECT_EQ(stay.runs.at(0).weight, units::Weight::kilograms(1.234));
    EXPECT_EQ(stay.runs.at(1).weight, std::nullopt) << "thousands, or a point in error";
    EXPECT_EQ(read->report.badFields, (std::vector<BadField>{{4, "weight_kg", "1.234"}}));
    EXPECT_TRUE(read->report.notes.empty()) << "the 24th is no month";
}

TEST(LogTables, SayWhereDayAndMonthCannotBeTold) {
    const auto read = readText("kind,stay,start,end,lon,lat\n"
                               "stay,1,03/10/2026 08:00,03/10/2026 10:00,3.1,55.2\n");
    ASSERT_TRUE(read);
    EXPECT_EQ(units::isoText(read->log.at(0).start), "2026-10-03T08:00:00Z");
    EXPECT_EQ(read->report.notes.at(0),
              "Dates like 03/10/2026 were read with the day first: nothing in the file says "
              "otherwise.");
    const auto american = readText("kind,stay,start,end,lon,lat\n"
                                   "stay,1,10/03/2026 08:00,10/03/2026 10:00,3.1,55.2\n"
                                   "stay,2,10/24/2026 08:00,10/24/2026 10:00,3.1,55.2\n");
    ASSERT_TRUE(american);
    EXPECT_EQ(units::isoText(american->log.at(0).start), "2026-10-03T08:00:00Z");
    EXPECT_TRUE(american->report.notes.empty());
}

TEST(LogTables, FindTheHeaderBelowATitleAndOnceMoreFurtherDown) {
    const auto read = readText("My season 2026\n\n" + header + "\n" + rows + header + "\n" +
                               "lat,lon,kind,stay,start,end\n"
                               "55.3,3.2,stay,2,2026-10-04T08:00:00Z,2026-10-04T10:00:00Z\n");
    ASSERT_TRUE(read) << read.error().sentence();
    ASSERT_EQ(read->log.size(), 2U);
    EXPECT_EQ(read->log[1].place, (geo::LonLat{3.2, 55.3}));
    EXPECT_EQ(read->report.read, 3U);
    EXPECT_EQ(read->lines.at(logbook::StayId(2)), 8U);
    EXPECT_EQ(
        read->report.notes,
        (std::vector<std::string>{"Line 6 is a header once more: what follows is read by it."}));
}

TEST(LogTables, TakeNoCaptionOfTwoNamesForTheHeader) {
    const auto read = readText("Stay,Note\n" + header + "\n" + rows);
    ASSERT_TRUE(read) << read.error().sentence();
    EXPECT_EQ(read->log.size(), 1U);
}

TEST(LogTables, KeepRowsThatLackTheirLastCellsAndSaySoOnce) {
    const auto read = readText("kind,stay,start,end,lon,lat,rods,note\n"
                               "stay,1,2026-10-03 08:00,2026-10-03 10:00,3.1,55.2,2\n"
                               "stay,2,2026-10-04 08:00,2026-10-04 10:00,3.1,55.2\n"
                               "stay,3,2026-10-05 08:00,2026-10-05 10:00,3.1,55.2,2,x,,\n"
                               "stay,4,2026-10-06 08:00,2026-10-06 10:00,3.1,55.2,2,x,,y\n");
    ASSERT_TRUE(read) << read.error().sentence();
    ASSERT_EQ(read->log.size(), 3U);
    EXPECT_EQ(read->log[0].rods, 2);
    EXPECT_EQ(read->log[1].rods, std::nullopt);
    EXPECT_EQ(read->report.notes,
              (std::vector<std::string>{"Rows from line 2 on are shorter than the header: what "
                                        "they lack is not known."}));
    ASSERT_EQ(read->report.refusedCount(), 1U) << "a cell that belongs to no column";
    EXPECT_EQ(read->report.refused.at("wrong_columns").firstLine, 5U);
}

TEST(LogTables, MayGiveTheLengthOfAStayInsteadOfItsEnd) {
    const auto read = readText("kind,stay,start,hours,lon,lat\n"
                               "stay,1,2026-10-03 08:00,1.5,3.1,55.2\n");
    ASSERT_TRUE(read) << read.error().sentence();
    EXPECT_EQ(units::isoText(read->log.at(0).end), "2026-10-03T09:30:00Z");
}

TEST(LogTables, TimeAFishByTheNightOfItsStayAndPlaceItsBaitApartFromTheBoat) {
    const auto read = readText("kind,stay,start,end,time,lon,lat\n"
                               "stay,1,2026-10-03 20:00,2026-10-04 02:00,,3.1,55.2\n"
                               "fish,1,,,21:30,3.1,55.2\n"
                               "run,1,,,01:15,3.101,55.2\n");
    ASSERT_TRUE(read) << read.error().sentence();
    ASSERT_EQ(read->log.at(0).runs.size(), 2U);
    const logbook::Fish& first = read->log[0].runs[0];
    const logbook::Fish& second = read->log[0].runs[1];
    EXPECT_EQ(units::isoText(first.time.value()), "2026-10-03T21:30:00Z");
    EXPECT_EQ(units::isoText(second.time.value()), "2026-10-04T01:15:00Z") << "after midnight";
    EXPECT_EQ(first.baitPlace, std::nullopt) << "where the boat lay says nothing of the bait";
    EXPECT_EQ(second.baitPlace, (geo::LonLat{3.101, 55.2}));
    EXPECT_TRUE(first.landed);
    EXPECT_FALSE(second.landed);
}

TEST(LogTables, KeepColumnsThatMeanNothingHereAndTellThem) {
    const auto read = readText("kind,stay,start,end,lon,lat,Moon,note,note,\n"
                               "stay,1,2026-10-03 08:00,2026-10-03 10:00,3.1,55.2,full,a,b,c\n"
                               "fish,1,,,,,'=1+1,,,\n");
    ASSERT_TRUE(read);
    const std::vector<logbook::OtherField> others{
        {"Moon", "full"}, {"column 10", "c"}, {"note (2)", "b"}};
    EXPECT_EQ(read->log.at(0).others, others);
    EXPECT_EQ(read->log[0].note, "a");
    EXPECT_EQ(read->log[0].runs.at(0).others, (std::vector<logbook::OtherField>{{"Moon", "=1+1"}}));
    EXPECT_EQ(read->report.notes,
              (std::vector<std::string>{"Columns that are none of a log's are kept as they are: "
                                        "Moon, note (2), column 10."}));
}

TEST(LogTables, NameAColumnOnOneLine) {
    const auto read =
        readText("kind,stay,start,end,lon,lat,\"sky\nand\twind\"\n"
                 "stay,1,2026-10-03 08:00,2026-10-03 10:00,3.1,55.2,\"grey\nthen blue\"\n");
    ASSERT_TRUE(read);
    EXPECT_EQ(read->log.at(0).others,
              (std::vector<logbook::OtherField>{{"sky and wind", "grey\nthen blue"}}));
    EXPECT_EQ(read->report.notes, (std::vector<std::string>{"Columns that are none of a log's are "
                                                            "kept as they are: sky and wind."}));
}

TEST(LogTables, PutRunsThatNameNoStayWhereTheyWereTaken) {
    const auto read = readText(header + "\n" + rows +
                               "fish,,,,2026-10-03T09:30:00Z,,,,perch,,\n"
                               "fish,,,,2026-10-03T11:30:00Z,,,,zander,,\n");
    ASSERT_TRUE(read);
    ASSERT_EQ(read->log.at(0).runs.size(), 2U);
    EXPECT_EQ(read->log[0].runs[1].species, "perch");
    ASSERT_EQ(read->loose.size(), 1U);
    EXPECT_EQ(read->loose[0].run.species, "zander");
    EXPECT_EQ(read->loose[0].line, 5U);
}

TEST(LogTables, TellOfAStayWhatBelongsToAFish) {
    const auto read = readText("kind,stay,start,end,lon,lat,species,weight\n"
                               "stay,1,2026-10-03 08:00,2026-10-03 10:00,3.1,55.2,pike,9.6\n");
    ASSERT_TRUE(read);
    EXPECT_EQ(read->report.badFields,
              (std::vector<BadField>{{2, "species", "pike"}, {2, "weight", "9.6"}}));
}

TEST(QuotedRows, KeepWhatIsQuotedAndAreNotSwallowedByASlip) {
    const std::string text =
        "a, b ,\" c \"\"d\"\"\ne,\"\n\"open,1\n53°30'07\" N,\"x\" y\n\n\"last\"";
    QuotedRows quoted(text, ',');
    std::vector<std::string> cells;
    using Cells = std::vector<std::string>;
    ASSERT_TRUE(quoted.next(cells));
    EXPECT_EQ(cells, (Cells{"a", "b", " c \"d\"\ne,"}));
    EXPECT_EQ(quoted.line(), 1U);
    ASSERT_TRUE(quoted.next(cells));
    EXPECT_EQ(cells, (Cells{"\"open", "1"}));
    EXPECT_EQ(quoted.line(), 3U);
    ASSERT_TRUE(quoted.next(cells));
    EXPECT_EQ(cells, (Cells{"53°30'07\" N", "\"x\" y"}));
    ASSERT_TRUE(quoted.next(cells));
    EXPECT_EQ(cells, (Cells{""}));
    ASSERT_TRUE(quoted.next(cells));
    EXPECT_EQ(cells, (Cells{"last"}));
    EXPECT_EQ(quoted.line(), 6U);
    EXPECT_FALSE(quoted.next(cells));
}

TEST(DecodedText, IsUtf8WhateverItWasIn) {
    EXPECT_EQ(decodedText("Hecht f\xFCr 5 \x80").text, "Hecht für 5 €");
    EXPECT_EQ(decodedText("Hecht f\xFCr").encoding, TextEncoding::windows1252);
    EXPECT_EQ(decodedText("für").encoding, TextEncoding::utf8);
    EXPECT_EQ(decodedText("für\xC3").encoding, TextEncoding::utf8) << "cut within a character";
    EXPECT_EQ(decodedText("für\xE2\x82").encoding, TextEncoding::utf8);
    EXPECT_EQ(decodedText(std::string("\xFE\xFF\x6E\x56\xD8\x3C\xDF\xA3", 8)).text, "湖🎣");
    EXPECT_EQ(decodedText(std::string("\xFF\xFE\x3C\xD8", 4)).text, "\xEF\xBF\xBD");
    EXPECT_EQ(decodedText("").text, "");
}

} // namespace

} // namespace readers
