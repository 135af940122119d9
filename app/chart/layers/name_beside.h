// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/layers/layer.h"
#include "app/chart/lettering.h"

namespace chart {

/// Sets a name beside a small thing, where there is room for it on the chart; nowhere otherwise.
void nameBeside(LayerContext& on, QPointF at, const QString& name, TypeStyle style);

} // namespace chart
