// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/layers/layer.h"

namespace chart {

/// Sections or zones, the darker the more fish are to be expected, and the more broken up the less
/// sure that is. Only while rates are to be seen.
class RatesLayer : public Layer {
public:
    [[nodiscard]] LayerKind kind() const override { return LayerKind::rates; }
    void paint(LayerContext& on) const override;
};

} // namespace chart
