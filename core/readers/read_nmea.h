// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/readers/soundings_file.h"

#include <filesystem>

namespace readers {

/// Soundings of an NMEA 0183 log: GGA, GLL, RMC, ZDA, VTG, DPT, DBT, DBS, DBK, MTW of any talker,
/// other sentences passed over. \return unusableInput where no sounding can be got from it (what is
/// wrong, where, what to do).
[[nodiscard]] base::Result<ReadSoundings> readNmea(const std::filesystem::path& path,
                                                   const SoundingFileSettings& settings,
                                                   base::Progress& progress);

} // namespace readers
