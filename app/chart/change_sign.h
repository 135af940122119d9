// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/layers/layer.h"

namespace chart {

/// The sign of a bottom that has risen (a dot, a heap seen from above) or fallen (a ring, a hole):
/// told apart by shape and not by colour, as large as the change up to a metre.
void drawChange(LayerContext& on, QPointF at, double rise_m);

/// What the signs mean: how large its card is, and the card itself.
[[nodiscard]] QSizeF changeKeySize(double scale);
void drawChangeKey(LayerContext& on, const QRectF& box);

} // namespace chart
