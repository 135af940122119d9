// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/fuzz/promises.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <functional>

namespace fuzz {

namespace {

bool isShowable(const std::string& text) {
    return std::ranges::none_of(text, [](char c) { return (c >= 0 && c < ' ') || c == '\x7f'; });
}

} // namespace

void promise(bool holds, const char* what) {
    if (!holds) {
        std::fprintf(stderr, "promise broken: %s\n", what);
        std::abort();
    }
}

void checkRefusal(const base::Error& error) {
    promise(!error.what.empty(), "a refusal says what is wrong");
    promise(!error.where.empty(), "a refusal says where");
    promise(!error.whatToDo.empty(), "a refusal says what to do");
    promise(isShowable(error.sentence()), "a refusal is one line of text");
}

void checkReport(const readers::ReadingReport& report) {
    promise(report.read == report.used + report.refusedCount(), "all rows are accounted for");
    for (const auto& [reason, rows] : report.refused) {
        promise(!reason.empty() && rows.count > 0, "a reason has rows");
        promise(rows.firstText.size() <= 80 && isShowable(rows.firstText), "quotes are printable");
    }
    for (const std::string& note : report.notes) {
        promise(isShowable(note), "a note is one line of text");
    }
}

void checkSoundings(const base::Result<readers::ReadSoundings>& read) {
    if (!read) {
        checkRefusal(read.error());
        return;
    }
    checkReport(read->report);
    promise(!read->soundings.empty(), "what is read has soundings");
    promise(read->report.used == read->soundings.size(), "used soundings are given");
    for (const soundings::Sounding& sounding : read->soundings) {
        const double depth_m = sounding.shown.inMetres();
        promise(std::isfinite(depth_m) && depth_m >= 0.0, "a depth is finite, not negative");
        promise(geo::isOnEarth(sounding.place), "a place is on the Earth");
        promise(!sounding.time ||
                    (*sounding.time >= std::chrono::sys_days(std::chrono::year{1981} / 1 / 1) &&
                     *sounding.time < std::chrono::sys_days(std::chrono::year{2080} / 1 / 1)),
                "a time is one of this age");
    }
    promise(!read->passStarts.empty() && read->passStarts.front() == 0, "the first pass is at 0");
    promise(std::ranges::adjacent_find(read->passStarts, std::greater_equal{}) ==
                    read->passStarts.end() &&
                read->passStarts.back() < read->soundings.size(),
            "passes ascend and begin at soundings");
}

void checkRing(const geo::LonLatRing& ring) {
    promise(ring.size() >= 3, "a ring has three corners");
    promise(std::ranges::all_of(ring, [](geo::LonLat place) { return geo::isOnEarth(place); }),
            "corners are on the Earth");
}

void checkPiece(const geo::LonLatPiece& piece) {
    checkRing(piece.outer);
    std::ranges::for_each(piece.islands, checkRing);
}

readers::SoundingFileSettings settingsFor(unsigned char choice) {
    readers::SoundingFileSettings settings;
    switch (choice) {
    case 'u':
        settings.unit = readers::DepthUnit::fathoms;
        break;
    case 'e':
        settings.epsg = 32629;
        break;
    case 'n':
        settings.near = geo::LonLat{3.1, 55.2};
        break;
    case 's':
        settings.depthSource = "name";
        break;
    case 'd':
        settings.depthSource = "SDDBT";
        break;
    case 'c':
        settings.columns = {"2", "1", "3", "4"};
        break;
    case 'h':
        settings.hasHeader = false;
        settings.decimalMark = ',';
        settings.separator = ';';
        break;
    default:
        break;
    }
    return settings;
}

} // namespace fuzz
