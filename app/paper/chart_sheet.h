// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/chart_content.h"
#include "core/base/result.h"

#include <QPagedPaintDevice>

#include <filesystem>

namespace paper {

/// The whole chart on one A4 page, upright or wide as the water is, at a round scale that is
/// written beside its name. In light colours unless `content.inks` are grey.
/// \return 1 page; wrongUse where there is no water to draw, unwritableOutput.
[[nodiscard]] base::Result<int> paintChartSheet(QPagedPaintDevice& device,
                                                const chart::ChartContent& content);
[[nodiscard]] base::Result<int> saveChartSheet(const std::filesystem::path& path,
                                               const chart::ChartContent& content);

} // namespace paper
