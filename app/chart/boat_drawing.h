// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/length.h"

#include <QPainterPath>
#include <QPointF>

namespace chart {

/// A boat seen from above, its middle at the origin and its bow up: `length` and a beam of 0.38 of
/// it, in the units of the painter.
[[nodiscard]] QPainterPath boatFromAbove(double length);
/// A boat seen from the side, bow to the right, its keel line at y = 0 and its rail above
/// (negative y).
[[nodiscard]] QPainterPath boatFromTheSide(double length, double height);
/// A fish swimming to the right, its middle at the origin.
[[nodiscard]] QPainterPath fishShape(double length);
/// An anchor's place: a cross with equal arms.
[[nodiscard]] QPainterPath crossShape(QPointF middle, double arm);

} // namespace chart
