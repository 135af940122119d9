// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/layers/layer.h"

namespace chart {

/// A picture or lines under the chart, to trace the shore over.
class BackdropLayer : public Layer {
public:
    [[nodiscard]] LayerKind kind() const override { return LayerKind::backdrop; }
    void paint(LayerContext& on) const override;
};

/// How much of the depths' colour is left, over 0 to 1: as strongly as they are to be drawn, and
/// less over a backdrop.
[[nodiscard]] double depthOpacity(const ChartContent& content);

} // namespace chart
