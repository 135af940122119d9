// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <filesystem>

namespace base {

/// More than any file of soundings, shores or pictures of one water has, in bytes.
inline constexpr std::uintmax_t mostReadable = std::uintmax_t{1} << 30U;

/// Whether `path` leads to a regular file, through links too: to be asked before it is opened,
/// since opening a pipe waits for somebody to write into it, and a device has no end.
/// \param most in bytes. \return its size in bytes; unusableInput where nothing is there, or a
/// folder, pipe or device, or a larger file: the message tells the limit.
[[nodiscard]] Result<std::uintmax_t> sizeOfReadableFile(const std::filesystem::path& path,
                                                        std::uintmax_t most = mostReadable);

} // namespace base
