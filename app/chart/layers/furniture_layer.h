// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/layers/layer.h"

namespace chart {

/// Scale, north, wind, and the key to the depths.
class FurnitureLayer : public Layer {
public:
    [[nodiscard]] LayerKind kind() const override { return LayerKind::furniture; }
    void reserve(LayerContext& on) const override;
    void paint(LayerContext& on) const override;
};

} // namespace chart
