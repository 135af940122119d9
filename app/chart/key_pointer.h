// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/palette.h"

#include <QPainter>
#include <QPointF>

#include <optional>

namespace chart {

/// The pointer that the arrow keys move while a tool is in the hand.
struct KeyPointer {
    QPointF at;
    bool isHeld = false; ///< As if the button were held.
};

/// How far an arrow key moves it, in pixels: finely, and with Shift in great steps. Nothing for any
/// other key.
[[nodiscard]] std::optional<QPointF> stepOfArrow(int key, Qt::KeyboardModifiers modifiers);

/// A ring with four hairs; full while held.
void drawKeyPointer(QPainter& painter, const Palette& palette, const KeyPointer& pointer,
                    double scale);

} // namespace chart
