// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/gdal/picture.h"
#include "core/geo/path.h"

#include <vector>

namespace water {

/// A picture or lines from a file, as seen through one window of the water's frame: what a shore
/// is traced over. It belongs to no water; its file does.
struct Backdrop {
    geo::Box whole; ///< All that the file covers.
    /// Of what part, and how finely, the rest tells.
    gdal::PictureWindow window;
    std::vector<std::uint32_t> argb; ///< 0xAARRGGBB; empty where the file holds lines.
    std::vector<geo::Path> lines;    ///< Empty where the file holds a picture.
};

} // namespace water
