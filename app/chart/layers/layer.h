// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/chart_content.h"
#include "app/chart/label_space.h"
#include "app/chart/palette.h"
#include "app/chart/view_frame.h"

#include <QPainter>
#include <QPainterPath>

namespace chart {

/// What a layer is given to draw with, on the screen, in a picture and on paper alike.
struct LayerContext {
    QPainter& painter;
    const ViewFrame& view;
    const ChartContent& content;
    const Palette& palette;
    LabelSpace& labels;
    double scale = 1.0; ///< Of letters and pens: 1 on the screen.
};

/// One kind of thing on the chart. A chart is painted in three rounds: every layer reserves the
/// places of what it draws in any case, then all shapes from the bottom up, then the letters, the
/// weightiest first, each only where there is room.
class Layer {
public:
    Layer() = default;
    Layer(const Layer&) = delete;
    Layer& operator=(const Layer&) = delete;
    Layer(Layer&&) = delete;
    Layer& operator=(Layer&&) = delete;
    virtual ~Layer() = default;

    [[nodiscard]] virtual LayerKind kind() const = 0;
    virtual void reserve(LayerContext& on) const { static_cast<void>(on); }
    virtual void paint(LayerContext& on) const = 0;
    virtual void letter(LayerContext& on) const { static_cast<void>(on); }
};

} // namespace chart
