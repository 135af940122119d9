// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/layers/layer.h"

namespace chart {

/// Lines of equal depth, dashed where a guess, each with its depth set into it.
class ContoursLayer : public Layer {
public:
    [[nodiscard]] LayerKind kind() const override { return LayerKind::contours; }
    void paint(LayerContext& on) const override;
    void letter(LayerContext& on) const override;
};

} // namespace chart
