// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <filesystem>

#include <nlohmann/json_fwd.hpp>

namespace batch {

/// Writes the report whole or not at all, to standard output where the path is "-" or empty.
[[nodiscard]] base::Result<void> writeReport(const std::filesystem::path& path,
                                             const nlohmann::ordered_json& report);

/// `value` rounded to `decimals`, so that reports read well; not a number becomes null.
[[nodiscard]] nlohmann::ordered_json rounded(double value, int decimals);

} // namespace batch
