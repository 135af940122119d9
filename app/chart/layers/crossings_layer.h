// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/layers/layer.h"

namespace chart {

/// Where two passes cross: a dot for each, by how far their depths differ.
class CrossingsLayer : public Layer {
public:
    [[nodiscard]] LayerKind kind() const override { return LayerKind::crossings; }
    void paint(LayerContext& on) const override;
};

} // namespace chart
