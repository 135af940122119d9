// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/marks/told_marks.h"
#include "core/water/document/derived.h"
#include "core/water/document/water.h"

#include <filesystem>
#include <span>

namespace store {

/// Writes a whole new water file in one go: the water, and what `found` holds of the drawing and of
/// what was found in it. It appears whole or not at all. \return unwritableOutput, also where a
/// file of that name is there by then (another program may have it open: WaterStore::saveWhole);
/// waterInUse where another program is making it; cancelled.
[[nodiscard]] base::Result<void> writeWater(const std::filesystem::path& path,
                                            const water::Water& water, const water::Derived& found,
                                            const marks::ToldMarks& told, base::Progress& progress);

} // namespace store
