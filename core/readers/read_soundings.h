// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/readers/soundings_file.h"

#include <filesystem>

namespace readers {

/// What kind of file this is, by what it holds, not by its name.
/// \return unusableInput where it is not there, is empty, or is of no kind that we read.
[[nodiscard]] base::Result<SoundingFileKind> readKindOf(const std::filesystem::path& path);

/// Soundings of any file that we read. Good rows are used, bad ones counted by reason in the
/// report. \return unusableInput where there is no usable row: what is wrong, where, what to do.
[[nodiscard]] base::Result<ReadSoundings> readSoundings(const std::filesystem::path& path,
                                                        const SoundingFileSettings& settings,
                                                        base::Progress& progress);

} // namespace readers
