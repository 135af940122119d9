// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/tools/tool.h"

namespace chart {

/// Held and drawn round things; whole when let go.
class LassoTool : public Tool {
public:
    [[nodiscard]] bool drawsWhileHeld() const override { return true; }
    std::optional<Made> press(geo::WaterPoint at) override;
    std::optional<Made> move(geo::WaterPoint at, bool isHeld) override;
    std::optional<Made> release(geo::WaterPoint at) override;
    bool drop() override;
    void paint(QPainter& painter, const ViewFrame& view, const Palette& palette) const override;

private:
    geo::Ring ring_;
};

} // namespace chart
