// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/layers/layer.h"

namespace chart {

/// Names of places, and the launch.
class PlacesLayer : public Layer {
public:
    [[nodiscard]] LayerKind kind() const override { return LayerKind::places; }
    void reserve(LayerContext& on) const override;
    void paint(LayerContext& on) const override;
    void letter(LayerContext& on) const override;
};

} // namespace chart
