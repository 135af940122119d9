// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/tools/tool.h"

namespace chart {

/// Press, draw, let go: a straight line through the water.
class CutLineTool : public Tool {
public:
    [[nodiscard]] bool drawsWhileHeld() const override { return true; }
    std::optional<Made> press(geo::WaterPoint at) override;
    std::optional<Made> move(geo::WaterPoint at, bool isHeld) override;
    std::optional<Made> release(geo::WaterPoint at) override;
    bool drop() override;
    void paint(QPainter& painter, const ViewFrame& view, const Palette& palette) const override;

private:
    std::optional<geo::WaterPoint> from_;
    geo::WaterPoint to_;
};

/// The line of a cut that is shown from the side.
void paintCut(QPainter& painter, const ViewFrame& view, const LineMade& cut,
              const Palette& palette);

} // namespace chart
