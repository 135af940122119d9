// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/layers/layer.h"

namespace chart {

/// Kinds of bottom as drawn texture: hachures that point downhill, stipple on humps.
class StructureLayer : public Layer {
public:
    [[nodiscard]] LayerKind kind() const override { return LayerKind::structure; }
    void paint(LayerContext& on) const override;
    void letter(LayerContext& on) const override;
};

} // namespace chart
