// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/error.h"

#include <filesystem>

namespace base {

/// Why `path` cannot be written, by the system's number: unwritableOutput.
[[nodiscard]] Error cannotWrite(const std::filesystem::path& path, int code);

/// Brings the names in a folder on to the disk: a file that was put in its place lasts from then
/// on. Some file systems cannot say so. \param folder empty for the present one.
void syncFolder(const std::filesystem::path& folder);

/// Where a name leads, through links, also to a file that is not there yet; the name itself where
/// links lead round in a circle.
[[nodiscard]] std::filesystem::path throughLinks(const std::filesystem::path& wanted);

/// Whoever could read and write the file that stands at `older` can do so with `newer`.
void takeModeOf(const std::filesystem::path& older, const std::filesystem::path& newer);

} // namespace base
