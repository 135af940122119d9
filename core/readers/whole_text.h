// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <filesystem>
#include <string>

namespace readers {

/// All of a small text file. \return unusableInput where it is not there, empty, or of more than
/// 64 MiB.
[[nodiscard]] base::Result<std::string> wholeText(const std::filesystem::path& path);

} // namespace readers
