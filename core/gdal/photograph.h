// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/geo/lon_lat.h"
#include "core/units/moment.h"

#include <filesystem>
#include <optional>

namespace gdal {

/// When and where a photograph says that it was taken.
struct Photograph {
    std::optional<units::Moment> time;
    std::optional<geo::LonLat> place;
    friend bool operator==(const Photograph&, const Photograph&) = default;
};

/// Its EXIF fields: the satellites' date and time where there are any, else the camera's own with
/// its offset, and without one by `clock`. What is absent or cannot be read stays nothing. Source:
/// CIPA DC-008 (Exif 2.32), tags DateTimeOriginal, OffsetTimeOriginal, GPS IFD.
/// \return unusableInput where the file is no picture.
[[nodiscard]] base::Result<Photograph> readPhotograph(const std::filesystem::path& path,
                                                      const units::Clock& clock);

} // namespace gdal
