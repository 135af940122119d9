// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/paper/sheet_parts.h"

namespace paper {

/// The day on one sheet, front and back: head, chart with the way, a card a mark, then cautions,
/// rules and the rest, and lines for a pencil in the room that is left. The chart gives way to what
/// has to be read; where even so two pages are too few, there are more.
void writeOneSheet(SheetWriter& sheet, const chart::ChartContent& content);

} // namespace paper
