// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/paper/sheet_parts.h"

namespace paper {

/// The day on as many pages as it takes: the chart, a table of the marks, cautions and rules, then
/// each mark at length, the first ones with a plan and a side view to scale, and room to write.
void writeLongSheet(SheetWriter& sheet, const chart::ChartContent& content);

} // namespace paper
