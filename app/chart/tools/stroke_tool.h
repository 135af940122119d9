// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/tools/tool.h"

namespace chart {

/// A line drawn with the button held, straight or bent; whole when let go.
class StrokeTool : public Tool {
public:
    [[nodiscard]] bool drawsWhileHeld() const override { return true; }
    std::optional<Made> press(geo::WaterPoint at) override;
    std::optional<Made> move(geo::WaterPoint at, bool isHeld) override;
    std::optional<Made> release(geo::WaterPoint at) override;
    bool drop() override;
    void paint(QPainter& painter, const ViewFrame& view, const Palette& palette) const override;

private:
    geo::Path line_;
};

} // namespace chart
