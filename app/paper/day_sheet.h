// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/chart_content.h"
#include "core/base/result.h"

#include <QPagedPaintDevice>

#include <filesystem>

namespace paper {

/// How much paper the day gets.
enum class SheetForm {
    /// One sheet, front and back, for up to eight marks; on smaller paper, such as A5 for the
    /// pocket, the same blocks on as many pages as they take. No letter of its text under 11
    /// points.
    oneSheet,
    /// The same day at length, the first marks with a plan and a side view to scale.
    withPictures,
};

/// The printed pages for the boat: the day, the chart with its numbered marks and the way, and for
/// each mark in the order of the day its anchors, ropes, rods, reasons and cautions; then cautions
/// and rules, and room to write. Black and white, on the paper that the device is set to.
/// \return pages written; wrongUse where nothing is planned or the plan is old, unwritableOutput
/// where the device cannot be drawn on.
[[nodiscard]] base::Result<int> paintDaySheet(QPagedPaintDevice& device,
                                              const chart::ChartContent& content, SheetForm form);

/// The same as a PDF file on this paper, written whole or not at all.
[[nodiscard]] base::Result<int> saveDaySheet(const std::filesystem::path& path,
                                             const chart::ChartContent& content, SheetForm form,
                                             const QPageSize& paper = QPageSize(QPageSize::A4));

} // namespace paper
