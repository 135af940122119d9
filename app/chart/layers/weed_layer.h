// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/layers/layer.h"

namespace chart {

/// Reeds where weed was met or is likely; the notes themselves while weed is what one works at.
class WeedLayer : public Layer {
public:
    [[nodiscard]] LayerKind kind() const override { return LayerKind::weed; }
    void paint(LayerContext& on) const override;

private:
    static void paintReeds(LayerContext& on);
};

} // namespace chart
