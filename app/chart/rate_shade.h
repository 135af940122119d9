// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/layers/layer.h"
#include "app/chart/shown_rates.h"

#include <QPainterPath>

namespace chart {

/// The shade of a steadied rate, from pale at none to dark at `most`: its lightness alone tells the
/// rate, so that it can be read in grey.
[[nodiscard]] QColor shadeOf(const Palette& palette, double per10RodHours, double most);

/// What breaks the shade up, the more the less sure it is; `isTried` false: no shade at all, but
/// lines aslant.
void breakUp(LayerContext& on, const QPainterPath& path, Sureness sureness);
void slant(LayerContext& on, const QPainterPath& path);

/// The key of the shades: how large it is, and the drawing of it.
[[nodiscard]] QSizeF rateKeySize(const LayerContext& on);
void drawRateKey(LayerContext& on, const QRectF& box);

} // namespace chart
