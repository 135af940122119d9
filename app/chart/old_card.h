// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/layers/layer.h"

#include <QString>

namespace chart {

/// What the chart says of its age: "Marks older than your last change: being worked out anew".
/// Empty where all that is shown is of now.
[[nodiscard]] QString oldWords(const ContentAge& age, bool showsMarks);

/// A card with these words and its middle there.
void drawOldCard(QPainter& painter, const Palette& palette, QPointF middle, const QString& words,
                 double scale);
/// The card of a chart, over everything else; nothing where there is nothing to say.
void drawOldCard(LayerContext& on);

} // namespace chart
