// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/readers/reading_report.h"
#include "core/weed/weed_note.h"

#include <filesystem>
#include <vector>

namespace readers {

struct ReadWeedNotes {
    std::vector<weed::WeedNote> notes; ///< Numbered from 1.
    ReadingReport report;
};

/// Weed notes from a table with the columns lon, lat, kind (none, thin, thick) and, where known,
/// height_m above the bottom. \return unusableInput where a column is missing or no row is usable.
[[nodiscard]] base::Result<ReadWeedNotes> readWeedNotes(const std::filesystem::path& path,
                                                        base::Progress& progress);

} // namespace readers
