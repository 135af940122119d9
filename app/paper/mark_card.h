// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/paper/mark_block.h"

namespace paper {

/// One mark as a block that is read at arm's length by head torch: place and times, where to drop
/// both anchors and on how much rope, each rod's stop knot, why, and what to mind. On narrow paper
/// the rods stand under the anchors. Cautions in `saidBefore` stand elsewhere on the sheet and are
/// left out here.
[[nodiscard]] double cardHeight(const chart::ChartContent& content, const MarkOfDay& entry,
                                double width, const QStringList& saidBefore);
/// The same, written. Never broken over two pages.
void writeCard(SheetWriter& sheet, const chart::ChartContent& content, const MarkOfDay& entry,
               const QStringList& saidBefore);

/// The text of the sheet's one-page form: 11 points and a little.
[[nodiscard]] QFont cardFont(bool isBold = false);

} // namespace paper
