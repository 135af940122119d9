// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/chart_content.h"
#include "app/paper/sheet_writer.h"
#include "core/marks/mark.h"

#include <optional>

namespace paper {

/// A mark with its turn in the day.
struct MarkOfDay {
    marks::Mark mark;
    std::optional<marks::DayStop> stop;
};

/// The three reasons that count most for the mark, in the user's units, the weightiest first.
[[nodiscard]] QStringList reasonsOf(const marks::Mark& mark, const wording::Words& words);

/// One mark on the sheet: anchors, rods, reasons, cautions; with `drawn` also a plan and a side
/// view to scale. Cautions in `saidBefore` stand elsewhere on the sheet and are left out here.
/// Never broken over two pages.
void writeMark(SheetWriter& sheet, const chart::ChartContent& content, const MarkOfDay& entry,
               bool drawn, const QStringList& saidBefore);

} // namespace paper
