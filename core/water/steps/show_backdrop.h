// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/water/document/backdrop.h"
#include "core/water/document/water.h"

#include <filesystem>
#include <optional>

namespace water {

/// Where a backdrop lies.
struct BackdropPlace {
    geo::WaterFrame frame; ///< The water's, or one round the backdrop where it has none yet.
    geo::Box whole;
};

/// Looks whether a raster or vector file can lie under the chart of this water. \param around what
/// is known of where the water lies; empty: anywhere will do.
/// \return unusableInput where the file cannot be read, does not say where on the Earth it lies, or
/// lies away from the water (the error says how far).
[[nodiscard]] base::Result<BackdropPlace>
lookAtBackdrop(const std::filesystem::path& path, const std::optional<geo::WaterFrame>& frame,
               const geo::Box& around, base::Progress& progress);

/// The part of it that lies in the window. Lines are simplified to half a pixel of it.
/// \return as lookAtBackdrop(); wrongUse for a window without pixels; cancelled.
[[nodiscard]] base::Result<Backdrop> showBackdrop(const std::filesystem::path& path,
                                                  const BackdropPlace& place,
                                                  const gdal::PictureWindow& window,
                                                  base::Progress& progress);

} // namespace water
