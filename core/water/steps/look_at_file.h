// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <filesystem>

namespace water {

/// What a file is about.
enum class FileContent {
    waterFile, ///< A water, to be opened.
    soundings,
    shoreline,
    line, ///< A line without depths: a shore that was walked, or the track of a fishing day.
    surveyDayFacts,
    waterFacts,
    weedNotes,
    leadLine,
    houseRules,
    log,
};

/// What a file is about, by its first 64 kB and not by its name: what to do with a file that the
/// user hands over without a word. A text of which nothing more is known is taken for soundings,
/// whose reader says what is wrong with it. \return unusableInput where the file is not there, may
/// not be read, or is empty.
[[nodiscard]] base::Result<FileContent> lookAtFile(const std::filesystem::path& path);

} // namespace water
