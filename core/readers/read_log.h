// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/logbook/trip.h"
#include "core/readers/reading_report.h"

#include <filesystem>
#include <map>

namespace readers {

struct ReadLog {
    logbook::Log log; ///< By start; runs and fish within their stays. Ids are the file's stay
                      ///< numbers.
    std::map<logbook::StayId, std::size_t> lines; ///< Where each stay stands in the file.
    ReadingReport report;
};

/// The log of stays, lost runs and fish in the table that `meremark-batch log` writes: columns in
/// any order; kind (stay, run, fish), stay, start, end, time, lon, lat, rods, bait, species,
/// weight_kg, length_mm, bait_depth_m, wind_from_deg, wind_speed_m_s, water_temperature_c, note.
/// `clock` says what times without a zone mean. A number that is none, or that cannot be, loses its
/// field and not its row. \return unusableInput where a column that is needed
/// is missing or no row is usable.
[[nodiscard]] base::Result<ReadLog> readLog(const std::filesystem::path& path,
                                            const units::Clock& clock, base::Progress& progress);

} // namespace readers
