// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/area.h"
#include "core/units/depth.h"
#include "core/units/length.h"
#include "core/units/speed.h"

#include <optional>

namespace anchoring {

// A tight rope is a straight line: rope in water weighs nearly nothing, only chain sags.

/// From the bottom at the anchor to where the rope meets the boat.
[[nodiscard]] units::Length riseOf(units::Depth depthAtAnchor, units::Length cleatHeight);

/// Rope paid out for a scope (rope divided by rise).
[[nodiscard]] units::Length ropeForScope(double scope, units::Depth depthAtAnchor,
                                         units::Length cleatHeight);

/// Rope divided by rise; nothing where there is no rise.
[[nodiscard]] std::optional<double> scopeOf(units::Length rope, units::Depth depthAtAnchor,
                                            units::Length cleatHeight);

/// How far from the boat the anchor lies once the rope is tight: sqrt(rope^2 - rise^2). Nothing
/// where the rope does not reach the bottom.
[[nodiscard]] std::optional<units::Length> runOf(units::Length rope, units::Depth depthAtAnchor,
                                                 units::Length cleatHeight);

/// Angle of the tight rope above the bottom at the anchor, degrees; the flatter, the better it
/// holds. Nothing where the rope does not reach the bottom.
[[nodiscard]] std::optional<double>
angleAtAnchor_deg(units::Length rope, units::Depth depthAtAnchor, units::Length cleatHeight);

/// Pull of the wind on what it meets, newtons: half rho Cd A U^2 with air of 1.225 kg/m3.
[[nodiscard]] double windPull_N(units::Speed wind, units::Area windage, double dragCoefficient);

} // namespace anchoring
