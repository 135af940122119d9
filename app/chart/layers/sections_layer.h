// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/layers/layer.h"

namespace chart {

/// Borders of sections as a thin double line, the names along the middle of their water.
class SectionsLayer : public Layer {
public:
    [[nodiscard]] LayerKind kind() const override { return LayerKind::sections; }
    void paint(LayerContext& on) const override;
    void letter(LayerContext& on) const override;
};

} // namespace chart
