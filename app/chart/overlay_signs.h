// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/chart_content.h"
#include "app/chart/furniture.h"
#include "app/chart/lie_part.h"
#include "app/chart/palette.h"
#include "app/chart/view_frame.h"

#include <QPainter>

namespace chart {

// What is drawn over the painted chart at once, because it follows the hand.

inline constexpr double chosenRadius = 10.0;

/// The ring round what was chosen to be looked at.
void drawChosenSign(QPainter& painter, const Palette& palette, QPointF at);
/// The cross at what is pointed at elsewhere.
void drawPointedSign(QPainter& painter, const Palette& palette, QPointF at);
/// The ring of a mark under the hand.
void drawHeldRing(QPainter& painter, const Palette& palette, QPointF at, int rank, double scale);
/// The wind's arrow under the hand, with where it blows from.
void drawTurnedWind(QPainter& painter, const Palette& palette, const WindArrow& arrow,
                    units::Bearing from, double scale);
/// The lie that is being tried, to scale, with ropes, knots and what it breaks.
void drawTried(QPainter& painter, const ViewFrame& view, const ChartContent& content,
               const TriedLie& tried);

} // namespace chart
