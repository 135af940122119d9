// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/layers/layer.h"

namespace chart {

/// Reeds where weed was met or is likely.
class WeedLayer : public Layer {
public:
    [[nodiscard]] LayerKind kind() const override { return LayerKind::weed; }
    void paint(LayerContext& on) const override;
};

} // namespace chart
