// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/read_b12.h"

#include "core/base/number_text.h"
#include "core/readers/line_reader.h"
#include "core/readers/read_table.h"
#include "core/readers/vector_soundings.h"

namespace readers {

namespace {

/// Both forms of B-12 are told apart by their first character that is no blank.
base::Result<bool> isJson(const std::filesystem::path& path) {
    auto lines = LineReader::open(path);
    if (!lines) {
        return std::unexpected(lines.error());
    }
    std::string_view line;
    while (lines->next(line)) {
        if (const std::string_view text = base::trimmed(line); !text.empty()) {
            return text.front() == '{';
        }
    }
    return false;
}

base::Result<ReadSoundings> ofTable(const std::filesystem::path& path,
                                    const SoundingFileSettings& settings,
                                    base::Progress& progress) {
    SoundingFileSettings laidDown = settings;
    laidDown.hasHeader = true;
    laidDown.separator = ',';
    laidDown.decimalMark = '.';
    laidDown.columns = {"lon", "lat", "depth", "time"};
    laidDown.epsg.reset();
    laidDown.near.reset(); // What the columns hold is laid down: nothing can be swapped.
    auto read = readTable(path, laidDown, progress);
    if (read) {
        read->kind = SoundingFileKind::b12;
    }
    return read;
}

} // namespace

base::Result<ReadSoundings> readB12(const std::filesystem::path& path,
                                    const SoundingFileSettings& settings,
                                    base::Progress& progress) {
    // The guidance lays down degrees, metres and UTC (IHO B-12 Ed. 3.0.0, Table 2).
    SoundingFileSettings laidDown = settings;
    laidDown.unit = DepthUnit::metres;
    laidDown.clock = units::Clock();
    if (laidDown.depthSource.empty()) {
        laidDown.depthSource = "depth";
    }
    const auto json = isJson(path);
    if (!json) {
        return std::unexpected(json.error());
    }
    auto read = *json ? soundingsOfVector(path, SoundingFileKind::b12, laidDown, progress)
                      : ofTable(path, laidDown, progress);
    if (read) {
        read->report.notes.emplace_back(
            "B-12 soundings are as the boat measured them: look up the draft in the file's header");
    }
    return read;
}

} // namespace readers
