// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <QPagedPaintDevice>

#include <filesystem>
#include <functional>
#include <string>

namespace paper {

/// Lets `paint` draw pages into a PDF that appears whole or not at all.
/// \return what `paint` returns; unwritableOutput where the file cannot be written.
[[nodiscard]] base::Result<int>
savePdf(const std::filesystem::path& path, const std::string& title,
        const std::function<base::Result<int>(QPagedPaintDevice&)>& paint);

} // namespace paper
