// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/layers/layer.h"

namespace chart {

/// Where the bottom has surely risen or fallen since an earlier survey: strewn signs, the larger
/// the more, so that the depths below can be read. Only while two surveys are compared.
class ChangeLayer : public Layer {
public:
    [[nodiscard]] LayerKind kind() const override { return LayerKind::change; }
    void paint(LayerContext& on) const override;
};

} // namespace chart
