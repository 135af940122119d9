// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainterPath>

namespace chart {

/// The filled head of an arrow with its tip at `to`, coming from `from`. \param size length in
/// pixels.
[[nodiscard]] QPainterPath arrowHead(QPointF from, QPointF to, double size);

} // namespace chart
