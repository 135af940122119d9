// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/readers/soundings_file.h"

#include <filesystem>

namespace readers {

/// Soundings of crowdsourced bathymetry after IHO B-12, as GeoJSON or as a text table with the
/// columns LON, LAT, DEPTH, TIME.
/// \return unusableInput where no sounding can be got from it (what is wrong, where, what to do).
[[nodiscard]] base::Result<ReadSoundings> readB12(const std::filesystem::path& path,
                                                  const SoundingFileSettings& settings,
                                                  base::Progress& progress);

} // namespace readers
