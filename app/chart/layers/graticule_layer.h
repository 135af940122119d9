// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/layers/layer.h"

namespace chart {

/// Meridians and parallels, with their degrees at the edge of the page.
class GraticuleLayer : public Layer {
public:
    [[nodiscard]] LayerKind kind() const override { return LayerKind::graticule; }
    void paint(LayerContext& on) const override;
    void letter(LayerContext& on) const override;
};

} // namespace chart
