// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/layers/layer.h"

namespace chart {

/// Small text on a card of the chart: it begins at `left`, its capitals' middle at its y.
void drawFrom(LayerContext& on, QPointF left, const QString& text, const QColor& letters);

} // namespace chart
