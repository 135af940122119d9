// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/layers/layer.h"

namespace chart {

/// Bands as steps of the depth ramp on paper, faded and hatched where the depth is a guess, and the
/// shore.
class DepthLayer : public Layer {
public:
    [[nodiscard]] LayerKind kind() const override { return LayerKind::depth; }
    void paint(LayerContext& on) const override;
};

} // namespace chart
