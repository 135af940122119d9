// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/furniture.h"

#include <optional>

namespace chart {

/// Where marks for a day are shown whose wind keeps a small boat ashore, a band across the top of
/// the map that says so, in the colour of warnings; nothing on other days. On paper the sheet says
/// it itself, before the map.
[[nodiscard]] std::optional<FurniturePiece> ashoreBanner(const LayerContext& on);

} // namespace chart
