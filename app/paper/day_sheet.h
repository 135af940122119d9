// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/chart_content.h"
#include "core/base/result.h"

#include <QPagedPaintDevice>

#include <filesystem>

namespace paper {

/// The printed pages for the boat: the day, the chart with its numbered marks, a table of the marks
/// in the order of the day, for each its anchors, rods, reasons and cautions, the first ones with a
/// plan and a side view to scale, and room to write. Black and white, on the paper that the device
/// is set to. \return pages written; wrongUse where nothing is planned, unwritableOutput where the
/// device cannot be drawn on.
[[nodiscard]] base::Result<int> paintDaySheet(QPagedPaintDevice& device,
                                              const chart::ChartContent& content);

/// The same as a PDF file, written whole or not at all.
[[nodiscard]] base::Result<int> saveDaySheet(const std::filesystem::path& path,
                                             const chart::ChartContent& content);

} // namespace paper
