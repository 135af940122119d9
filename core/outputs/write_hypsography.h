// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/surface/hypsography.h"

#include <filesystem>

namespace outputs {

/// Area and volume below each whole metre as a text table after RFC 4180: depth_m, area_m2,
/// volume_m3. \return unwritableOutput.
[[nodiscard]] base::Result<void> writeHypsographyTable(const std::filesystem::path& path,
                                                       const surface::Hypsography& form);

} // namespace outputs
