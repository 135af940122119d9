// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/layers/layer.h"

namespace chart {

/// Tracks as fine dots; what is set aside as small signs, one for each family of reasons.
class SoundingsLayer : public Layer {
public:
    [[nodiscard]] LayerKind kind() const override { return LayerKind::soundings; }
    void paint(LayerContext& on) const override;
    /// Soundings by lead line, with what the lead felt.
    void letter(LayerContext& on) const override;
};

} // namespace chart
