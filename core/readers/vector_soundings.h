// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/readers/soundings_file.h"

#include <filesystem>

namespace readers {

/// Soundings of every layer of a vector file: points, or the corners of lines, with the depth from
/// a field (chosen, or one whose name says depth) or from the third coordinate. Shared by
/// read_vector and read_b12.
[[nodiscard]] base::Result<ReadSoundings> soundingsOfVector(const std::filesystem::path& path,
                                                            SoundingFileKind kind,
                                                            const SoundingFileSettings& settings,
                                                            base::Progress& progress);

} // namespace readers
