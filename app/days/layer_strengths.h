// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/layer_kind.h"

#include <map>

namespace days {

/// How strongly the user has the layers of chart::fadingLayers drawn, as kept for him: over 0 to 1.
[[nodiscard]] std::map<chart::LayerKind, double> keptStrengths();
/// \param kind one of chart::fadingLayers.
void keepStrength(chart::LayerKind kind, double strength);

} // namespace days
