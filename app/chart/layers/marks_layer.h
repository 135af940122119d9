// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/layers/layer.h"

namespace chart {

/// Marks as numbers in rings; from near, and for the chosen one, the boat at its lie with ropes and
/// rods to scale.
class MarksLayer : public Layer {
public:
    [[nodiscard]] LayerKind kind() const override { return LayerKind::marks; }
    void reserve(LayerContext& on) const override;
    void paint(LayerContext& on) const override;
    void letter(LayerContext& on) const override;
};

} // namespace chart
