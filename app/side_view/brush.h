// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPointF>

#include <cstddef>
#include <optional>
#include <set>

namespace side_view {

/// What the hand does to the soundings that it is drawn over.
enum class BrushAct { setAside, takeBack };

/// A brush in the hand, to be drawn over the soundings of a track. A value.
struct Brush {
    BrushAct act = BrushAct::setAside;
    std::optional<QPointF> at; ///< Where it is; nothing while it is elsewhere.
    bool isHeld = false;       ///< The button is down.
    std::set<std::size_t> met; ///< In this stroke; positions in the profile's points.
};

} // namespace side_view
