// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/layers/layer.h"

namespace chart {

/// Stays as boats, larger with more rod-hours, hollow where blank; fish beside them; the day's
/// track.
class LogLayer : public Layer {
public:
    [[nodiscard]] LayerKind kind() const override { return LayerKind::log; }
    void paint(LayerContext& on) const override;
};

} // namespace chart
