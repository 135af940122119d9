// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/tools/tool.h"

namespace chart {

/// A corner with each click; whole with a double click, Enter, or a click on the first corner.
class PolygonTool : public Tool {
public:
    std::optional<Made> press(geo::WaterPoint at) override;
    std::optional<Made> move(geo::WaterPoint at, bool isHeld) override;
    std::optional<Made> release(geo::WaterPoint at) override;
    std::optional<Made> finish() override;
    bool drop() override;
    bool stepBack() override;
    void paint(QPainter& painter, const ViewFrame& view, const Palette& palette) const override;

private:
    geo::Ring ring_;
    geo::WaterPoint under_;
};

} // namespace chart
