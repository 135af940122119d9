// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/store/water_store.h"
#include "core/water/document/derived.h"
#include "core/water/document/water.h"

#include <filesystem>
#include <memory>

namespace batch {

/// A water file that is open, with the water that it holds and all that follows from it.
struct OpenedWater {
    std::unique_ptr<store::WaterStore> store;
    water::Water water;
    water::Derived derived;
};

/// Opens the file to look at it and loads the water; nothing is derived. Whoever writes it
/// meanwhile is not kept from that.
[[nodiscard]] base::Result<OpenedWater> openWater(const std::filesystem::path& path,
                                                  base::Progress& progress);

/// The same for verbs that change the water: nobody else can, until it is let go of.
/// \param wait_s how long to wait for another program that has it; who that is, is told on standard
/// error. \return waterInUse where it still has it then; unusableInput where a newer version keeps
/// it; cancelled.
[[nodiscard]] base::Result<OpenedWater> openWaterToChange(const std::filesystem::path& path,
                                                          double wait_s, base::Progress& progress);

/// What is needed of all that follows from a water.
enum class Needed {
    plan, ///< What a day is planned on; see water::deriveToPlan().
    all,
};

/// Derives what follows from the water, from the drawing kept in its file where that still holds.
/// \return also the failure of the drawing, where there is none.
[[nodiscard]] base::Result<void> deriveOpened(OpenedWater& opened, base::Progress& progress,
                                              Needed needed = Needed::all);

/// Both.
[[nodiscard]] base::Result<OpenedWater> openDrawnWater(const std::filesystem::path& path,
                                                       base::Progress& progress);

} // namespace batch
