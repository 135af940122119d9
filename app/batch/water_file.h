// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/store/water_store.h"
#include "core/water/derived.h"
#include "core/water/water.h"

#include <filesystem>
#include <memory>

namespace batch {

/// A water file that is open, with the water that it holds and all that follows from it.
struct OpenedWater {
    std::unique_ptr<store::WaterStore> store;
    water::Water water;
    water::Derived derived;
};

/// Opens the file and loads the water; nothing is derived.
[[nodiscard]] base::Result<OpenedWater> openWater(const std::filesystem::path& path,
                                                  base::Progress& progress);

/// Derives everything that follows from the water, from the drawing kept in its file where that
/// still holds. \return also the failure of the drawing, where there is none.
[[nodiscard]] base::Result<void> deriveOpened(OpenedWater& opened, base::Progress& progress);

/// Both.
[[nodiscard]] base::Result<OpenedWater> openDrawnWater(const std::filesystem::path& path,
                                                       base::Progress& progress);

} // namespace batch
