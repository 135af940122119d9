// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/layers/layer.h"

namespace chart {

/// Where to sound next, numbered in the order of the trip.
class NextLinesLayer : public Layer {
public:
    [[nodiscard]] LayerKind kind() const override { return LayerKind::nextLines; }
    void paint(LayerContext& on) const override;
    void letter(LayerContext& on) const override;
};

} // namespace chart
