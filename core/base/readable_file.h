// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <filesystem>

namespace base {

/// Whether `path` leads to a regular file, through links too: to be asked before it is opened,
/// since opening a pipe waits for somebody to write into it, and a device has no end. \return its
/// size in bytes; unusableInput where nothing is there, or a folder, pipe or device.
[[nodiscard]] Result<std::uintmax_t> sizeOfReadableFile(const std::filesystem::path& path);

} // namespace base
