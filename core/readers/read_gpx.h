// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/readers/soundings_file.h"

#include <filesystem>

namespace readers {

/// Soundings of a GPX 1.1 file: tracks, routes and waypoints with a depth in extensions, in the
/// name, or as negative elevation. \return unusableInput where no sounding can be got from it (what
/// is wrong, where, what to do).
[[nodiscard]] base::Result<ReadSoundings> readGpx(const std::filesystem::path& path,
                                                  const SoundingFileSettings& settings,
                                                  base::Progress& progress);

} // namespace readers
