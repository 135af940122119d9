// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/readers/soundings_file.h"
#include "core/readers/table_preview.h"

#include <filesystem>

namespace readers {

/// Looks at the beginning of a delimited text and guesses how to read it; what the settings say is
/// taken as it is. \return unusableInput where it is empty, no text, or has no rows.
[[nodiscard]] base::Result<TablePreview> readTablePreview(const std::filesystem::path& path,
                                                          const SoundingFileSettings& settings);

/// Soundings of delimited text: any separator, decimal comma, header or none, degrees in decimal or
/// degrees-minutes(-seconds), projected coordinates by EPSG number, metres, feet or fathoms.
/// \return unusableInput where no sounding can be got from it, wrongUse where a chosen column is
/// not there.
[[nodiscard]] base::Result<ReadSoundings> readTable(const std::filesystem::path& path,
                                                    const SoundingFileSettings& settings,
                                                    base::Progress& progress);

} // namespace readers
