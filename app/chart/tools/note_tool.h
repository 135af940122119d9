// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/tools/tool.h"

namespace chart {

/// One click, one place: a weed note, the launch, a mark, a named place.
class NoteTool : public Tool {
public:
    std::optional<Made> press(geo::WaterPoint at) override;
    std::optional<Made> move(geo::WaterPoint at, bool isHeld) override;
    std::optional<Made> release(geo::WaterPoint at) override;

    void paint(QPainter& painter, const ViewFrame& view, const Palette& palette) const override;

private:
    std::optional<geo::WaterPoint> under_;
};

} // namespace chart
