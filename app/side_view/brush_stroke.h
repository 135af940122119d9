// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/side_view/track_profile.h"

namespace side_view {

/// Half the width of the brush in pixels.
inline constexpr double brushRadius = 9.0;

/// Draws the brush of the scene on to a pixel; takes up what it can act on and meets on its way:
/// what is kept where it sets aside, what is set aside where it takes back. A scene without a
/// brush stays as it is.
void drawOn(ProfileScene& scene, const QRectF& box, QPointF to);

/// The brush, what it has met, and what will happen to it.
void paintBrush(QPainter& painter, const ProfileScene& scene, const QRectF& box, double scale);

} // namespace side_view
