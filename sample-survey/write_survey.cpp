// SPDX-License-Identifier: GPL-3.0-or-later
#include "sample-survey/write_survey.h"

#include "sample-survey/text.h"

#include <cmath>
#include <string_view>

namespace sample {

namespace {

constexpr double knot_m_s = 1852.0 / 3600.0;

/// Lead character, body, checksum, line end. `wrong` spoils the checksum.
std::string sentence(char lead, const std::string& body, bool wrong = false) {
    unsigned sum = wrong ? 0x15U : 0U;
    for (const char c : body) {
        sum ^= static_cast<unsigned char>(c);
    }
    constexpr std::string_view digits = "0123456789ABCDEF";
    return lead + body + "*" + digits[(sum >> 4U) & 0xFU] + digits[sum & 0xFU] + "\r\n";
}

/// Degrees and minutes as NMEA writes them: (d)ddmm.mmmm.
std::string degreesMinutes(double angle_deg, int degreeDigits) {
    const auto all = static_cast<std::int64_t>(std::llround(angle_deg * 60.0 * 1e4));
    const std::int64_t degrees = all / 600000;
    const std::int64_t rest = all % 600000;
    return padded(degrees, degreeDigits) + padded(rest / 10000, 2) + "." + padded(rest % 10000, 4);
}

std::string rmc(const Fix& fix, bool wrong) {
    const Civil c = civil(fix.time_s);
    const std::string clock = padded(c.hour, 2) + padded(c.minute, 2) + padded(c.second, 2) + ".00";
    const std::string date = padded(c.day, 2) + padded(c.month, 2) + padded(c.year % 100, 2);
    if (fix.fault == Fault::voidFix) {
        return sentence('$', "GPRMC," + clock + ",V,,,,,,," + date + ",,,N");
    }
    const LonLat place = toLonLat(fix.shownAt);
    return sentence('$',
                    "GPRMC," + clock + ",A," + degreesMinutes(place.lat_deg, 2) + ",N," +
                        degreesMinutes(place.lon_deg, 3) + ",E," +
                        fixed(fix.speed_m_s / knot_m_s, 1) + "," + fixed(fix.course_deg, 1) + "," +
                        date + ",,,A",
                    wrong);
}

/// A ship's report far away: well-formed, no concern of ours.
std::string otherShip(Chance& chance) {
    constexpr std::string_view alphabet =
        "0123456789:;<=>?@ABCDEFGHIJKLMNOPQRSTUVW`abcdefghijklmnopqrstuvw";
    std::string payload = "1";
    for (int i = 0; i < 27; ++i) {
        payload += alphabet[static_cast<std::size_t>(chance.whole(0, 63))];
    }
    return sentence('!', "AIVDM,1,1,,A," + payload + ",0");
}

} // namespace

std::string nmeaText(const std::vector<Fix>& fixes, const DayFacts& facts, Chance& chance) {
    std::string text;
    for (std::size_t i = 0; i < fixes.size(); ++i) {
        const Fix& fix = fixes[i];
        if (i % 60 == 0) {
            text += sentence(
                '$', "YXMTW," + fixed(facts.waterTemperature_c + 0.05 * chance.normal(), 1) + ",C");
        }
        if (i % 300 == 40) {
            text += sentence('$', "PQRN,VOLT," + fixed(12.9 - 0.00006 * static_cast<double>(i), 2));
        }
        if (i % 240 == 100) {
            text += otherShip(chance);
        }
        const bool spoilt = fix.fault == Fault::badChecksum;
        text += rmc(fix, spoilt && fix.event % 2 == 0);
        const std::string shown = fix.shown ? fixed(*fix.shown, 1) : "";
        std::string depth = sentence('$', "SDDPT," + shown + ",0.0", spoilt && fix.event % 2 == 1);
        if (fix.fault == Fault::truncated) {
            depth = depth.substr(0, 8) + "\r\n";
        }
        text += depth;
    }
    return text;
}

std::string gpxText(const std::vector<Fix>& fixes, const DayFacts& facts) {
    std::string text =
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
        "<gpx version=\"1.1\" creator=\"make_sample\" xmlns=\"http://www.topografix.com/GPX/1/1\" "
        "xmlns:s=\"https://example.org/sounding/1\">\n"
        "<metadata><desc>Invented from end to end; depths in metres below the "
        "transducer</desc></metadata>\n"
        "<trk><name>" +
        facts.date + "</name>\n<trkseg>\n";
    for (const Fix& fix : fixes) {
        if (fix.afterGap) {
            text += "</trkseg>\n<trkseg>\n";
        }
        const LonLat place = toLonLat(fix.shownAt);
        text += "<trkpt lat=\"" + fixed(place.lat_deg, 6) + "\" lon=\"" + fixed(place.lon_deg, 6) +
                "\"><time>" + isoUtc(fix.time_s) + "</time>";
        if (fix.shown) {
            text += "<extensions><s:depth>" + fixed(*fix.shown, 1) + "</s:depth></extensions>";
        }
        text += "</trkpt>\n";
    }
    return text + "</trkseg>\n</trk>\n</gpx>\n";
}

std::string tableText(const std::vector<Fix>& fixes) {
    std::string text = "lon;lat;depth;time\r\n";
    for (const Fix& fix : fixes) {
        const LonLat place = toLonLat(fix.shownAt);
        std::string row =
            withComma(fixed(place.lon_deg, 6)) + ";" + withComma(fixed(place.lat_deg, 6)) + ";" +
            (fix.shown ? withComma(fixed(*fix.shown, 1)) : "") + ";" + isoUtc(fix.time_s);
        if (fix.fault == Fault::truncated) {
            row = row.substr(0, 14);
        }
        text += row + "\r\n";
    }
    return text;
}

} // namespace sample
