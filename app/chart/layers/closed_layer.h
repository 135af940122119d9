// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/layers/layer.h"

namespace chart {

/// Closed water, crossed through both ways.
class ClosedLayer : public Layer {
public:
    [[nodiscard]] LayerKind kind() const override { return LayerKind::closed; }
    void paint(LayerContext& on) const override;
    void letter(LayerContext& on) const override;
};

} // namespace chart
