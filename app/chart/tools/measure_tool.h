// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/tools/tool.h"
#include "app/wording/words.h"

namespace chart {

/// How far it is along a way of clicked places, and which way its last leg leads, written beside
/// the pointer. Backspace takes a place back; Enter, a double click or Escape end it.
class MeasureTool : public Tool {
public:
    void takeContent(const ChartContent& content) override;
    std::optional<Made> press(geo::WaterPoint at) override;
    std::optional<Made> move(geo::WaterPoint at, bool isHeld) override;
    std::optional<Made> release(geo::WaterPoint at) override;
    std::optional<Made> finish() override;
    bool drop() override;
    bool stepBack() override;
    void paint(QPainter& painter, const ViewFrame& view, const Palette& palette) const override;

private:
    [[nodiscard]] QString said() const;

    geo::Path way_;
    geo::WaterPoint under_;
    bool isFinished_ = false; ///< It stays to be read until the next click.
    wording::Words words_;
    double scale_ = 1.0;
};

/// "412 m, last leg 120 m 058°"; of one leg "412 m 058°". Empty for less than two places.
[[nodiscard]] QString measuredWords(const geo::Path& way, const wording::Words& words);

} // namespace chart
