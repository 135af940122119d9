// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/read_b12.h"

#include "core/readers/vector_soundings.h"

namespace readers {

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
    auto read = soundingsOfVector(path, SoundingFileKind::b12, laidDown, progress);
    if (read) {
        read->report.notes.emplace_back(
            "B-12 soundings are as the boat measured them: look up the draft in the file's header");
    }
    return read;
}

} // namespace readers
