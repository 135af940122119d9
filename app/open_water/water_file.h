// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/first_look.h"
#include "core/store/water_store.h"
#include "core/water/document/derived.h"
#include "core/water/document/water.h"

#include <filesystem>
#include <functional>
#include <memory>

namespace open_water {

/// A water file as it was read: open, with the water that it holds and the drawing that was kept.
struct WaterFile {
    std::unique_ptr<store::WaterStore> store;
    water::Water water;
    /// The shore and the drawing kept, with the stamp of the water that it was drawn from: that of
    /// an earlier state where the water was changed after it was last drawn.
    water::Derived kept;
};

/// Opens and reads a water file. Knows no thread. \param look given the drawing that was kept,
/// where there is one, before the long lists are read. \return the error of store::open() or of
/// reading; cancelled.
[[nodiscard]] base::Result<WaterFile>
readWaterFile(const std::filesystem::path& path, base::Progress& progress,
              const std::function<void(const FirstLook&)>& look = nullptr,
              store::Purpose purpose = store::Purpose::writing);

/// The shore and the drawing kept in a water file that is not going to be changed through this: one
/// of the waters opened lately, or a copy. Quick however long its lists are. Writes nothing.
/// \return unusableInput for a file of another version, which had to be brought up to date first;
/// the error of store::open() or of reading.
[[nodiscard]] base::Result<FirstLook> firstLookAt(const std::filesystem::path& path,
                                                  base::Progress& progress);

} // namespace open_water
