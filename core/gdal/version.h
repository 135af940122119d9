// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace gdal {

/// The version of GDAL in use, "3.6.2", for --version.
[[nodiscard]] std::string gdalVersion();

} // namespace gdal
