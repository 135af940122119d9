// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/gdal/session.h"

#include <filesystem>
#include <string>

#include <gdal_priv.h>

namespace gdal {

/// What is looked for in a file.
enum class Holding { vectors, raster };

/// The one way in which files are opened here. Only regular files, and only by drivers that read
/// the file named and what lies beside it under the same name: formats that lead to other files, to
/// servers or to databases are not asked, whatever the file says of itself. For the insides of this
/// folder. \param what names what was wanted in a sentence: "it is no picture that can be read".
/// \return unusableInput, with GDAL's complaint.
[[nodiscard]] base::Result<GDALDatasetUniquePtr> openData(const std::filesystem::path& path,
                                                          Holding holding, const Session& session,
                                                          const std::string& what,
                                                          const std::string& whatToDo);

} // namespace gdal
