// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/readers/reading_report.h"
#include "core/soundings/lead_line.h"

#include <filesystem>
#include <vector>

namespace readers {

struct ReadLeadLine {
    std::vector<soundings::LeadLineSounding> soundings; ///< Numbered from 1.
    ReadingReport report;
};

/// Soundings by hand from a table with the columns lon, lat, depth_m and, where known, bottom
/// (soft, gravel, rock, weed). \return unusableInput where a column is missing or no row is usable.
[[nodiscard]] base::Result<ReadLeadLine> readLeadLine(const std::filesystem::path& path,
                                                      base::Progress& progress);

} // namespace readers
