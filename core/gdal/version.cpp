// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gdal/version.h"

#include <gdal.h>

namespace gdal {

std::string gdalVersion() {
    return GDALVersionInfo("RELEASE_NAME");
}

} // namespace gdal
