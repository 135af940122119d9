// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/read_soundings.h"

#include "core/base/number_text.h"
#include "core/readers/line_reader.h"
#include "core/readers/nmea_sentence.h"
#include "core/readers/read_b12.h"
#include "core/readers/read_gpx.h"
#include "core/readers/read_grid.h"
#include "core/readers/read_nmea.h"
#include "core/readers/read_table.h"
#include "core/readers/read_vector.h"

#include <algorithm>
#include <array>

namespace readers {

namespace {

using base::ErrorKind;

/// Files that are surely neither text nor XML of ours, by their first bytes.
bool isKnownBinary(std::string_view head) {
    using namespace std::string_view_literals;
    // GeoPackage, shapefile, zipped (KMZ and the like), FlatGeobuf, dBase's partner.
    constexpr std::array marks{"SQLite format 3"sv, "\x00\x00\x27\x0a"sv, "PK\x03\x04"sv,
                               "fgb\x03"sv};
    return std::ranges::any_of(marks, [head](std::string_view m) { return head.starts_with(m); });
}

/// TIFF, BigTIFF, and the text grid that begins by telling how many columns it has.
bool isGrid(std::string_view head) {
    using namespace std::string_view_literals;
    constexpr std::array marks{"II*\x00"sv, "MM\x00*"sv, "II+\x00"sv, "MM\x00+"sv};
    return std::ranges::any_of(marks, [head](std::string_view m) { return head.starts_with(m); }) ||
           base::lowerCase(head.substr(0, 5)) == "ncols";
}

bool hasNmea(std::string_view line) {
    NmeaSentence sentence;
    for (auto text = nextSentence(line); !text.empty(); text = nextSentence(line)) {
        if (takeApart(text, sentence) && sentence.fields.size() >= 2) {
            return true;
        }
    }
    return false;
}

bool isCrowdsourced(const std::string& head) {
    return head.find("\"CSB ") != std::string::npos ||
           head.find("GeoJSON CSB") != std::string::npos ||
           (head.find("uniqueID") != std::string::npos &&
            head.find("convention") != std::string::npos);
}

/// The header that IHO B-12 lays down for its text form, in capitals as it is written there. In
/// small letters it may be anybody's table, in feet or in local time.
bool isCrowdsourcedTable(std::string_view start) {
    return base::trimmed(start.substr(0, start.find('\n'))) == "LON,LAT,DEPTH,TIME";
}

/// Text has hardly any control characters.
bool isBinary(std::string_view line) {
    const auto controls = std::ranges::count_if(
        line, [](char c) { return c >= 0 && c < ' ' && c != '\t' && c != '\f'; });
    return static_cast<std::size_t>(controls) * 20 > line.size();
}

base::Result<SoundingFileKind> kindOfHead(LineReader& lines, const std::filesystem::path& path) {
    constexpr std::size_t enoughLines = 2000;
    constexpr std::size_t enoughText = 1U << 18U;
    std::string head;
    std::string_view line;
    std::size_t binaryLines = 0; // A log may end in zeros where the logger lost its power.
    std::size_t textLines = 0;
    for (std::size_t i = 0; i < enoughLines && head.size() < enoughText && lines.next(line); ++i) {
        if (hasNmea(line)) {
            return SoundingFileKind::nmea;
        }
        binaryLines += isBinary(line) ? 1U : 0U;
        textLines += isBinary(line) || line.empty() ? 0U : 1U;
        head += line;
        head += '\n';
    }
    const std::string_view start = base::trimmed(head);
    if (start.empty()) {
        return base::fail(ErrorKind::unusableInput, "the file holds nothing but blanks",
                          path.string(), "copy it again from where it was recorded");
    }
    if (isGrid(start)) {
        return SoundingFileKind::grid;
    }
    if (isKnownBinary(head)) {
        return SoundingFileKind::vector;
    }
    if (start.front() == '<') {
        return start.find("<gpx") != std::string_view::npos ||
                       start.find(":gpx") != std::string_view::npos
                   ? SoundingFileKind::gpx
                   : SoundingFileKind::vector;
    }
    if (start.front() == '{') {
        return isCrowdsourced(head) ? SoundingFileKind::b12 : SoundingFileKind::vector;
    }
    if (binaryLines > 0 && binaryLines >= textLines) {
        return base::fail(ErrorKind::unusableInput, "it is binary and of no kind that is known",
                          path.string(),
                          "give an NMEA 0183 log, GPX, a text table, or a vector file");
    }
    return isCrowdsourcedTable(start) ? SoundingFileKind::b12 : SoundingFileKind::table;
}

} // namespace

base::Result<SoundingFileKind> readKindOf(const std::filesystem::path& path) {
    auto lines = LineReader::open(path);
    if (!lines) {
        return std::unexpected(lines.error());
    }
    return kindOfHead(*lines, path);
}

base::Result<ReadSoundings> readSoundings(const std::filesystem::path& path,
                                          const SoundingFileSettings& settings,
                                          base::Progress& progress) {
    const auto kind = readKindOf(path);
    if (!kind) {
        return std::unexpected(kind.error());
    }
    switch (*kind) {
    case SoundingFileKind::nmea:
        return readNmea(path, settings, progress);
    case SoundingFileKind::gpx:
        return readGpx(path, settings, progress);
    case SoundingFileKind::table:
        return readTable(path, settings, progress);
    case SoundingFileKind::b12:
        return readB12(path, settings, progress);
    case SoundingFileKind::grid:
        return readGrid(path, settings, progress);
    case SoundingFileKind::vector:
        break;
    }
    return readVector(path, settings, progress);
}

} // namespace readers
