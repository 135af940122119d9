// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/layers/layer.h"

namespace chart {

/// Water that the user has banned: short strokes along its line, on the inner side, in the colour
/// of marks, for of them alone it speaks.
void drawBanned(LayerContext& on);
/// "banned", with its name, where there is room.
void letterBanned(LayerContext& on);

} // namespace chart
