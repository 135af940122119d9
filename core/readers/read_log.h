// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/logbook/trip.h"
#include "core/readers/reading_report.h"

#include <filesystem>
#include <map>
#include <vector>

namespace readers {

/// A run that names no stay; when it was taken says which one it belongs to.
struct LooseRun {
    logbook::Fish run;
    std::size_t line = 0;
    std::string row;
};

struct ReadLog {
    logbook::Log log; ///< By start; runs and fish within their stays. Ids are the file's stay
                      ///< numbers.
    std::map<logbook::StayId, std::size_t> lines; ///< Where each stay stands in the file.
    std::vector<LooseRun> loose; ///< Within none of the file's stays; counted as used.
    ReadingReport report;
};

/// The log of stays, lost runs and fish in the table that `meremark-batch log` writes
/// (logbook::LogColumn), or as somebody's spreadsheet wrote it (LogTable). `clock` says what times
/// without a zone mean. What is no amount, no time, or cannot be, loses its field and not its row:
/// a stay whose end is not known lasts no time, and a fish may have none. A column that is none of
/// a log's is kept with its stay or fish. \return unusableInput where a column that is needed is
/// missing or no row is usable.
[[nodiscard]] base::Result<ReadLog> readLog(const std::filesystem::path& path,
                                            const units::Clock& clock, base::Progress& progress);

} // namespace readers
